import type { StopReason } from "../fit/stock-fit.js";

/**
 * What a search may still spend.
 *
 * Every loop that can be long counts its steps by {@link spend} and pauses when that asks for it. Only the driver reads the
 * clock, between two pauses, and it only ever sets `stopped`, so that time can end a search but never steer it.
 */
export interface Budget {
  /** Steps taken. */
  steps: number;
  /** Steps after which the search ends. */
  readonly stepLimit: number;
  /** Steps at which the search pauses next. */
  pauseAt: number;
  /** Why the search has to end. */
  stopped: StopReason | undefined;
}

/** Steps between two pauses: about a millisecond, some where each takes long. */
export const STEPS_BETWEEN_PAUSES = 100_000;

/** A budget of which nothing is spent. */
export function makeBudget(stepLimit: number): Budget {
  return { steps: 0, stepLimit, pauseAt: Math.min(STEPS_BETWEEN_PAUSES, stepLimit), stopped: undefined };
}

/**
 * Counts steps that were taken, or will be before the next call. Returns whether the caller has to yield, and then look
 * whether the budget is spent.
 */
export function spend(budget: Budget, steps: number): boolean {
  budget.steps += steps;
  if (budget.steps < budget.pauseAt) return false;
  const next = budget.steps + STEPS_BETWEEN_PAUSES;
  budget.pauseAt = budget.steps < budget.stepLimit ? Math.min(next, budget.stepLimit) : next;
  return true;
}

/** Whether the search has to end, since a limit is reached or somebody asked for it. */
export function isSpent(budget: Budget): boolean {
  if (budget.stopped === undefined && budget.steps >= budget.stepLimit) budget.stopped = "steps";
  return budget.stopped !== undefined;
}
