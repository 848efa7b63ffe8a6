import { type Relaxation, relax } from "../linear/column-generation.js";
import { planCost, type Use } from "../model/pattern.js";
import { costStep } from "../model/problem.js";
import { decide, isDeep, type Subproblem } from "../model/subproblem.js";
import { fillBySubsetSum } from "../patterns/subset-sum.js";
import type { Steps } from "../steps.js";
import { fillFirstFit, fillGreedily } from "./greedy.js";
import { cutoffFor, isOver, offerDone, offerPlan, type ProgramSearch, type Search } from "./search.js";

/** What a layout takes to be copied and compared, in entries of the simplex. */
const STEPS_OF_AN_OFFER = 50;

/** A fraction this close to a whole number counts as whole. */
const NEARLY = 1e-4;

/** Decides on the whole sticks of a relaxation, completes what is left in two greedy ways, and returns it. */
export function* completeGreedily(search: Search, node: Subproblem, { fractions }: Relaxation): Steps<Subproblem> {
  const whole = fractions.map(({ pattern, times }): Use => ({ pattern, times: Math.floor(times + NEARLY) }));
  const rounded = decide(search.problem, node, whole);
  for (const fill of [fillFirstFit, fillBySubsetSum]) {
    const rest = yield* fillGreedily(search, rounded, fill);
    search.budget.steps += STEPS_OF_AN_OFFER * (rounded.fixed.length + rest.plan.length);
    offerPlan(search, rounded, rest);
  }
  return rounded;
}

/**
 * Dives for a better plan: solves the relaxation, decides on its whole sticks and one more, and does so again with what is
 * left. Where the relaxation offers several sticks to round up, the second best is tried too, and so on, each time at the
 * expense of the discrepancies that are allowed on the way down: how often, in sum, it may depart from the best candidate.
 *
 * @see W. D. Harvey, M. L. Ginsberg, Limited discrepancy search, Proceedings of IJCAI 1995, 607-613.
 */
export function* diveForPlan(search: ProgramSearch, node: Subproblem, discrepancies: number): Steps<void> {
  const { problem } = search;
  if (offerDone(search, node)) return;
  const cutoff = cutoffFor(search, node);
  const relaxation = yield* relax(search, node, cutoff);
  if (isOver(search) || relaxation.bound >= cutoff) return;
  const rounded = yield* completeGreedily(search, node, relaxation);
  if (isOver(search)) return;
  const candidates = relaxation.fractions
    .map(({ pattern, times }) => ({ pattern, rest: times - Math.floor(times + NEARLY) }))
    .filter(({ rest }) => rest > NEARLY)
    .sort((a, b) => b.rest - a.rest);
  if (candidates.length === 0 || isDeep(node)) return;
  for (const [rank, { pattern }] of candidates.entries()) {
    if (rank > discrepancies) return;
    const child = decide(problem, rounded, [{ pattern, times: 1 }]);
    if (child.fixed.length === rounded.fixed.length) continue;
    yield* diveForPlan(search, child, discrepancies - rank);
    if (isOver(search)) return;
    const { incumbent } = search;
    if (incumbent.whole && relaxation.bound + planCost(node.fixed) > incumbent.cost - costStep(problem)) return;
  }
}
