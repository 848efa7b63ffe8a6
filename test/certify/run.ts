/*
 * Compares every double-precision result that `miterwright/precise` also knows with its true value, over a fixed grid of
 * awkward inputs and 200,000 random ones drawn from a seed, and prints the worst error of each quantity. It fails when one
 * is beyond its limit.
 *
 *     npm run certify -- [--cases 200000] [--seed 1]
 *
 * How errors are measured. The inputs are doubles, and count with their exact values; the true result is computed from them
 * to 40 digits or as many as it takes. The error is the distance of the library's double from it in units:
 *
 * - Products and quotients (lengths, areas, components of the unit normals between equal boards): one unit is the distance of neighboring doubles at
 *   the true value (one ulp). A true value that is exactly 0 must be 0.
 * - Signed sums (section positions, level widths, piece lengths): one unit is one ulp of the sum of the terms' magnitudes,
 *   at least one ulp of the value. The terms are those of the textbook formula: x cos s and y sin s of a section point,
 *   2 A tan h besides of a piece. The components of another corner's normal are signed sums over the normal's length. Where that length is known only from the
 *   components, in a miter at edges, so is to first order the error carried by it (cancellation.ts).
 * - Angles: one unit is one ulp of the true value, at least a sixth of 1e-14 degrees. Where signed sums with cancellation are
 *   the legs of the angle, it is at least one ulp of what their terms' magnitudes, less their own, turn it by.
 *
 * The limit is 6 units for all of them. A polygon's given measure must come back to the bit.
 */
import { parseArgs } from "node:util";
import { certify, formatRows } from "./suite.js";

const { values } = parseArgs({
  options: { cases: { type: "string", default: "200000" }, seed: { type: "string", default: "1" } },
});
const cases = Number(values.cases);
const seed = Number(values.seed);
if (!Number.isSafeInteger(cases) || cases < 0 || !Number.isSafeInteger(seed)) {
  throw new RangeError("Expected `--cases` and `--seed` to be whole numbers");
}
const rows = certify({ grid: true, cases, seed });
console.log(formatRows(rows));
const over = rows.filter((row) => row.over > 0);
if (over.length > 0) {
  console.error(`\nBeyond the limit: ${over.map(({ quantity }) => quantity).join(", ")}`);
  process.exitCode = 1;
}
