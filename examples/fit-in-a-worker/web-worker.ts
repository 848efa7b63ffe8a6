/**
 * A web worker, loaded as a module.
 */
import { answer } from "./answer.js";
import type { Answer, Request } from "./messages.js";

/** The part of a worker's global scope that is used here. */
interface Scope {
  onmessage: ((event: { readonly data: Request }) => void) | null;
  postMessage(message: Answer): void;
}

const scope = globalThis as unknown as Scope;
scope.onmessage = ({ data }) => {
  answer(data, (message) => {
    scope.postMessage(message);
  });
};
