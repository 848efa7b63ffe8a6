import { type Budget, isSpent } from "./budget.js";
import type { Steps } from "../steps.js";
import { type Incumbent, offerPlan } from "./incumbent.js";
import { diveForPlan } from "./dive.js";
import { fillGreedily, takeOff } from "./greedy.js";
import { relax } from "../linear/column-generation.js";
import { addPattern, makeMaster } from "../linear/master.js";
import { type Problem, setupOf, type Use, withCost } from "../model/problem.js";
import { wholeProblem } from "../model/subproblem.js";
import { largestOf } from "../sums.js";

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

/** The sticks of a plan for the scarce part as sticks of the problem, and the rest of the demand placed greedily. */
function* completePlan(problem: Problem, incumbent: Incumbent, scarce: readonly Use[], budget: Budget): Steps<void> {
  const remaining = problem.demand.slice();
  const available = Float64Array.from(problem.kinds, ({ limit }) => limit);
  const plan: Use[] = scarce.map(({ pattern, times }) => {
    takeOff(pattern, times, remaining, available);
    return { pattern: withCost(problem, pattern), times };
  });
  const rest = yield* fillGreedily(problem, remaining, available, budget, undefined, true);
  offerPlan(problem, incumbent, [...plan, ...rest.plan], rest.remaining);
}

/**
 * Looks for a plan that makes every piece where the limited sticks are scarce, or for the proof that there is none.
 *
 * It is the same search with other costs: sticks are free, and a piece without a place costs its length. A bound above 0
 * proves the shortage.
 */
export function* searchShortage(problem: Problem, incumbent: Incumbent, budget: Budget): Steps<boolean> {
  const scarce = scarcePart(problem);
  const node = wholeProblem(scarce);
  const master = makeMaster(scarce, node, false, scarce.sizes);
  const inner: Incumbent = { plan: [], cost: 0, remaining: node.demand, whole: false };
  for (const { pattern } of incumbent.plan) addPattern(master, { ...pattern, cost: 0 });
  const relaxation = yield* relax(master, node, 1, budget);
  for (let discrepancies = 0; discrepancies < 3 && !inner.whole && !isSpent(budget); discrepancies++) {
    yield* diveForPlan({ master, incumbent: inner, goal: 0, budget }, node, discrepancies);
  }
  yield* completePlan(problem, incumbent, inner.plan, budget);
  return relaxation.bound > 0;
}
