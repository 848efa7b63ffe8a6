import { checkOptions, type FitOptions } from "./fit-options.js";
import type { StockFit } from "./fit/stock-fit.js";
import type { StockJob } from "./job/stock-job.js";
import { runSearch } from "./search/run-search.js";
import { finish } from "./steps.js";

/**
 * Fits pieces into sticks at least cost, and says how good the plan is.
 *
 * The cost of a plan is the sum of its sticks' costs less `credit` times the length of every offcut of at least `keep`. All
 * lengths and costs become integers first; `optimal` is said only where a lower bound computed in integers equals the
 * plan's cost. {@link verifyFit} verifies a plan from the job alone. Among plans of equal cost one with a long offcut is
 * preferred, as far as that costs no time.
 *
 * @param job - pieces and sticks in one unit of length
 * @param options - when to end the search
 * @returns the best plan found, in that unit
 * @throws {InputError} when a field of the job or an option is missing, unknown or out of bounds, or a piece fits no stick
 * @example
 * ```ts
 * import { fitStock } from "miterwright/stock";
 *
 * const fit = fitStock({
 *   pieces: [
 *     { id: "rail", length: 433.3, count: 4 },
 *     { id: "stile", length: 610, count: 4 },
 *   ],
 *   sticks: [{ id: "stick", length: 2400 }],
 *   kerf: 3,
 * });
 * fit.status; //=> "optimal"
 * fit.sticks; //=> [{ stick: "stick", count: 2 }]
 * fit.resolution; //=> 0.1
 * ```
 */
export function fitStock(job: StockJob, options: FitOptions = {}): StockFit {
  return finish(runSearch(job, checkOptions(options)));
}
