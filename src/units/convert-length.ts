import { checkDistance } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { exactRatio, nearestDouble } from "./exact-ratio.js";
import { checkUnit, UNIT_SIZES } from "../core/unit-sizes.js";

/**
 * A length in another unit, rounded once in all.
 *
 * An inch is exactly 127/5 mm and a foot 12 inches, so every ratio of two units is a ratio of integers. The value is taken
 * exactly as the double that it is, and the exact product is rounded to the nearest double, the even one on a tie.
 *
 * @param value - a length or signed distance, up to 1e100 in size
 * @param from - the unit of `value`
 * @param to - the unit of the result
 * @returns the length in `to`, up to 1e104 in size
 * @throws {InputError} when `value` is not a number up to 1e100 in size, or `from` or `to` is not a unit
 * @example
 * ```ts
 * import { convertLength } from "miterwright/units";
 *
 * convertLength(1, "in", "mm"); //=> 25.4
 * convertLength(90.5, "mm", "in"); //=> 3.562992125984252
 * convertLength(3, "ft", "m"); //=> 0.9144
 * ```
 * @see Addendum to National Bureau of Standards Circular 572, 1959 (1 yard = 0.9144 meter)
 */
export function convertLength(value: number, from: LengthUnit, to: LengthUnit): number {
  const distance = checkDistance(value, "value");
  const top = UNIT_SIZES[checkUnit(from, "from")];
  const bottom = UNIT_SIZES[checkUnit(to, "to")];
  // One product or quotient of doubles, where that is all there is to it, is rounded once as it is.
  if (top % bottom === 0) return distance * (top / bottom);
  if (bottom % top === 0) return distance / (bottom / top) + 0;
  const [numerator, denominator] = exactRatio(distance);
  return nearestDouble(numerator * BigInt(top), denominator * BigInt(bottom));
}
