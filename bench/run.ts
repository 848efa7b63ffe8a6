/**
 * Runs every benchmark and prints one table. A number is only comparable with the others of its own run and group: each is
 * how many times as long something takes as the first row of its group.
 */

/** One measured row, as benchmark files return it. */
interface Row {
  /** What was measured. */
  readonly name: string;
  /** Its time over that of the group's baseline. */
  readonly ratio: number;
}

/** The groups. A new benchmark is one line. */
const GROUPS: readonly (readonly [group: string, run: () => Promise<readonly Row[]>])[] = [
  ["miter", async () => (await import("./miter.js")).benchMiter()],
];

const table: Record<string, { readonly "times as long": number }> = {};
for (const [group, run] of GROUPS) {
  for (const { name, ratio } of await run())
    table[`${group}: ${name}`] = { "times as long": Number(ratio.toPrecision(3)) };
}
console.table(table);
