/** Something to time. It is called with a running number, so that its input can change from call to call, and returns a number of its result. */
export type Job = (k: number) => number;

/** What keeps the compiler from dropping the work. */
let sink = 0;

/** Milliseconds of a block of calls: short enough to run between two interruptions of a busy machine, long enough for the clock. */
const BLOCK: number = 0.25;
/** Blocks of one job in a row, so that the first ones bring its code and data back into the caches. */
const IN_A_ROW: number = 12;

/** Milliseconds that a block of calls takes. */
function timeBlock(job: Job, calls: number, from: number): number {
  const start = performance.now();
  for (let k = 0; k < calls; k++) sink += job(from + k);
  return performance.now() - start;
}

/** Milliseconds of processor time that this process has used, which go on only while it runs. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * Least milliseconds of one call of each job.
 *
 * The jobs take turns, and the least time of many short blocks is kept: whatever else the machine does makes some blocks longer, none
 * shorter. The budget counts processor time, so that a busy machine measures longer instead of worse.
 *
 * @param jobs - the jobs by name
 * @param budget - milliseconds of processor time in all
 * @returns least milliseconds a call, by the same names
 */
export function leastTimes(jobs: Readonly<Record<string, Job>>, budget: number): Record<string, number> {
  const names = Object.keys(jobs);
  const least = Object.fromEntries(names.map((name) => [name, Infinity]));
  const until = processorTime() + budget;
  let from = 0;
  sink = 0;
  do {
    for (const name of names) {
      for (let block = 0; block < IN_A_ROW; block++) {
        const known = least[name]!;
        const calls = known === Infinity ? 1 : Math.max(1, Math.round(BLOCK / known));
        least[name] = Math.min(known, timeBlock(jobs[name]!, calls, from) / calls);
        from += calls;
      }
    }
  } while (processorTime() < until);
  if (Number.isNaN(sink)) throw new Error("bug: a result is not a number");
  return least;
}
