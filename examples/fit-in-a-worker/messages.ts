/**
 * What a page or program and its worker tell each other. Jobs, plans and progress are plain data, so they travel as they are.
 */
import type { FitProgress, StockFit, StockJob } from "miterwright/stock";

/** To the worker: a job, and how long it may take. */
export interface Request {
  readonly job: StockJob;
  readonly timeLimit: number;
}

/** From the worker: how it goes, and in the end the plan or what was wrong with the job. */
export type Answer =
  | { readonly kind: "progress"; readonly progress: FitProgress }
  | { readonly kind: "fit"; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly path: string; readonly message: string };
