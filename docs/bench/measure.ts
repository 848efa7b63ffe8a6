/**
 * Measures the built page in Chromium: what it weighs, when it is first seen, and what an edit costs beside computing alone. Run by `npm run bench:page`.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { openBrowser } from "../../test/browser/open-browser.js";
import { buildBenchPage } from "./build.js";
import { exampleJob } from "./example-job.js";
import { jobToFragment } from "./job-link.js";

const EDITS = 60;

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** The computing of an edit alone: from what is typed to the plan. */
async function computingAlone(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents:
        'export { planJob } from "./plan-job.js"; export { exampleJob } from "./example-job.js"; export { emptyJob } from "./job-state.js";',
      resolveDir: here("."),
    },
    bundle: true,
    minify: true,
    write: false,
    format: "iife",
    globalName: "alone",
    target: "es2022",
    tsconfig: here("tsconfig.json"),
  });
  return outputFiles[0]!.text;
}

const REDRAW = `(() => {
  const width = document.getElementById("width");
  const times = [];
  for (let edit = 0; edit < ${EDITS}; edit += 1) {
    width.value = String(340 + edit);
    const start = performance.now();
    width.dispatchEvent(new InputEvent("input", { bubbles: true }));
    document.body.getBoundingClientRect();
    times.push(performance.now() - start);
  }
  return times;
})()`;

const COMPUTE = `(() => {
  const job = alone.exampleJob();
  const times = [];
  for (let edit = 0; edit < ${EDITS}; edit += 1) {
    const start = performance.now();
    alone.planJob({ ...job, values: { ...job.values, width: String(340 + edit) } });
    times.push(performance.now() - start);
  }
  return times;
})()`;

const PAINT = `performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0`;
/** The time that an empty page takes to its first paint, on this machine, is what the page's own is compared with. */
const EMPTY =
  '<!doctype html><html lang="en"><meta charset="utf-8"><title>Empty</title><body><p>Empty</p></body></html>';

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

const folder = mkdtempSync(join(tmpdir(), "miterwright-bench-page-"));
await buildBenchPage(folder);
const browser = await openBrowser();
try {
  const files = ["index.html", "bench.css", "bench.js"];
  const weigh = (name: string): number => gzipSync(readFileSync(join(folder, "bench", name)), { level: 9 }).length;
  const weights = files.map(weigh);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  console.log("Page weight, gzip");
  files.forEach((name, index) => {
    console.log(`  ${name}: ${weights[index]!} bytes`);
  });
  console.log(`  together: ${total} bytes (ceiling 150000)`);
  console.log(`  stock.js, once sticks are fitted: ${weigh("stock.js")} bytes`);

  const address = pathToFileURL(join(folder, "bench/index.html")).href;
  const empty = browser.serve("empty.html", EMPTY);
  const paint = async (where: string): Promise<number> => {
    const { page } = await browser.open(where);
    await page.waitForFunction(`${PAINT} > 0`);
    const time = await page.evaluate<number>(PAINT);
    await page.close();
    return time;
  };
  const paints = { empty: [] as number[], page: [] as number[] };
  for (let round = 0; round < 7; round += 1) {
    paints.empty.push(await paint(empty));
    paints.page.push(await paint(address));
  }
  const [ours, bare] = [median(paints.page), median(paints.empty)];
  console.log(`First paint: ${ours.toFixed(0)} ms, ${(ours / bare).toFixed(1)} times that of an empty page`);

  const { page } = await browser.open(`${address}#${jobToFragment(exampleJob())}`);
  // Evaluated from outside: the page's policy takes no script of ours.
  await page.evaluate(`${await computingAlone()};globalThis.alone = alone;0`);
  await page.evaluate(COMPUTE);
  await page.evaluate(REDRAW);
  const compute = median(await page.evaluate<number[]>(COMPUTE));
  const redraw = median(await page.evaluate<number[]>(REDRAW));
  console.log(
    `An edit: ${redraw.toFixed(1)} ms to the new layout, ${(redraw / compute).toFixed(1)} times computing alone (${compute.toFixed(2)} ms)`,
  );
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}
