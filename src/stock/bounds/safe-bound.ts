import { costStep, mostLeft, type Problem } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import { largestOf, sumOf } from "../sums.js";
import { ceilDivide } from "./material-bound.js";

/** Largest integer that sums of prices may reach, so that doubles hold them exactly. */
const MOST_WORTH = 2 ** 51;

/** Integer prices of the items, in units of 1 / `scale` of a step of the cost grid. */
export interface Prices {
  /** What one of each item is worth, an integer of 0 or more. */
  readonly items: Float64Array;
  /** Units of a step of the cost grid, a power of two. */
  readonly scale: number;
}

/**
 * Rounds prices, in steps of the cost grid, down to integers of as fine a unit as doubles can add exactly. Negative
 * prices count as 0.
 */
export function roundPrices(problem: Problem, node: Subproblem, duals: Float64Array): Prices {
  const { sizes, demand, kinds, credit } = problem;
  const longest = largestOf(
    kinds.map(({ rooms }) => sumOf(rooms)),
    0,
  );
  let most = largestOf(
    kinds.map(({ cost }) => cost),
    credit * longest,
  );
  sizes.forEach((size, item) => {
    most += Math.max(0, duals[item]!) * Math.min(demand[item]!, longest / size);
  });
  // Beyond that there is no safe integer price but none: the bound is then weak, never wrong.
  if (most > MOST_WORTH) return { items: new Float64Array(duals.length), scale: 1 };
  let scale = 2 ** 30;
  while (most * scale > MOST_WORTH) scale /= 2;
  const items = duals.map((dual, item) => (node.demand[item]! > 0 && dual > 0 ? Math.floor(dual * scale) : 0));
  return { items, scale };
}

/** A lower bound and what it was made from. */
export interface SafeBound {
  /** No plan for what is left costs less; in steps of the cost grid, rounded up to what a plan can cost. */
  readonly bound: number;
  /** The same in units of the prices, not rounded up. */
  readonly worth: number;
  /** For each kind what every stick of it was counted at beyond the worth of what is cut from it. */
  readonly rests: Float64Array;
}

/**
 * A lower bound that holds whatever prices it is computed from.
 *
 * Every plan for what is left makes the demand, so it costs at least the demand's worth, plus for each stick its cost less
 * the worth of its pattern, which is at least the cost less the largest worth. Where that is negative and the kind endless,
 * all prices are lowered by the same factor first, as far as no stick earns any more (Farley's bound). All of it is done in
 * integers of any size. The worths are integers too: for each kind one that no pattern exceeds.
 *
 * @see A. A. Farley, A note on bounding a class of linear programming problems, including cutting stock problems, Operations Research 38 (1990), 922-923.
 */
export function safeBound(problem: Problem, node: Subproblem, prices: Prices, worths: Float64Array): SafeBound {
  const scale = BigInt(prices.scale);
  // Prices are lowered to above / below of what they are.
  let above = 1n;
  let below = 1n;
  const kinds = problem.kinds.map((kind, k) => {
    const most = mostLeft(kind);
    const cost = BigInt(kind.cost) * scale;
    // The least that a stick of this kind can cost, whatever is cut from it.
    const least = cost - BigInt(problem.credit) * scale * BigInt(most);
    const rest = cost - BigInt(worths[k]!);
    // A stick of an endless kind never earns when it is empty: its least cost is 0 or more, so the new divisor is above 0.
    if (node.most[k] === Infinity && least * below < above * (least - rest)) [above, below] = [least, least - rest];
    return { least, rest };
  });
  let demanded = 0n;
  prices.items.forEach((price, item) => (demanded += BigInt(price) * BigInt(node.demand[item]!)));
  let sum = demanded * above;
  const rests = new Float64Array(kinds.length);
  kinds.forEach(({ least, rest }, k) => {
    // With lower prices the rest is a mixture of the two, and at least that.
    const mixed = above * rest + (below - above) * least;
    rests[k] = Number(mixed / below);
    sum += mixed * BigInt(mixed < 0n ? node.most[k]! : node.least[k]!);
  });
  const unit = scale * below * BigInt(costStep(problem));
  return { bound: Number(ceilDivide(sum, unit)) * costStep(problem), worth: Number(sum / below), rests };
}
