import { materialBound } from "../bounds/material-bound.js";
import { type Budget, isSpent } from "./budget.js";
import type { Steps } from "../steps.js";
import { relax } from "../linear/column-generation.js";
import { type Dive, diveForPlan } from "./dive.js";
import { searchCounts } from "./count-search.js";
import { fillGreedily } from "./greedy.js";
import { cutoffFor, type Findings, nothingFound, offerRest } from "./incumbent.js";
import { addPattern, makeMaster } from "../linear/master.js";
import { searchPatterns } from "./pattern-tree.js";
import type { Problem } from "../model/problem.js";
import { fillBySubsetSum } from "../patterns/subset-sum.js";
import { searchShortage } from "./shortage.js";
import { wholeProblem } from "../model/subproblem.js";
import { sumOf } from "../sums.js";

/** Rows of the linear program beyond which a pivot would take too long. */
const MOST_ROWS = 700;
/** Patterns times items up to which a second greedy plan takes next to no time. */
const SMALL_PLAN = 20_000;
/** Kinds of sticks beyond which their numbers are not branched on. */
const MOST_COUNTS = 40;

/** More than any plan costs that makes every piece: a bound above it proves that there is none. */
function mostCost(problem: Problem): number {
  const pieces = sumOf(problem.demand);
  return problem.kinds.reduce((sum, { cost, limit }) => sum + Math.max(0, cost) * Math.min(limit, pieces), 0);
}

/** Finds a plan of least cost, or of as much as there is room for. */
export function* search(problem: Problem, budget: Budget, found: Findings): Steps<void> {
  yield* searchWhole(problem, budget, found);
  if (isSpent(budget) || found.whole) return;
  // What has a place may still have it at a lower cost.
  const placed = { ...problem, demand: problem.demand.map((count, item) => count - found.remaining[item]!) };
  const again = nothingFound(placed);
  yield* searchWhole(placed, budget, again);
  if (again.whole && again.cost < found.cost) [found.plan, found.cost] = [again.plan, again.cost];
}

/**
 * Finds a plan of least cost. It hands over between short pieces of work, so that a driver can look at the clock.
 *
 * In turn: greedy plans and quick bounds; if the sticks seem to be scarce, the search for a place for everything; the
 * linear relaxation by column generation; dives into it; and at last the trees that can prove what the relaxation can't.
 * It ends as soon as the bound meets the plan.
 */
function* searchWhole(problem: Problem, budget: Budget, found: Findings): Steps<void> {
  const node = wholeProblem(problem);
  const first = yield* fillGreedily(problem, node.demand, node.most, budget, undefined, true);
  offerRest(problem, found, node, first);
  const quick = problem.sizes.length === 0 ? 0 : materialBound(problem);
  found.bound = quick ?? 0;
  found.impossible = quick === undefined;
  const done = (): boolean => isSpent(budget) || (found.whole && found.cost <= found.bound);
  yield undefined;
  const counting = problem.kinds.length > 1 && problem.kinds.length <= MOST_COUNTS;
  const limited = problem.kinds.filter(({ limit }) => limit !== Infinity).length;
  const rows = problem.sizes.length + (counting ? problem.kinds.length : limited);
  // Sticks filled as full as can be leave more in the last one, so that plan is looked at even if the first will do.
  if (first.plan.length * problem.sizes.length <= SMALL_PLAN || (rows <= MOST_ROWS && !done())) {
    offerRest(problem, found, node, yield* fillGreedily(problem, node.demand, node.most, budget, fillBySubsetSum));
    yield undefined;
  }
  if (done() || rows > MOST_ROWS) return;

  if (!found.whole) {
    if (yield* searchShortage(problem, found, budget)) found.impossible = true;
    if (found.impossible || isSpent(budget)) return;
  }
  const master = makeMaster(problem, node, counting);
  const dive = (): Dive => ({ master, incumbent: found, goal: found.bound, budget });
  for (const { pattern } of found.plan) addPattern(master, pattern);
  if (done()) return;
  const relaxation = yield* relax(master, node, cutoffFor(found, node), budget);
  found.bound = Math.max(found.bound, relaxation.bound);
  if (found.bound > mostCost(problem)) found.impossible = true;
  if (found.impossible) return;
  for (let discrepancies = 0; discrepancies < (counting ? 1 : 2) && !done(); discrepancies++) {
    yield* diveForPlan(dive(), node, discrepancies);
  }
  if (counting && !done()) yield* searchCounts(dive(), found, node);
  for (let discrepancies = 1; !done() && discrepancies < 1e9; discrepancies *= 2) {
    if (!(yield* searchPatterns(dive(), node, discrepancies))) continue;
    found.bound = found.cost;
    found.impossible = !found.whole;
  }
}
