/**
 * Runs the stock engine on the classical classes and on trade jobs, and prints a line for each class; then a general solver
 * on some of the same trade jobs, and jobs that no shop has. Times are those of one run on one machine: compare them with each other only.
 *
 * Options: `--quick` runs a few of each class, a word runs the classes whose names hold it; `highs` and `limits` are words
 * too.
 */
import { verifyFit, fitStock } from "miterwright/stock";
import * as draw from "./generate.js";
import type { Instance } from "./generate.js";
import { knownJobs } from "./known-jobs.js";

interface Class {
  readonly name: string;
  readonly instances: readonly Instance[];
  /** Milliseconds an instance may take. */
  readonly limit: number;
}

const quick = process.argv.includes("--quick");
const wanted = process.argv.slice(2).find((word) => !word.startsWith("--")) ?? "";
const some = (count: number): number => (quick ? Math.max(1, Math.ceil(count / 5)) : count);

const classes: Class[] = [
  { name: "trade, known to other solvers", instances: knownJobs(), limit: 250 },
  { name: "trade, one length", instances: draw.trade("one length", some(30)), limit: 2000 },
  { name: "trade, several, cost by length", instances: draw.trade("by length", some(30)), limit: 2000 },
  { name: "trade, several, rack by length", instances: draw.trade("all by length", some(30)), limit: 2000 },
  { name: "trade, several, fewest", instances: draw.trade("fewest", some(30)), limit: 2000 },
  { name: "trade, several, own costs, 250 ms", instances: draw.trade("own costs", some(20)), limit: 250 },
  { name: "trade, several, own costs, 10 s", instances: draw.trade("own costs", some(10)), limit: 10_000 },
  ...[120, 250, 500, 1000].map((n) => ({ name: `uniform ${n}`, instances: draw.uniform(n, some(20)), limit: 10_000 })),
  ...[60, 120, 249, 501].map((n) => ({ name: `triplets ${n}`, instances: draw.triplets(n, some(20)), limit: 20_000 })),
  ...[50, 100, 200, 500].map((n) => ({ name: `first set ${n}`, instances: draw.firstSet(n, some(5)), limit: 10_000 })),
  ...[50, 100, 200, 500].map((n) => ({
    name: `second set ${n}`,
    instances: draw.secondSet(n, some(3)),
    limit: 60_000,
  })),
  { name: "third set", instances: draw.thirdSet(some(10)), limit: 60_000 },
  ...[100, 120].map((n) => ({ name: `almost six ${n}`, instances: draw.almostSix(n, some(50)), limit: 10_000 })),
  { name: "wide sizes", instances: draw.wideSizes(some(50)), limit: 60_000 },
  { name: "few of each", instances: draw.fewOfEach(some(50)), limit: 60_000 },
  ...[60, 600].map((n) => ({ name: `planted ${n}`, instances: draw.planted(n, some(10)), limit: 10_000 })),
];

const at = (sorted: readonly number[], part: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
const milliseconds = (value: number): string => value.toFixed(value < 10 ? 1 : 0);

const table: Record<string, Record<string, string | number>> = {};
for (const { name, instances, limit } of classes) {
  if (instances.length === 0 || !name.includes(wanted)) continue;
  fitStock(instances[0]!.job, { timeLimit: Math.min(limit, 500) });
  const times: number[] = [];
  const gaps: number[] = [];
  let proven = 0;
  let known = 0;
  let hit = 0;
  for (const { name: each, job, optimum } of instances) {
    const start = performance.now();
    const fit = fitStock(job, { timeLimit: limit });
    times.push(performance.now() - start);
    const check = verifyFit(job, fit);
    if (!check.ok) throw new Error(`${each}: ${check.faults[0]!.message}`);
    if (optimum !== undefined && fit.bound > optimum)
      throw new Error(`${each}: a bound of ${fit.bound} above ${optimum}`);
    gaps.push(fit.relativeGap);
    if (fit.status === "optimal") proven++;
    if (optimum !== undefined) known++;
    if (fit.cost === optimum) hit++;
  }
  times.sort((a, b) => a - b);
  gaps.sort((a, b) => a - b);
  table[name] = {
    instances: instances.length,
    proven,
    "optimum hit": known === 0 ? "-" : `${hit}/${known}`,
    "median ms": milliseconds(at(times, 0.5)),
    "90 % ms": milliseconds(at(times, 0.9)),
    "most ms": milliseconds(times.at(-1)!),
    "mean gap %": ((100 * gaps.reduce((sum, gap) => sum + gap, 0)) / gaps.length).toFixed(2),
    "most gap %": (100 * gaps.at(-1)!).toFixed(2),
    "peak MB": Math.round(process.resourceUsage().maxRSS / 1024),
  };
}
console.table(table);

/** Jobs that the general solver is given too, and the seconds its search for whole numbers may take. */
const others = [
  ...draw.trade("one length", some(10)),
  ...draw.trade("by length", some(10)),
  ...draw.trade("own costs", some(5)),
];
const SECONDS = 20;
const rows: Record<string, Record<string, string | number>> = {};
let logarithms = 0;
if (wanted === "" || wanted === "highs") {
  // Loaded only now, so that the memory above is the library's.
  const { fitWithHighs } = await import("./with-highs.js");
  for (const { name, job } of others) {
    fitStock(job, { timeLimit: 100 });
    const start = performance.now();
    const fit = fitStock(job, { timeLimit: 1000 * SECONDS });
    const own = performance.now() - start;
    const other = fitWithHighs(job, SECONDS);
    logarithms += Math.log(other.milliseconds / own);
    rows[name] = {
      "own cost": fit.cost,
      "own status": fit.status,
      "own ms": milliseconds(own),
      "HiGHS cost": other.cost,
      "HiGHS bound": other.bound.toFixed(2),
      "HiGHS ms": milliseconds(other.milliseconds),
      ratio: (other.milliseconds / own).toPrecision(3),
    };
  }
  console.table(rows);
  console.log(`geometric mean of the ratios: ${Math.exp(logarithms / others.length).toFixed(1)}`);
}
if (wanted === "" || wanted === "limits") await import("./limits.js");
