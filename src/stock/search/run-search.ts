import { type Budget, makeBudget } from "./budget.js";
import type { Steps } from "../steps.js";
import { readJob } from "../job/check-job.js";
import type { CheckedOptions } from "../check-options.js";
import { fromGrid } from "../model/grid.js";
import { readClock } from "../host.js";
import { nothingFound } from "./incumbent.js";
import { integerModel } from "../model/integer-model.js";
import { stateProblem } from "../model/problem.js";
import { search } from "./find-plan.js";
import type { StockFit } from "../fit/stock-fit.js";
import type { StockJob } from "../job/stock-job.js";
import { sumOf } from "../sums.js";
import { writeFit } from "../fit/write-fit.js";

/** Steps between two calls of `onProgress` when nothing new was found. */
const STEPS_BETWEEN_REPORTS = 1_000_000;

/** Runs a search piece by piece; whoever drives it decides what happens between the pieces. */
export function* runSearch(value: StockJob, options: CheckedOptions): Steps<StockFit> {
  const start = readClock();
  const model = integerModel(yield* readJob(value));
  yield;
  const problem = yield* stateProblem(model);
  const budget: Budget = makeBudget(options.stepLimit);
  const found = nothingFound(problem);
  let told = "";
  const report = (): void => {
    const { cost, remaining, whole } = found;
    const bound = whole ? Math.min(found.bound, cost) : found.bound;
    const news = `${cost} ${bound} ${Math.floor(budget.steps / STEPS_BETWEEN_REPORTS)}`;
    if (news === told) return;
    told = news;
    const answer = options.onProgress?.({
      cost: fromGrid(cost, problem.costGrid),
      bound: fromGrid(bound, problem.costGrid),
      unplaced: sumOf(remaining),
      steps: budget.steps,
    });
    if (answer === "stop") budget.stopped ??= "asked";
  };
  for (const step of search(problem, budget, found)) {
    if (readClock() - start >= options.timeLimit) budget.stopped ??= "time";
    // Nobody is told more than was asked for.
    if (budget.stopped !== "asked") report();
    yield step;
  }
  return yield* writeFit(model, problem, found, budget.stopped);
}
