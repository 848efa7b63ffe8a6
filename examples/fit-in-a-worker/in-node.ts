/**
 * For a server or a command line: fits a job in a worker thread, so that the program goes on meanwhile.
 */
import { Worker } from "node:worker_threads";
import type { Answer, Request } from "./messages.js";

/**
 * Fits a job in a thread of its own.
 *
 * @param request - the job
 * @param onAnswer - told of every answer, the last one too
 * @returns the last answer: the plan, or what was wrong with the job
 */
export function fitInThread(request: Request, onAnswer?: (answer: Answer) => void): Promise<Answer> {
  const worker = new Worker(new URL("./thread.mjs", import.meta.url), { workerData: request });
  return new Promise((resolve, reject) => {
    worker.on("error", reject);
    worker.on("message", (answer: Answer) => {
      onAnswer?.(answer);
      if (answer.kind !== "progress") resolve(answer);
    });
  });
}
