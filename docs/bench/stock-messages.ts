import type { FitProgress, StockFit, StockJob } from "miterwright/stock";

/** To the worker: a job to fit, or to end the search. */
export type StockRequest = { readonly kind: "fit"; readonly job: StockJob } | { readonly kind: "stop" };

/** From the worker: how it goes, and in the end the plan or what was wrong with the job. */
export type StockAnswer =
  | { readonly kind: "progress"; readonly progress: FitProgress }
  | { readonly kind: "fit"; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly code: string; readonly message: string };
