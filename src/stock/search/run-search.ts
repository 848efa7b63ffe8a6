import type { CheckedOptions } from "../fit-options.js";
import type { StockFit } from "../fit/stock-fit.js";
import { writeFit } from "../fit/write-fit.js";
import { readClock } from "../host.js";
import { readJob } from "../job/check-job.js";
import type { StockJob } from "../job/stock-job.js";
import { fromGrid } from "../model/grid.js";
import { integerModel } from "../model/integer-model.js";
import { stateProblem } from "../model/state-problem.js";
import type { Steps } from "../steps.js";
import { sumOf } from "../sums.js";
import { makeBudget } from "./budget.js";
import { findPlan } from "./find-plan.js";
import { startSearch } from "./search.js";

/** Steps between two calls of `onProgress` when nothing new was found. */
const STEPS_BETWEEN_REPORTS = 1_000_000;

/** Reads a job, searches and writes the plan step by step; whoever drives it decides what happens between the steps. */
export function* runSearch(value: StockJob, options: CheckedOptions): Steps<StockFit> {
  const start = readClock();
  const model = integerModel(yield* readJob(value));
  yield;
  const search = startSearch(yield* stateProblem(model), makeBudget(options.stepLimit));
  const { problem, budget } = search;
  let told = "";
  const report = (): void => {
    const { cost, remaining, whole } = search.incumbent;
    const bound = whole ? Math.min(search.bound, cost) : search.bound;
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
  for (const step of findPlan(search)) {
    if (readClock() - start >= options.timeLimit) budget.stopped ??= "time";
    // Nobody is told more than was asked for.
    if (budget.stopped !== "asked") report();
    yield step;
  }
  return yield* writeFit(model, search);
}
