import { type Budget, isSpent } from "./budget.js";
import type { Steps } from "../steps.js";
import { relax } from "../linear/column-generation.js";
import { fillGreedily } from "./greedy.js";
import { cutoffFor, type Incumbent, offerRest } from "./incumbent.js";
import type { Master } from "../linear/master.js";
import type { Pattern, Use } from "../model/problem.js";
import { fillBySubsetSum } from "../patterns/subset-sum.js";
import { costStep } from "../bounds/safe-bound.js";
import { decide, isDeep, isDone, type Subproblem } from "../model/subproblem.js";

/** What a dive needs to know of the search around it. */
export interface Dive {
  /** The linear program. */
  readonly master: Master;
  /** The best plan so far; changed when a better one is found. */
  readonly incumbent: Incumbent;
  /** A cost at which the dive is over: no plan costs less. */
  readonly goal: number;
  /** What may be spent. */
  readonly budget: Budget;
}

/** What a layout takes to be copied and compared, in entries of the simplex. */
const STEPS_OF_AN_OFFER = 50;

/** Completes a subproblem in two greedy ways. */
export function* completeGreedily(dive: Dive, node: Subproblem): Steps<void> {
  const { master, incumbent, budget } = dive;
  const { problem } = master;
  for (const fill of [undefined, fillBySubsetSum]) {
    const rest = yield* fillGreedily(problem, node.demand, node.most, budget, fill);
    budget.steps += STEPS_OF_AN_OFFER * (node.fixed.length + rest.plan.length);
    offerRest(problem, incumbent, node, rest);
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
 *
 * @see W. D. Harvey, M. L. Ginsberg, Limited discrepancy search, Proceedings of IJCAI 1995, 607-613.
 */
export function* diveForPlan(dive: Dive, node: Subproblem, discrepancies: number): Steps<void> {
  const { master, incumbent, budget } = dive;
  const { problem } = master;
  if (isDone(node)) {
    offerRest(problem, incumbent, node, { plan: [], remaining: node.demand });
    return;
  }
  const cutoff = cutoffFor(incumbent, node);
  const relaxation = yield* relax(master, node, cutoff, budget);
  if (isSpent(budget) || relaxation.bound >= cutoff) return;
  const rounded = decide(problem, node, roundDown(relaxation.fractions));
  yield* completeGreedily(dive, rounded);
  if (incumbent.whole && incumbent.cost <= dive.goal) return;
  const candidates = relaxation.fractions
    .map(({ pattern, times }) => ({ pattern, rest: times - Math.floor(times + NEARLY) }))
    .filter(({ rest }) => rest > NEARLY)
    .sort((a, b) => b.rest - a.rest);
  if (candidates.length === 0 || isDeep(node)) return;
  for (const [rank, { pattern }] of candidates.entries()) {
    if (rank > discrepancies || isSpent(budget)) return;
    const child = decide(problem, rounded, [{ pattern, times: 1 }]);
    if (child.fixed.length === rounded.fixed.length) continue;
    yield* diveForPlan(dive, child, discrepancies - rank);
    if (incumbent.whole && incumbent.cost <= dive.goal) return;
    if (incumbent.whole && relaxation.bound + node.fixedCost > incumbent.cost - costStep(problem)) return;
  }
}
