import { leastCombinations } from "../bounds/combinations.js";
import { safeBound } from "../bounds/safe-bound.js";
import { relax } from "../linear/column-generation.js";
import { costStep } from "../model/problem.js";
import { type Subproblem, withSticks } from "../model/subproblem.js";
import { priceKind } from "../patterns/pricing.js";
import type { Steps } from "../steps.js";
import { isSpent, spend } from "./budget.js";
import { diveForPlan } from "./dive.js";
import { searchPatterns } from "./pattern-tree.js";
import { cutoffFor, offerPlan, type ProgramSearch, searchWithin } from "./search.js";

/** A part of the plans: those with a certain combination of sticks. */
interface Box {
  /** The problem with these sticks. */
  readonly node: Subproblem;
  /** No plan in it costs less. */
  bound: number;
  /** How often it has been searched in vain. */
  effort: number;
}

/** From this effort on a combination has to wait for dearer ones. */
const DEEP = 2;
/** Combinations beyond which they are given up, so that memory has a bound. */
const MOST_OPEN = 20_000;
/** What looking at a combination takes for each kind and item: numbers of any size are slow. */
const STEPS_OF_A_NUMBER = 30;
/** Searches of a combination after which it is given up. */
const MOST_EFFORT = 30;

/**
 * Goes through the combinations of sticks from the cheapest one up.
 *
 * With several lengths this is where the bound of the linear program is weak: between two sums of costs lies a whole
 * cost. In a combination the cost is decided, if offcuts earn nothing, and what remains is to find a plan or to show that
 * there is none. Most combinations are refuted by the linear program alone. Those that aren't are searched in turn, each
 * time with more effort. The plan and the bound of the search change.
 */
export function* searchCounts(search: ProgramSearch, root: Subproblem): Steps<void> {
  const { problem, budget, bound: least } = search;
  const step = costStep(problem);
  const cutoff = (): number => cutoffFor(search, root);
  const decided = problem.credit === 0;
  /** From this bound on a combination is refuted; where its cost is decided, by any bound above that. */
  const beyond = ({ bound }: Box): number => (decided ? bound + step : cutoff());
  // With a credit the sums are lower than the costs, so that all of them have to be looked at.
  let level = decided ? least : -Infinity;
  let open: Box[] = [];
  for (;;) {
    const bound = open.reduce((lowest, box) => Math.min(lowest, box.bound), Math.min(Math.max(level, least), cutoff()));
    search.bound = Math.max(search.bound, bound);
    if (spend(budget, 20 * open.length)) yield;
    if (isSpent(budget) || bound >= cutoff() || open.length > MOST_OPEN) return;
    open.sort((a, b) => a.effort - b.effort || a.bound - b.bound);
    const [box] = open;
    // Dearer combinations are looked at before too much is spent on the cheaper ones.
    if (level < cutoff() && (box?.effort ?? DEEP) >= DEEP) {
      const { cost, choices, complete } = yield* leastCombinations(search, level, cutoff() - step);
      if (!complete) return;
      level = cost + step;
      for (const choice of choices) {
        open.push({ node: withSticks(root, choice), bound: Math.max(cost, least), effort: 0 });
      }
      continue;
    }
    if (box === undefined) continue;
    open.shift();
    const { node, effort } = box;
    if (effort === 0) {
      const { bound: reached, last } = yield* relax(search, node, beyond(box));
      if (isSpent(budget)) return;
      if (reached >= beyond(box)) {
        // What refutes one combination refutes others like it. Kinds of which this one has none were not priced.
        const { prices, worths: priced } = last!;
        const worths = priced.slice();
        for (let kind = 0; kind < worths.length; kind++) {
          if (node.most[kind] === 0) worths[kind] = (yield* priceKind(search, node, prices, { kind, above: 0 })).worth;
        }
        const rest: Box[] = [];
        for (const other of open) {
          if (safeBound(problem, other.node, prices, worths).bound < beyond(other)) rest.push(other);
          if (spend(budget, STEPS_OF_A_NUMBER * (problem.kinds.length + problem.sizes.length))) yield;
        }
        open = rest;
        continue;
      }
      box.bound = Math.max(box.bound, reached);
    }
    // Where the cost is decided, any plan will do.
    const { plan, remaining } = search.incumbent;
    const rival = decided ? { plan, cost: box.bound + step, remaining, whole: true } : search.incumbent;
    const within = searchWithin(search, rival, box.bound);
    yield* diveForPlan(within, node, effort + 1);
    const complete =
      !isSpent(budget) &&
      within.incumbent.cost > box.bound &&
      effort > 0 &&
      (yield* searchPatterns(within, node, 2 ** effort));
    if (within.incumbent !== rival) offerPlan(search, root, within.incumbent);
    if (complete) continue;
    if (effort === MOST_EFFORT) return;
    box.effort = effort + 1;
    open.push(box);
  }
}
