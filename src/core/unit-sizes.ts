import { checkWord } from "./check.js";
import type { LengthUnit } from "./geometry-types.js";

/**
 * The units in tenths of a millimeter. All are whole, so the ratio of any two is a ratio of integers. An inch is exactly
 * 25.4 mm, by the agreement of 1959 (addendum to NBS Circular 572).
 */
export const UNIT_SIZES: Readonly<Record<LengthUnit, number>> = { mm: 10, cm: 100, m: 10_000, in: 254, ft: 12 * 254 };

/** A pound in kilograms, exactly: Refinement of Values for the Yard and the Pound, Federal Register, July 1, 1959. */
export const POUND: number = 0.45359237;
/** Standard gravity in meters per second squared (3rd General Conference on Weights and Measures, 1901). */
export const GRAVITY: number = 9.80665;

/** The units, in the order in which error texts list them. */
const UNITS: readonly LengthUnit[] = ["mm", "cm", "m", "in", "ft"];

/** One of the units of length. */
export function checkUnit(value: unknown, path = "unit"): LengthUnit {
  return checkWord(value, path, UNITS);
}

/** Whether a unit is one of inches. */
export function isInches(unit: LengthUnit): boolean {
  return unit === "in" || unit === "ft";
}
