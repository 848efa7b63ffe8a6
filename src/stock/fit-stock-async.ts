import { checkObject } from "../core/check.js";
import { checkOptions, type FitAsyncOptions, type FitSignal } from "./fit-options.js";
import { nextTurn, readClock } from "./host.js";
import { runSearch } from "./search/run-search.js";
import type { StockFit } from "./fit/stock-fit.js";
import type { StockJob } from "./job/stock-job.js";

/** Milliseconds of work between two turns of the event loop: short enough for a smooth page. */
const TURN = 10;

/** A reason to reject with that is an error, whatever the signal carries. */
function reasonOf({ reason }: FitSignal): Error {
  if (reason instanceof Error) return reason;
  return Object.assign(new Error("The search was aborted", { cause: reason }), { name: "AbortError" });
}

/**
 * Fits pieces into sticks like {@link fitStock}, leaving the event loop its turns.
 *
 * The plan is the same; only the waiting differs. It can run in a worker too, since job and plan are plain data.
 *
 * @param job - pieces and sticks in one unit of length
 * @param options - when to end the search, and a signal to abort it
 * @returns a promise of the best plan found
 * @throws {InputError} as a rejection, in the cases of {@link fitStock}; the signal's reason when it is aborted
 * @example
 * ```ts
 * import { fitStockAsync } from "miterwright/stock";
 *
 * const fit = await fitStockAsync({
 *   pieces: [{ id: "side", length: 500, count: 8 }],
 *   sticks: [{ id: "stick", length: 2100 }],
 * });
 * fit.cost; //=> 4200
 * ```
 */
export async function fitStockAsync(job: StockJob, options: FitAsyncOptions = {}): Promise<StockFit> {
  const checked = checkOptions(options, ["signal"]);
  const { signal } = options;
  if (signal !== undefined) checkObject(signal, "signal");
  const steps = runSearch(job, checked);
  let turn = readClock();
  for (;;) {
    if (signal?.aborted === true) throw reasonOf(signal);
    const step = steps.next();
    if (step.done === true) return step.value;
    if (readClock() - turn >= TURN) {
      await nextTurn();
      turn = readClock();
    }
  }
}
