import { checkWord } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";

/**
 * The units in tenths of a millimeter. All are whole, so the ratio of any two is a ratio of integers. An inch is exactly
 * 25.4 mm, by the agreement of 1959 (addendum to NBS Circular 572).
 */
export const UNIT_SIZES: Readonly<Record<LengthUnit, number>> = { mm: 10, cm: 100, m: 10_000, in: 254, ft: 12 * 254 };

/** The units, in the order in which error texts list them. */
const UNITS: readonly LengthUnit[] = ["mm", "cm", "m", "in", "ft"];

/**
 * One of the units of length.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the unit
 */
export function checkUnit(value: unknown, path: string): LengthUnit {
  return checkWord(value, path, UNITS);
}
