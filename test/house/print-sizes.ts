/** Prints what each import costs, beside its ceiling. Run by `npm run sizes`, after a build. */
import { measureImport } from "./measure-bundle.js";
import { SIZE_LIMITS } from "./size-limits.js";

const table: Record<string, { readonly minified: number; readonly gzipped: number; readonly ceiling: number }> = {};
for (const { entry, name, limit } of SIZE_LIMITS) {
  const { minified, gzipped } = await measureImport(entry, name);
  table[`${name ?? "*"} from ${entry}`] = { minified, gzipped, ceiling: limit };
}
console.table(table);
