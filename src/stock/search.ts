import { martelloTothBound, materialBound } from "./bounds.js";
import type { Budget } from "./budget.js";
import { fillGreedily } from "./greedy.js";
import { planCost, type Problem, type Use } from "./problem.js";

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

/**
 * Finds a plan of least cost. It hands over between short pieces of work, so that a driver can look at the clock.
 *
 * @param problem - the problem
 * @param budget - what may be spent
 * @returns what was found
 * @yields {Findings} what is known so far
 */
export function* search(problem: Problem, budget: Budget): Generator<Findings, Findings> {
  const available = Float64Array.from(problem.kinds, ({ limit }) => limit);
  const { plan, remaining } = fillGreedily(problem, problem.demand, available);
  budget.work += problem.sizes.length * plan.length;
  const findings: Findings = { plan, remaining, cost: planCost(plan), bound: 0, impossible: false };
  yield findings;
  const material = materialBound(problem);
  const [only] = problem.kinds;
  if (material === undefined) findings.impossible = true;
  else findings.bound = material;
  if (only !== undefined && problem.kinds.length === 1 && only.rooms.length === 1 && problem.credit === 0) {
    const sticks = martelloTothBound(problem.sizes, problem.demand, only.rooms[0]!);
    if (sticks > only.limit) findings.impossible = true;
    findings.bound = Math.max(findings.bound, sticks * only.cost);
  }
  return findings;
}
