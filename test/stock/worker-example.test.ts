import { describe, expect, test } from "vitest";
import { fitStock, type StockJob } from "miterwright/stock";
import { fitInWebWorker } from "../../examples/fit-in-a-worker/in-a-page.js";
import { fitInThread } from "../../examples/fit-in-a-worker/in-node.js";
import type { Answer, Request } from "../../examples/fit-in-a-worker/messages.js";

const job: StockJob = {
  pieces: [{ id: "side", length: 412.8, count: 15 }],
  sticks: [{ id: "ash", length: 3000 }],
  kerf: 3,
};
const request: Request = { job, timeLimit: 2000 };
const refused: Request = { job: { ...job, sticks: [] }, timeLimit: 2000 };

/** A stand-in for the page's `Worker`: the worker's file runs in this very program, with a scope that passes messages on. */
class PretendedWorker {
  onmessage: ((event: { data: Answer }) => void) | null = null;
  readonly #scope = globalThis as unknown as { onmessage?: (event: { data: unknown }) => void; postMessage?: unknown };
  readonly #ready: Promise<unknown>;

  constructor(url: URL, options: { type: string }) {
    expect([url.pathname.split("/").at(-1), options.type]).toEqual(["web-worker.ts", "module"]);
    this.#scope.postMessage = (data: Answer) => this.onmessage?.({ data });
    this.#ready = import("../../examples/fit-in-a-worker/web-worker.js");
  }

  postMessage(data: Request): void {
    void this.#ready.then(() => this.#scope.onmessage?.({ data: structuredClone(data) }));
  }

  terminate(): void {
    delete this.#scope.postMessage;
  }
}

describe("the worker example", () => {
  test("runs in a thread", async () => {
    const kinds: string[] = [];
    expect(await fitInThread(request, ({ kind }) => kinds.push(kind))).toEqual({ kind: "fit", fit: fitStock(job) });
    expect(new Set(kinds)).toEqual(new Set(["progress", "fit"]));
    expect(await fitInThread(refused)).toMatchObject({ kind: "refused", path: "job.sticks" });
  });

  test("runs in a page", async () => {
    (globalThis as { Worker?: unknown }).Worker = PretendedWorker;
    expect(await fitInWebWorker(request)).toEqual({ kind: "fit", fit: fitStock(job) });
    expect(await fitInWebWorker(refused)).toMatchObject({ kind: "refused", path: "job.sticks" });
  });
});
