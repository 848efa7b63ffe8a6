/**
 * The work itself, the same in a worker thread of Node and in a web worker. To end it early, terminate the worker.
 */
import { isInputError } from "miterwright/errors";
import { fitStock } from "miterwright/stock";
import type { Answer, Request } from "./messages.js";

/**
 * Fits a job and tells how it goes.
 *
 * @param request - the job
 * @param tell - sends an answer to whoever asked
 */
export function answer({ job, timeLimit }: Request, tell: (answer: Answer) => void): void {
  try {
    const fit = fitStock(job, {
      timeLimit,
      onProgress: (progress) => {
        tell({ kind: "progress", progress });
      },
    });
    tell({ kind: "fit", fit });
  } catch (error) {
    if (!isInputError(error)) throw error;
    tell({ kind: "refused", path: error.path, message: error.message });
  }
}
