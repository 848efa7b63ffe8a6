import { relax } from "../linear/column-generation.js";
import { addPattern, makeMaster } from "../linear/master.js";
import { makePattern, takeOff, type Use } from "../model/pattern.js";
import { type Problem, setupOf } from "../model/problem.js";
import { wholeProblem } from "../model/subproblem.js";
import type { Steps } from "../steps.js";
import { largestOf } from "../sums.js";
import { isSpent } from "./budget.js";
import { diveForPlan } from "./dive.js";
import { fillFirstFit, fillGreedily } from "./greedy.js";
import { addMaster, offerPlan, type Search, startSearch } from "./search.js";

/**
 * The scarce part of a problem: only the items that fit no endless kind, and sticks that cost nothing. What can't be placed
 * here is a shortage, and whatever is left of the sticks afterwards is there for the other items.
 */
function scarcePart(problem: Problem): Problem {
  const endless = problem.kinds.filter(({ limit }) => limit === Infinity).flatMap(({ rooms }) => rooms);
  const longest = largestOf(endless, 0);
  return {
    ...problem,
    demand: problem.demand.map((count, item) => (problem.sizes[item]! + setupOf(problem, item) <= longest ? 0 : count)),
    kinds: problem.kinds.map((kind) => ({ ...kind, cost: 0, limit: kind.limit === Infinity ? 0 : kind.limit })),
    credit: 0,
  };
}

/** Offers a plan for the scarce part with the sticks' own costs, and the rest of the demand placed greedily. */
function* completePlan(search: Search, scarce: readonly Use[]): Steps<void> {
  const { problem } = search;
  const node = wholeProblem(problem);
  const fixed = scarce.map(({ pattern, times }): Use => {
    takeOff(pattern, times, node.demand, node.most);
    return { pattern: makePattern(problem, pattern.kind, pattern.entries), times };
  });
  offerPlan(search, { fixed }, yield* fillGreedily(search, node, fillFirstFit, true));
}

/**
 * Looks for a plan that makes every piece where the limited sticks are scarce, or for the proof that there is none.
 *
 * It is the same search with other costs: sticks are free, and a piece without a place costs its length. A bound above 0
 * proves the shortage.
 */
export function* searchShortage(search: Search): Steps<void> {
  const { budget } = search;
  const problem = scarcePart(search.problem);
  const node = wholeProblem(problem);
  const scarce = addMaster(startSearch(problem, budget), makeMaster(problem, node, false, problem.sizes));
  for (const { pattern } of search.incumbent.plan) {
    addPattern(scarce.master, { kind: pattern.kind, entries: pattern.entries, cost: 0 });
  }
  const relaxation = yield* relax(scarce, node, 1);
  for (let discrepancies = 0; discrepancies < 3 && !scarce.incumbent.whole && !isSpent(budget); discrepancies++) {
    yield* diveForPlan(scarce, node, discrepancies);
  }
  yield* completePlan(search, scarce.incumbent.plan);
  if (relaxation.bound > 0) search.impossible = true;
}
