import { type Prices, roundPrices, type SafeBound, safeBound } from "../bounds/safe-bound.js";
import type { Pattern } from "../model/pattern.js";
import { costStep } from "../model/problem.js";
import type { Subproblem } from "../model/subproblem.js";
import { type PatternQuery, priceKind } from "../patterns/pricing.js";
import { isSpent, spend } from "../search/budget.js";
import type { ProgramSearch } from "../search/search.js";
import type { Steps } from "../steps.js";
import { setPenalty } from "./change-program.js";
import { missed, programValue } from "./linear-program.js";
import { addPattern, aimMaster, fractionsOf, pricesOf } from "./master.js";
import { solveProgram } from "./simplex.js";

/** A reduced cost, over the dearest stick's cost, from which a pattern is worth adding; above the simplex's own tolerance. */
const WORTH_ADDING = 5e-10;
/** Penalty, over the dearest stick's cost, beyond which a missed row is taken to be impossible. */
const MOST_PENALTY = 1e5;

/** Items from which more patterns a round are worth their time. */
const MANY_ITEMS = 40;
/** Kinds up to which they are: with more, each round adds enough. */
const FEW_KINDS = 3;
/** Most of these patterns a round. */
const MOST_DISJOINT = 25;
/** Branches of a knapsack for one of these; they need not be the best. */
const QUICK_BRANCHES = 3000;

/** What a round takes besides the simplex and the knapsacks, in steps. */
const STEPS_OF_A_ROUND = 5000;
/** What it takes besides for each kind and item: numbers of any size are slow. */
const STEPS_OF_A_NUMBER = 50;

/** The linear relaxation of a subproblem. */
export interface Relaxation {
  /** No plan for what is left costs less; computed in integers. */
  readonly bound: number;
  /** The patterns of its solution. */
  readonly fractions: readonly { readonly pattern: Pattern; readonly times: number }[];
  /** The prices of the last round, and the bound from them alone; missing if the budget was spent before. */
  readonly last: { readonly prices: Prices; readonly worths: Float64Array; readonly safe: SafeBound } | undefined;
}

/**
 * Adds more patterns that are worth their cost, each without the items of those before: where there are many lengths, one
 * pattern a round would change the prices of a few of them only.
 */
function* addDisjoint(
  search: ProgramSearch,
  node: Subproblem,
  { items, scale }: Prices,
  { kind, above }: PatternQuery,
): Steps<number> {
  const { problem, master } = search;
  if (problem.sizes.length < MANY_ITEMS || problem.kinds.length > FEW_KINDS) return 0;
  const left: Prices = { items: items.slice(), scale };
  const query: PatternQuery = { kind, above, branchLimit: QUICK_BRANCHES };
  let added = 0;
  for (let n = 0; n < MOST_DISJOINT; n++) {
    const offer = yield* priceKind(search, node, left, query);
    const best = offer.patterns.at(-1);
    if (best === undefined) break;
    for (const [item] of best.entries) left.items[item] = 0;
    if (addPattern(master, best)) added++;
  }
  return added;
}

/**
 * Solves the linear relaxation of a subproblem by column generation.
 *
 * In turn, the program over the known patterns is solved and its prices rounded down to integers; then for each kind the
 * patterns that are worth more than they cost are found and added. Each round gives a bound of its own. It ends when no
 * pattern is found, or when the bound can't rise any more or has reached the cutoff, from which it is of no interest.
 */
export function* relax(search: ProgramSearch, node: Subproblem, cutoff: number): Steps<Relaxation> {
  const { problem, budget, master } = search;
  const { program, unit } = master;
  const step = costStep(problem);
  let bound = -Infinity;
  let last: Relaxation["last"];
  yield* aimMaster(master, node, budget);
  const worths = new Float64Array(problem.kinds.length);
  for (;;) {
    yield* solveProgram(program, budget);
    const value = programValue(program) * unit;
    const met = master.priced || missed(program) < 1e-5;
    const numbers = problem.sizes.length + problem.kinds.length;
    if (spend(budget, STEPS_OF_A_ROUND + STEPS_OF_A_NUMBER * numbers)) yield;
    const end = (): Relaxation => ({ bound, fractions: fractionsOf(master), last });
    if (isSpent(budget)) return end();
    const duals = pricesOf(master);
    const prices = roundPrices(problem, node, duals.items);
    let added = 0;
    for (let kind = 0; kind < problem.kinds.length; kind++) {
      if (node.most[kind] === 0) {
        worths[kind] = 0;
        continue;
      }
      const cost = problem.kinds[kind]!.cost - duals.kinds[kind]! + WORTH_ADDING * unit;
      const query: PatternQuery = { kind, above: Math.ceil(cost * prices.scale) };
      const offer = yield* priceKind(search, node, prices, query);
      worths[kind] = offer.worth;
      for (const pattern of offer.patterns) if (addPattern(master, pattern)) added++;
      if (offer.patterns.length > 0) added += yield* addDisjoint(search, node, prices, query);
      if (isSpent(budget)) return end();
    }
    const safe = safeBound(problem, node, prices, worths);
    last = { prices, worths, safe };
    bound = Math.max(bound, safe.bound);
    if (bound >= cutoff) return end();
    if (added === 0) {
      if (met || program.penalty >= MOST_PENALTY) return end();
      setPenalty(program, program.penalty * 10);
    } else if (met && bound >= Math.ceil(value / step - 1e-6) * step) {
      return end();
    }
  }
}
