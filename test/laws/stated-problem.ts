import type { StockJob } from "miterwright/stock";
import { isInputError } from "miterwright/errors";
import { finish } from "../../src/stock/steps.js";
import { checkJob } from "../../src/stock/job/check-job.js";
import { fromGrid } from "../../src/stock/model/grid.js";
import { integerModel, type StockModel } from "../../src/stock/model/integer-model.js";
import type { Problem } from "../../src/stock/model/problem.js";
import { stateProblem } from "../../src/stock/model/state-problem.js";
import { makeMaster } from "../../src/stock/linear/master.js";
import { wholeProblem } from "../../src/stock/model/subproblem.js";
import { makeBudget } from "../../src/stock/search/budget.js";
import { addMaster, type ProgramSearch, type Search, startSearch } from "../../src/stock/search/search.js";
import { cheapestByForce } from "./stock.js";

/** A small job as the parts of the search see it, and what brute force says of it. */
export interface Stated {
  /** The problem. */
  readonly problem: Problem;
  /** Its least cost in steps of the cost grid; undefined if no plan makes every piece. */
  readonly least: number | undefined;
}

/**
 * States a small job's problem.
 *
 * @param job - a job that brute force can solve
 * @returns the problem; undefined if the job is refused or has no pieces
 */
export function stateJob(job: StockJob): Stated | undefined {
  let model: StockModel;
  try {
    model = integerModel(checkJob(job));
  } catch (error) {
    if (isInputError(error)) return undefined;
    throw error;
  }
  const problem = finish(stateProblem(model));
  if (problem.sizes.length === 0) return undefined;
  const least = cheapestByForce(job);
  return { problem, least: least === undefined ? undefined : least / fromGrid(1, problem.costGrid) };
}

/**
 * States a job's problem, whatever its size.
 *
 * @param job - a job that is not refused
 * @returns the problem
 */
export function problemOf(job: StockJob): Problem {
  return finish(stateProblem(integerModel(checkJob(job))));
}

/** A search of a problem that may take so many steps. */
export function searchOf(problem: Problem, stepLimit: number = Infinity): Search {
  return startSearch(problem, makeBudget(stepLimit));
}

/** A search that has come to its linear program, which may bound the numbers of sticks. */
export function programmed(search: Search, branching: boolean): ProgramSearch {
  const { problem } = search;
  return addMaster(search, makeMaster(problem, wholeProblem(problem), branching));
}

/** Runs a part of the search to its end. */
export { finish as runSteps };
