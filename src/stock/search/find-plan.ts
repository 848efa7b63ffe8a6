import { materialBound } from "../bounds/material-bound.js";
import { relax } from "../linear/column-generation.js";
import { addPattern, makeMaster } from "../linear/master.js";
import type { Problem } from "../model/problem.js";
import { wholeProblem } from "../model/subproblem.js";
import { fillBySubsetSum } from "../patterns/subset-sum.js";
import type { Steps } from "../steps.js";
import { sumOf } from "../sums.js";
import { isSpent } from "./budget.js";
import { searchCounts } from "./count-search.js";
import { diveForPlan } from "./dive.js";
import { fillFirstFit, fillGreedily } from "./greedy.js";
import { searchPatterns } from "./pattern-tree.js";
import { addMaster, cutoffFor, isOver, offerPlan, type Search, startSearch } from "./search.js";
import { searchShortage } from "./shortage.js";

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
export function* findPlan(search: Search): Steps<void> {
  yield* findWhole(search);
  const { problem, budget, incumbent } = search;
  if (isSpent(budget) || incumbent.whole) return;
  // What has a place may still have it at a lower cost.
  const { remaining } = incumbent;
  const placed = startSearch(
    { ...problem, demand: problem.demand.map((count, item) => count - remaining[item]!) },
    budget,
  );
  yield* findWhole(placed);
  const { plan, cost, whole } = placed.incumbent;
  if (whole && cost < incumbent.cost) search.incumbent = { plan, cost, remaining, whole: false };
}

/**
 * Finds a plan of least cost. It hands over between short pieces of work, so that a driver can look at the clock.
 *
 * In turn: greedy plans and quick bounds; if the sticks seem to be scarce, the search for a place for everything; the
 * linear relaxation by column generation; dives into it; and at last the trees that can prove what the relaxation can't.
 * It ends as soon as the bound meets the plan.
 */
function* findWhole(search: Search): Steps<void> {
  const { problem, budget } = search;
  const node = wholeProblem(problem);
  const first = yield* fillGreedily(search, node, fillFirstFit, true);
  offerPlan(search, node, first);
  const quick = problem.sizes.length === 0 ? 0 : materialBound(problem);
  search.bound = quick ?? 0;
  search.impossible = quick === undefined;
  yield;
  const counting = problem.kinds.length > 1 && problem.kinds.length <= MOST_COUNTS;
  const limited = problem.kinds.filter(({ limit }) => limit !== Infinity).length;
  const rows = problem.sizes.length + (counting ? problem.kinds.length : limited);
  // Sticks filled as full as can be leave more in the last one, so that plan is looked at even if the first will do.
  if (first.plan.length * problem.sizes.length <= SMALL_PLAN || (rows <= MOST_ROWS && !isOver(search))) {
    offerPlan(search, node, yield* fillGreedily(search, node, fillBySubsetSum));
    yield;
  }
  if (isOver(search) || rows > MOST_ROWS) return;

  if (!search.incumbent.whole) {
    yield* searchShortage(search);
    if (search.impossible || isSpent(budget)) return;
  }
  const programmed = addMaster(search, makeMaster(problem, node, counting));
  for (const { pattern } of search.incumbent.plan) addPattern(programmed.master, pattern);
  if (isOver(search)) return;
  const relaxation = yield* relax(programmed, node, cutoffFor(search, node));
  search.bound = Math.max(search.bound, relaxation.bound);
  search.impossible = search.bound > mostCost(problem);
  if (search.impossible) return;
  for (let discrepancies = 0; discrepancies < (counting ? 1 : 2) && !isOver(search); discrepancies++) {
    yield* diveForPlan(programmed, node, discrepancies);
  }
  if (counting && !isOver(search)) yield* searchCounts(programmed, node);
  for (let discrepancies = 1; !isOver(search) && discrepancies < 1e9; discrepancies *= 2) {
    if (!(yield* searchPatterns(programmed, node, discrepancies))) continue;
    search.bound = search.incumbent.cost;
    search.impossible = !search.incumbent.whole;
  }
}
