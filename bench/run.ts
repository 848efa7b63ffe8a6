/**
 * Runs every benchmark and prints one table. Numbers are comparable within one run alone: another machine, or a busier one,
 * has others.
 */

/** A group of benchmarks: what its numbers mean, and what runs it. */
interface Group {
  readonly group: string;
  /** What each number of the group is. */
  readonly meaning: string;
  readonly run: () => Promise<readonly (readonly [name: string, value: number])[]>;
}

const BARE = "times as long as bare trigonometry";
const RATE = "calls a second";
const OTHER = "times as fast as the other library";

/** The groups. A new one is a line. */
const GROUPS: readonly Group[] = [
  {
    group: "miter",
    meaning: BARE,
    run: async () => (await import("./miter.js")).benchMiter().map((row) => [row.name, row.ratio]),
  },
  {
    group: "units",
    meaning: OTHER,
    run: async () => (await import("./units.js")).benchUnits().map((row) => [row.name, row.ratioOfMedians]),
  },
  {
    group: "frame",
    meaning: RATE,
    run: async () => (await import("./frame.js")).benchFrame().map((row) => [row.name, row.callsPerSecond]),
  },
];

const table: Record<string, { readonly value: number; readonly meaning: string }> = {};
for (const { group, meaning, run } of GROUPS) {
  for (const [name, value] of await run())
    table[`${group}: ${name}`] = { value: Number(value.toPrecision(3)), meaning };
}
console.table(table);

// A file that awaits must be a module.
export {};
