import { refuse } from "../../core/check.js";
import { commonGrid, type Grid, MAX_GRID_NUMBER, toGrid } from "./grid.js";
import { largestOf } from "../sums.js";

/** A cost of fewer steps on a grid that does not hold it is too rough to compare plans by. */
const LEAST_STEPS: number = 2 ** 24;

/**
 * Costs that share no grid are rounded to one that is fine enough for eleven digits and coarse enough for exact sums.
 */
export function chooseCostGrid(costs: readonly number[], worth: number, pieces: number): Grid {
  const largest = largestOf(costs, 0);
  const common = commonGrid([...costs, worth]);
  const mostSum = 2 ** 52 / Math.max(1, pieces);
  if (common !== undefined && toGrid(largest, common, "nearest") <= mostSum) return common;
  const times = largest / Math.min(MAX_GRID_NUMBER, Math.floor(mostSum));
  const rough = costs.find((cost) => cost > 0 && cost < LEAST_STEPS * times);
  if (rough !== undefined) refuse("range", "job.sticks", largest, `costs nearer to ${rough}, or no such stick`);
  return { times, per: 1, exact: false };
}
