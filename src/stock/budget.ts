import type { StopReason } from "./stock-fit.js";

/**
 * What a search may still spend.
 *
 * Kernels add their steps to `work`; the search looks at `stopped` between them. Only the driver reads the clock, and it
 * only ever sets `stopped`, so that time can end a search but never steer it.
 */
export interface Budget {
  /** Steps taken. */
  work: number;
  /** Steps after which the search ends. */
  readonly workLimit: number;
  /** Why the search has to end. */
  stopped: StopReason | undefined;
}

/**
 * A budget.
 *
 * @param workLimit - steps after which the search ends
 * @returns the budget, nothing spent
 */
export function makeBudget(workLimit: number): Budget {
  return { work: 0, workLimit, stopped: undefined };
}

/**
 * Whether the search has to end.
 *
 * @param budget - the budget
 * @returns true once a limit is reached
 */
export function isSpent(budget: Budget): boolean {
  if (budget.stopped === undefined && budget.work >= budget.workLimit) budget.stopped = "work";
  return budget.stopped !== undefined;
}
