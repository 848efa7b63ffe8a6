import type { InputErrorCode } from "miterwright/errors";
import type { FitProgress, StockFit, StockJob } from "miterwright/stock";

/** To the worker: a job to fit, or to end the search. */
export type StockRequest = { readonly kind: "fit"; readonly job: StockJob } | { readonly kind: "stop" };

/** From the worker: how it goes, and in the end the plan, what was wrong with the job, or what failed. */
export type StockAnswer =
  | { readonly kind: "progress"; readonly progress: FitProgress }
  | { readonly kind: "fit"; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly code: InputErrorCode }
  | { readonly kind: "failed"; readonly message: string };

/** The script beside the page that holds the text of the worker. */
export const WORKER_SCRIPT: string = "stock.js";
/** The name of the global under which that script leaves the text. */
export const WORKER_TEXT: string = "stockWorkerText";
