/**
 * For a page: fits a job in a web worker, so that the page stays awake. A bundler that knows `new Worker(new URL(...))`
 * makes a file of the worker by itself.
 */
import type { Answer, Request } from "./messages.js";

/** The part of a web worker that is used here. */
interface PageWorker {
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  postMessage(message: Request): void;
  terminate(): void;
}

declare const Worker: new (url: URL, options: { readonly type: "module" }) => PageWorker;

/**
 * Fits a job in a web worker.
 *
 * @param request - the job
 * @param onAnswer - told of every answer, the last one too
 * @returns the last answer: the plan, or what was wrong with the job
 */
export function fitInWebWorker(request: Request, onAnswer?: (answer: Answer) => void): Promise<Answer> {
  const worker = new Worker(new URL("./web-worker.ts", import.meta.url), { type: "module" });
  return new Promise((resolve) => {
    worker.onmessage = ({ data }) => {
      onAnswer?.(data);
      if (data.kind === "progress") return;
      worker.terminate();
      resolve(data);
    };
    worker.postMessage(request);
  });
}
