import { checkArray, checkObject, checkSides, checkSlope } from "../core/check.js";
import { compoundMiterKernel, type CompoundMiter } from "./compound-kernel.js";

/** What {@link compoundMiterTable} works from. */
export interface CompoundMiterTableOptions {
  /** Numbers of sides, each an integer from 3 to 1e6. */
  readonly sides: readonly number[];
  /** Slopes in degrees, each from -90 to 90. */
  readonly slopes: readonly number[];
}

/** One row of a compound miter table. */
export interface CompoundMiterRow extends CompoundMiter {
  /** Number of sides. */
  readonly sides: number;
  /** Slope in degrees. */
  readonly slope: number;
}

/**
 * A table of compound miters: every number of sides at every slope.
 *
 * The rows come in the order of `sides`, and within one number of sides in the order of `slopes`.
 *
 * @param options - the numbers of sides (3 to 1e6) and the slopes (degrees, -90 to 90)
 * @returns one row for each pair, with the angles of {@link compoundMiter} in degrees
 * @throws {InputError} when an entry is out of range
 * @example
 * ```ts
 * import { compoundMiterTable } from "miterwright/miter";
 *
 * const rows = compoundMiterTable({ sides: [4, 6], slopes: [30, 45] });
 * rows.map((row) => [row.sides, row.slope, row.miter.toFixed(2), row.bevel.toFixed(2)]);
 * //=> [[4, 30, "40.89", "20.70"], [4, 45, "35.26", "30.00"], [6, 30, "26.57", "14.48"], [6, 45, "22.21", "20.70"]]
 * ```
 */
export function compoundMiterTable(options: CompoundMiterTableOptions): CompoundMiterRow[] {
  const given = checkObject(options);
  const sides = checkArray(given["sides"], "sides", "an array of numbers of sides").map((n, i) =>
    checkSides(n, `sides[${i}]`),
  );
  const slopes = checkArray(given["slopes"], "slopes", "an array of slopes").map((s, i) =>
    checkSlope(s, `slopes[${i}]`),
  );
  return sides.flatMap((n) =>
    slopes.map((slope) => {
      const { miter, bevel, dihedral, planMiter } = compoundMiterKernel(180 / n, slope);
      return { sides: n, slope, miter, bevel, dihedral, planMiter };
    }),
  );
}
