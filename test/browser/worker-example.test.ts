import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { fitStock, type StockJob } from "miterwright/stock";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { triplets } from "../bench/stock/generate.js";
import { bundleProgram } from "../house/measure-bundle.js";
import { ROOT } from "../house/project.js";
import { openBrowser, type OpenBrowser } from "./open-browser.js";

/** The page's own program: it leaves its results and what it was told where the test can see them. */
const PROGRAM = `
  import { fitInWebWorker } from "./examples/fit-in-a-worker/in-a-page.ts";
  window.told = [];
  window.fit = (request) => fitInWebWorker(request, ({ kind }) => window.told.push(kind));
  window.fitAndStop = (request) => {
    const controller = new AbortController();
    const onAnswer = ({ kind }) => {
      window.told.push(kind);
      controller.abort(new Error("another order came in"));
    };
    return fitInWebWorker(request, onAnswer, controller.signal).catch(({ message }) => message);
  };
`;

/** Bundles a file of the example as an entry of its own. */
async function bundleExample(name: string): Promise<string> {
  const folder = join(ROOT, "examples/fit-in-a-worker");
  const contents = readFileSync(join(folder, name), "utf8");
  const { code } = await bundleProgram("", { stdin: { contents, resolveDir: folder, loader: "ts" } });
  return code;
}

let browser: OpenBrowser;
let server: Server;
let page: Page;
const uncaught: string[] = [];
beforeAll(async () => {
  browser = await openBrowser();
  const files: Record<string, [type: string, text: string]> = {
    "/": [
      "text/html",
      '<!doctype html><html lang="en"><title>Worker</title><script type="module" src="in-a-page.js"></script></html>',
    ],
    "/in-a-page.js": ["text/javascript", (await bundleProgram(PROGRAM)).code],
    // The page asks for the file by the name it has here; what is served is its bundle.
    "/web-worker.ts": ["text/javascript", await bundleExample("web-worker.ts")],
  };
  server = createServer(({ url }, response) => {
    const [type, text] = files[url ?? ""] ?? ["text/plain", ""];
    response.writeHead(text === "" ? 404 : 200, { "content-type": type }).end(text);
  }).listen(0, "127.0.0.1");
  await once(server, "listening");
  page = await browser.context.newPage();
  page.on("pageerror", ({ message }) => uncaught.push(message));
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  await page.waitForFunction("window.fit !== undefined");
});
afterAll(async () => {
  await browser.close();
  server.close();
});

/** The browser gives a worker that is busy some seconds to come to its end before it is taken away. */
const GONE = { timeout: 15_000 } as const;

const job: StockJob = {
  pieces: [{ id: "side", length: 412.8, count: 15 }],
  sticks: [{ id: "ash", length: 3000 }],
  kerf: 3,
};

test("a web worker gives the plan that Node gives, and is gone afterwards", async () => {
  const answer: unknown = await page.evaluate(`window.fit(${JSON.stringify({ job, timeLimit: 20_000 })})`);
  expect(answer).toEqual({ kind: "fit", fit: fitStock(job) });
  expect(await page.evaluate("window.told.splice(0).at(-1)")).toBe("fit");
  await expect.poll(() => page.workers().length, GONE).toBe(0);
});

test("a job that is refused comes back with what is wrong", async () => {
  const refused = { job: { ...job, sticks: [] }, timeLimit: 2000 };
  expect(await page.evaluate(`window.fit(${JSON.stringify(refused)})`)).toEqual({
    kind: "refused",
    path: "job.sticks",
    message: "Expected `job.sticks` to be an array of one stick or more, got an empty array",
  });
  await page.evaluate("window.told.splice(0)");
});

test("a search that is stopped ends at once, in the midst of its work", async () => {
  // A job that takes a while: many lengths, and no waste at all.
  const long = { job: triplets(501, 1)[0]!.job, timeLimit: 600_000 };
  expect(await page.evaluate(`window.fitAndStop(${JSON.stringify(long)})`)).toBe("another order came in");
  await expect.poll(() => page.workers().length, GONE).toBe(0);
  expect(await page.evaluate("window.told")).not.toContain("fit");
  expect(uncaught).toEqual([]);
});
