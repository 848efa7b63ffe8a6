/**
 * Times the library, prints one table and, with `--check`, fails where a row is beyond twice its aim.
 *
 * Every value is a ratio of two times of this run. `npm run bench` bundles this file first: run from its sources by tsx, every inner function
 * would be given its name again at each call, which the package does not do, and a plan would take half as long again.
 */
import { AIMS } from "./aims.js";
import { betterOf, missedAims } from "./check-aims.js";
import { readArguments, type BenchArguments } from "./read-arguments.js";
import type { Row } from "./row.js";

/** Milliseconds of processor time for each group. */
const BUDGET: number = 5000;
/** How often a run that misses an aim is repeated, before it counts. */
const REPEATS: number = 2;

async function measure(): Promise<Row[]> {
  const { benchCorners } = await import("./corners.js");
  const corners = benchCorners(BUDGET);
  const { benchUnits } = await import("./units.js");
  return [...corners, ...benchUnits(BUDGET)];
}

function print(rows: readonly Row[]): void {
  const aimOf = (row: Row): number | undefined => AIMS.find(({ name }) => name === row.name)?.aim;
  console.table(
    Object.fromEntries(
      rows.map((row) => [row.name, { value: Number(row.value.toPrecision(3)), aim: aimOf(row), meaning: row.meaning }]),
    ),
  );
}

async function run({ check }: BenchArguments): Promise<void> {
  let rows = await measure();
  for (let repeat = 0; check && repeat < REPEATS && missedAims(rows, AIMS).length > 0; repeat++) {
    rows = betterOf(rows, await measure());
  }
  print(rows);
  const faults = check ? missedAims(rows, AIMS) : [];
  for (const fault of faults) console.error(fault);
  if (faults.length > 0) process.exitCode = 1;
}

try {
  await run(readArguments(process.argv.slice(2)));
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}
