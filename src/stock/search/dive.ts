import { relax } from "../linear/column-generation.js";
import type { Pattern, Use } from "../model/pattern.js";
import { costStep } from "../model/problem.js";
import { decide, isDeep, isDone, type Subproblem } from "../model/subproblem.js";
import { fillBySubsetSum } from "../patterns/subset-sum.js";
import type { Steps } from "../steps.js";
import { isSpent } from "./budget.js";
import { fillFirstFit, fillGreedily } from "./greedy.js";
import { cutoffFor, isProven, offerRest, type ProgramSearch, type Search } from "./search.js";

/** What a layout takes to be copied and compared, in entries of the simplex. */
const STEPS_OF_AN_OFFER = 50;

/** Completes a subproblem in two greedy ways. */
export function* completeGreedily(search: Search, node: Subproblem): Steps<void> {
  for (const fill of [fillFirstFit, fillBySubsetSum]) {
    const rest = yield* fillGreedily(search, node, fill);
    search.budget.steps += STEPS_OF_AN_OFFER * (node.fixed.length + rest.plan.length);
    offerRest(search, node, rest);
  }
}

/** A fraction this close to a whole number counts as whole. */
const NEARLY = 1e-4;

/** The whole sticks of a fractional solution. */
export function roundDown(fractions: readonly { readonly pattern: Pattern; readonly times: number }[]): Use[] {
  return fractions.flatMap(({ pattern, times }) => {
    const whole = Math.floor(times + NEARLY);
    return whole > 0 ? [{ pattern, times: whole }] : [];
  });
}

/**
 * Dives for a better plan: solves the relaxation, decides on its whole sticks and one more, and does so again with what is
 * left. Where the relaxation offers several sticks to round up, the second best is tried too, and so on, each time at the
 * expense of the discrepancies that are allowed on the way down.
 * The discrepancies are how often, in sum, it may depart from the best candidate.
 *
 * @see W. D. Harvey, M. L. Ginsberg, Limited discrepancy search, Proceedings of IJCAI 1995, 607-613.
 */
export function* diveForPlan(search: ProgramSearch, node: Subproblem, discrepancies: number): Steps<void> {
  const { problem, budget } = search;
  if (isDone(node)) {
    offerRest(search, node, { plan: [], remaining: node.demand });
    return;
  }
  const cutoff = cutoffFor(search, node);
  const relaxation = yield* relax(search, node, cutoff);
  if (isSpent(budget) || relaxation.bound >= cutoff) return;
  const rounded = decide(problem, node, roundDown(relaxation.fractions));
  yield* completeGreedily(search, rounded);
  if (isProven(search)) return;
  const candidates = relaxation.fractions
    .map(({ pattern, times }) => ({ pattern, rest: times - Math.floor(times + NEARLY) }))
    .filter(({ rest }) => rest > NEARLY)
    .sort((a, b) => b.rest - a.rest);
  if (candidates.length === 0 || isDeep(node)) return;
  for (const [rank, { pattern }] of candidates.entries()) {
    if (rank > discrepancies || isSpent(budget)) return;
    const child = decide(problem, rounded, [{ pattern, times: 1 }]);
    if (child.fixed.length === rounded.fixed.length) continue;
    yield* diveForPlan(search, child, discrepancies - rank);
    if (isProven(search)) return;
    const { incumbent } = search;
    if (incumbent.whole && relaxation.bound + node.fixedCost > incumbent.cost - costStep(problem)) return;
  }
}
