import { martelloTothBound, materialBound } from "./bounds.js";
import { type Budget, isSpent } from "./budget.js";
import { relax } from "./column-generation.js";
import { type Dive, diveForPlan } from "./dive.js";
import { searchCounts } from "./count-search.js";
import { fillGreedily } from "./greedy.js";
import { cutoffFor, type Incumbent, offerPlan } from "./incumbent.js";
import { addPattern, makeMaster } from "./master.js";
import { searchPatterns } from "./pattern-tree.js";
import { planCost, type Problem, type Use } from "./problem.js";
import { fillBySubsetSum } from "./subset-sum.js";
import { searchShortage } from "./shortage.js";
import { wholeProblem } from "./subproblem.js";

/** What a search has found so far. */
export interface Findings {
  /** The best plan. */
  plan: readonly Use[];
  /** Its cost. */
  cost: number;
  /** How many of each item it has no place for. */
  remaining: Float64Array;
  /** No plan that makes every piece costs less. */
  bound: number;
  /** Whether it is proven that no plan makes every piece. */
  impossible: boolean;
}

/** Rows of the linear program beyond which a pivot would take too long. */
const MOST_ROWS = 700;
/** Patterns times items up to which a second greedy plan takes next to no time. */
const SMALL_PLAN = 20_000;
/** Kinds of sticks beyond which their numbers are not branched on. */
const MOST_COUNTS = 40;

/** The bounds that need no search; undefined if they show that the sticks are too short. */
function quickBound(problem: Problem): number | undefined {
  const material = materialBound(problem);
  const [only] = problem.kinds;
  const plain = problem.kinds.length === 1 && only!.rooms.length === 1 && problem.credit === 0;
  if (material === undefined || !plain) return material;
  const sticks = martelloTothBound(problem.sizes, problem.demand, only!.rooms[0]!);
  return sticks > only!.limit ? undefined : Math.max(material, sticks * only!.cost);
}

/** More than any plan costs that makes every piece: a bound above it proves that there is none. */
function mostCost(problem: Problem): number {
  const pieces = problem.demand.reduce((sum, count) => sum + count, 0);
  return problem.kinds.reduce((sum, { cost, limit }) => sum + Math.max(0, cost) * Math.min(limit, pieces), 0);
}

/**
 * Finds a plan of least cost, or of as much as there is room for.
 *
 * @param problem - the problem
 * @param budget - what may be spent
 * @returns what was found
 * @yields {Findings} what is known so far
 */
export function* search(problem: Problem, budget: Budget): Generator<Findings, Findings> {
  const found = yield* searchWhole(problem, budget);
  const { remaining } = found;
  if (isSpent(budget) || remaining.every((count) => count === 0)) return found;
  // What has a place may still have it at a lower cost.
  const placed = { ...problem, demand: problem.demand.map((count, item) => count - remaining[item]!) };
  const steps = searchWhole(placed, budget);
  for (;;) {
    const step = steps.next();
    const { plan, cost, remaining: left } = step.value;
    const better = left.every((count) => count === 0) && cost < found.cost ? { ...found, plan, cost } : found;
    if (step.done === true) return better;
    yield better;
  }
}

/**
 * Finds a plan of least cost. It hands over between short pieces of work, so that a driver can look at the clock.
 *
 * In turn: greedy plans and quick bounds; if the sticks seem to be scarce, the search for a place for everything; the
 * linear relaxation by column generation; dives into it; and at last the trees that can prove what the relaxation can't.
 * It ends as soon as the bound meets the plan.
 *
 * @param problem - the problem
 * @param budget - what may be spent
 * @returns what was found
 * @yields {Findings} what is known so far
 */
function* searchWhole(problem: Problem, budget: Budget): Generator<Findings, Findings> {
  const node = wholeProblem(problem);
  const { plan, remaining } = fillGreedily(problem, node.demand, node.most);
  budget.work += problem.sizes.length * plan.length;
  const whole = remaining.every((count) => count === 0);
  const incumbent: Incumbent = { plan, remaining, cost: planCost(plan), whole };
  const quick = problem.sizes.length === 0 ? 0 : quickBound(problem);
  let bound = quick ?? 0;
  let impossible = quick === undefined;
  const findings = (): Findings => ({
    ...incumbent,
    bound: incumbent.whole ? Math.min(bound, incumbent.cost) : bound,
    impossible,
  });
  function* reporting<T>(steps: Generator<undefined, T>): Generator<Findings, T> {
    for (;;) {
      const step = steps.next();
      if (step.done === true) return step.value;
      yield findings();
    }
  }
  const done = (): boolean => isSpent(budget) || (incumbent.whole && incumbent.cost <= bound);
  yield findings();
  const counting = problem.kinds.length > 1 && problem.kinds.length <= MOST_COUNTS;
  const limited = problem.kinds.filter(({ limit }) => limit !== Infinity).length;
  const rows = problem.sizes.length + (counting ? problem.kinds.length : limited);
  // Sticks filled as full as can be leave more in the last one, so that plan is looked at even if the first will do.
  if (plan.length * problem.sizes.length <= SMALL_PLAN || (rows <= MOST_ROWS && !done())) {
    const filled = fillGreedily(problem, node.demand, node.most, (...given) => fillBySubsetSum(...given, budget));
    offerPlan(problem, incumbent, filled.plan, filled.remaining);
    yield findings();
  }
  if (done() || rows > MOST_ROWS) return findings();

  if (!whole) {
    impossible = (yield* reporting(searchShortage(problem, incumbent, budget))) || impossible;
    if (impossible || isSpent(budget)) return findings();
  }
  const master = makeMaster(problem, node, counting);
  const dive = (): Dive => ({ master, incumbent, goal: bound, budget });
  for (const { pattern } of incumbent.plan) addPattern(master, pattern);
  if (done()) return findings();
  const relaxation = yield* reporting(relax(master, node, cutoffFor(incumbent, node), budget));
  bound = Math.max(bound, relaxation.bound);
  if (bound > mostCost(problem)) impossible = true;
  if (impossible) return findings();
  for (let discrepancies = 0; discrepancies < (counting ? 1 : 2) && !done(); discrepancies++) {
    yield* reporting(diveForPlan(dive(), node, discrepancies));
  }
  if (counting && !done()) {
    bound = Math.max(
      bound,
      yield* reporting(searchCounts(dive(), node, (reached) => (bound = Math.max(bound, reached)))),
    );
  }
  for (let discrepancies = 1; !done() && discrepancies < 1e9; discrepancies *= 2) {
    const complete = yield* reporting(searchPatterns(dive(), node, discrepancies));
    if (!complete) continue;
    if (incumbent.whole) bound = incumbent.cost;
    else impossible = true;
    break;
  }
  return findings();
}
