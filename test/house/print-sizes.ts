/** Prints what each import costs, beside its ceiling. Run by `npm run sizes`, after a build. */
import { measureImport } from "./measure-bundle.js";
import { SIZE_LIMITS } from "./size-limits.js";

const header = ["import", "from", "minified", "gzipped", "ceiling"];
const rows: string[][] = [];
for (const { entry, name, limit } of SIZE_LIMITS) {
  const { minified, gzipped } = await measureImport(entry, name);
  rows.push([name ?? "*", entry, String(minified), String(gzipped), String(limit)]);
}
const widths = header.map((title, column) => Math.max(title.length, ...rows.map((row) => row[column]!.length)));
for (const row of [header, ...rows]) {
  console.log(
    row.map((cell, column) => (column < 2 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!))).join("  "),
  );
}
