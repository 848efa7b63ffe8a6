import type { StatedJob } from "./stated-job.js";

/** What is wrong with a plan. */
export interface FitFault {
  /** Which rule it breaks. */
  readonly code:
    | "unknown-piece"
    | "unknown-stick"
    | "length"
    | "gap"
    | "clear"
    | "sequence"
    | "offcut"
    | "demand"
    | "limit"
    | "total"
    | "status";
  /** Where, e.g. `fit.layouts[2].pieces[0]`. */
  readonly path: string;
  /** A sentence. */
  readonly message: string;
}

/** What the checks of a plan share. */
export interface Inspection {
  /** The job in its own lengths. */
  readonly job: StatedJob;
  /** How far the plan's grid may make it give away: 0 where the job's lengths lie on it. */
  readonly slack: bigint;
  /** Tells what is wrong. */
  readonly report: (code: FitFault["code"], path: string, message: string) => void;
}
