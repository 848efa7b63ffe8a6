/**
 * For a page: fits a job in a web worker, so that the page stays awake. A bundler that knows `new Worker(new URL(...))`
 * makes a file of the worker by itself.
 */
import type { Answer, Request } from "./messages.js";

/** The part of a web worker that is used here. */
interface PageWorker {
  onmessage: ((event: { readonly data: Answer }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
  postMessage(message: Request): void;
  terminate(): void;
}

declare const Worker: new (url: URL, options: { readonly type: "module" }) => PageWorker;

/**
 * Fits a job in a web worker.
 *
 * @param request - the job
 * @param onAnswer - told of every answer, the last one too
 * @param signal - when it is aborted, the worker is ended in the midst of its work and the promise rejects with the reason
 * @returns the last answer: the plan, or what was wrong with the job
 */
export function fitInWebWorker(
  request: Request,
  onAnswer?: (answer: Answer) => void,
  signal?: AbortSignal,
): Promise<Answer> {
  const worker = new Worker(new URL("./web-worker.ts", import.meta.url), { type: "module" });
  return new Promise<Answer>((resolve, reject) => {
    const stop = (): void => {
      reject(signal?.reason as Error);
    };
    signal?.addEventListener("abort", stop);
    if (signal?.aborted === true) stop();
    worker.onerror = ({ message }) => {
      reject(new Error(message ?? "The worker could not be loaded"));
    };
    worker.onmessage = ({ data }) => {
      onAnswer?.(data);
      if (data.kind !== "progress") resolve(data);
    };
    worker.postMessage(request);
  }).finally(() => {
    worker.terminate();
  });
}
