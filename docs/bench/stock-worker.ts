/**
 * The worker in which sticks are fitted, so that the page stays awake. It is told to stop by a message, which it hears whenever the search pauses.
 */
import { isInputError } from "miterwright/errors";
import { fitStockAsync, type StockJob } from "miterwright/stock";
import type { StockAnswer, StockRequest } from "./stock-messages.js";

/** The part of a worker's global scope that is used here. */
interface Scope {
  onmessage: ((event: { readonly data: StockRequest }) => void) | null;
  postMessage: (message: StockAnswer) => void;
}

/** Milliseconds after which the best plan so far is taken: what people wait for with a stop button at hand. */
const LONGEST: number = 60_000;

const scope = globalThis as unknown as Scope;
let isStopped = false;

async function answer(job: StockJob): Promise<void> {
  try {
    const fit = await fitStockAsync(job, {
      timeLimit: LONGEST,
      onProgress: (progress) => {
        scope.postMessage({ kind: "progress", progress });
        return isStopped ? "stop" : undefined;
      },
    });
    scope.postMessage({ kind: "fit", fit });
  } catch (error) {
    // What is thrown here is heard by nobody else, and the page would wait for ever.
    scope.postMessage(
      isInputError(error) ? { kind: "refused", code: error.code } : { kind: "failed", message: String(error) },
    );
  }
}

scope.onmessage = ({ data }) => {
  if (data.kind === "stop") isStopped = true;
  else void answer(data.job);
};
