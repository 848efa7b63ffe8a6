import type { StockJob } from "miterwright/stock";
import type { StockAnswer, StockRequest } from "./stock-messages.js";

/** The worker's script, put in when the page is built. */
declare const STOCK_WORKER: string;

/** The part of a browser's Trusted Types that is used. Without them addresses are plain texts. */
interface TrustedTypes {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ) => { readonly createScriptURL: (address: string) => URL };
}

let makeAddress: ((address: string) => string | URL) | undefined;

/** The address of our own worker, as the page's policy asks for it. A policy is made once. */
function scriptAddress(address: string): string | URL {
  if (makeAddress === undefined) {
    const { trustedTypes } = globalThis as { readonly trustedTypes?: TrustedTypes };
    const policy = trustedTypes?.createPolicy("stock-worker", { createScriptURL: (own) => own });
    makeAddress = (own) => policy?.createScriptURL(own) ?? own;
  }
  return makeAddress(address);
}

/** A search that is going on. */
export interface Fitting {
  /** Asks for the best plan so far. */
  readonly stop: () => void;
  /** Ends it without an answer. */
  readonly drop: () => void;
}

/**
 * Fits a job in a worker.
 *
 * The worker is made from text, since a page that was opened as a file may not load one from another file.
 *
 * @param job - pieces and sticks
 * @param tell - told of every answer; the last one is no progress
 * @returns the search
 */
export function fitInWorker(job: StockJob, tell: (answer: StockAnswer) => void): Fitting {
  const address = URL.createObjectURL(new Blob([STOCK_WORKER], { type: "text/javascript" }));
  const worker = new Worker(scriptAddress(address));
  const end = (): void => {
    worker.terminate();
    URL.revokeObjectURL(address);
  };
  worker.onmessage = ({ data }: MessageEvent<StockAnswer>): void => {
    if (data.kind !== "progress") end();
    tell(data);
  };
  worker.onerror = ({ message }): void => {
    end();
    tell({ kind: "failed", message });
  };
  const ask = (request: StockRequest): void => {
    worker.postMessage(request);
  };
  ask({ kind: "fit", job });
  return {
    stop: () => {
      ask({ kind: "stop" });
    },
    drop: end,
  };
}
