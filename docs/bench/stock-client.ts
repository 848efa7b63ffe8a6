import type { StockJob } from "miterwright/stock";
import type { StockAnswer, StockRequest } from "./stock-messages.js";
import { scriptAddress, workerText } from "./worker-text.js";

/** A search that is going on. */
export interface Fitting {
  /** Asks for the best plan so far. */
  readonly stop: () => void;
  /** Ends it without an answer. */
  readonly drop: () => void;
}

/** Starts a worker from its text, and tells of its answers; the last one is no progress. */
function startWorker(text: string, job: StockJob, tell: (answer: StockAnswer) => void): Fitting {
  const address = URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
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

/**
 * Fits a job in a worker.
 *
 * @param job - pieces and sticks
 * @param tell - told of every answer; the last one is no progress
 * @returns the search; until its worker is there it can only be dropped
 */
export function fitInWorker(job: StockJob, tell: (answer: StockAnswer) => void): Fitting {
  let fitting: Fitting | null = null;
  let isDropped = false;
  workerText().then(
    (text) => {
      if (!isDropped) fitting = startWorker(text, job, tell);
    },
    (error: unknown) => {
      if (!isDropped) tell({ kind: "failed", message: String(error) });
    },
  );
  return {
    stop: () => {
      fitting?.stop();
    },
    drop: () => {
      isDropped = true;
      fitting?.drop();
    },
  };
}
