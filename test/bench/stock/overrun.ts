/**
 * Runs random jobs of large counts, credits, trims, offcuts worth keeping and mixed costs under a short time limit, and
 * prints how far beyond it the worst of them end.
 *
 * Options: `--quick` runs a tenth of them; `--check` fails if one ends more than {@link MOST_OVERRUN} beyond its limit, which
 * is what `timeLimit` promises. Reading a job, filling its sticks once and writing the plan are not cut short, so a job counts from
 * what these take alone where that is longer than the limit. The machine must have a processor to spare: what others take of it counts too.
 */
import { verifyFit, fitStock, type StockJob } from "miterwright/stock";
import { LARGE, randomJob } from "./overrun-jobs.js";

/** Milliseconds that each job may search. */
const LIMIT = 100;
/** Milliseconds beyond that in which a fit has to end. */
const MOST_OVERRUN = 100;
/** Random jobs. */
const JOBS = process.argv.includes("--quick") ? 100 : 1000;

const several = <T>(count: number, make: (k: number) => T): T[] => Array.from({ length: count }, (_, k) => make(k));

function timed<T>(call: () => T): { readonly time: number; readonly value: T } {
  const start = performance.now();
  const value = call();
  return { time: performance.now() - start, value };
}

interface Run {
  readonly name: string;
  readonly overrun: number;
}

function run(name: string, job: StockJob): Run {
  const least = timed(() => fitStock(job, { timeLimit: 0 })).time;
  const { time, value: fit } = timed(() => fitStock(job, { timeLimit: LIMIT }));
  const overrun = time - Math.max(LIMIT, least);
  const check = verifyFit(job, fit);
  if (!check.ok) throw new Error(`${name}: ${check.faults[0]!.message}`);
  return { name, overrun };
}

const milliseconds = (value: number): string => value.toFixed(0);

// The first runs are those of a cold engine.
for (const seed of [1, 2, 3]) run("warm-up", randomJob(seed));
const runs = several(JOBS, (seed) => run(`random #${seed}`, randomJob(seed)));
for (const { name, make } of LARGE) runs.push(run(name, make()));
runs.sort((a, b) => b.overrun - a.overrun);
console.table(
  runs.slice(0, 12).map(({ name, overrun }) => ({ job: name, "beyond its limit, ms": milliseconds(overrun) })),
);
const late = runs.filter(({ overrun }) => overrun > MOST_OVERRUN);
console.log(
  `${runs.length} jobs, ${LIMIT} ms each: ${late.length} ended more than ${MOST_OVERRUN} ms late, the worst ${milliseconds(runs[0]!.overrun)} ms.`,
);
if (process.argv.includes("--check") && late.length > 0) process.exitCode = 1;
