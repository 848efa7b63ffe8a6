import { checkWord } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";

/** A ratio of whole numbers. */
export type Ratio = readonly [top: number, bottom: number];

/** The units in meters. An inch is exactly 25.4 mm = 127/5000 m, by the agreement of 1959 (addendum to NBS Circular 572). */
export const METERS: Readonly<Record<LengthUnit, Ratio>> = {
  mm: [1, 1000],
  cm: [1, 100],
  m: [1, 1],
  in: [127, 5000],
  ft: [381, 1250],
};

/** The units in inches. */
export const INCHES: Readonly<Record<LengthUnit, Ratio>> = {
  mm: [5, 127],
  cm: [50, 127],
  m: [5000, 127],
  in: [1, 1],
  ft: [12, 1],
};

/** The units, in the order in which error texts list them. */
const UNITS: readonly LengthUnit[] = ["mm", "cm", "m", "in", "ft"];

/**
 * A unit of length, in options.
 *
 * @param value - the unchecked unit
 * @returns the unit
 */
export function checkUnit(value: unknown): LengthUnit {
  return checkWord(value, "unit", UNITS);
}

/**
 * A volume in the cube of another unit: by one product or quotient, which is exact where the result has few digits and cannot overflow on its way.
 *
 * @param volume - the volume in the cube of the caller's unit
 * @param unit - that unit in the other one
 * @param cubes - how many cubes of the other unit make one of the result; default 1
 * @returns the volume
 */
export function volumeIn(volume: number, unit: Ratio, cubes = 1): number {
  const [above, below] = [unit[0] ** 3, cubes * unit[1] ** 3];
  return above >= below ? volume * (above / below) : volume / (below / above);
}
