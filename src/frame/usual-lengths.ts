import type { LengthUnit } from "../core/geometry-types.js";
import { convertLength } from "../units/index.js";

/**
 * A full carbide kerf of 1/8 in. Common practice, no printed source.
 *
 * @param unit - the plan's unit
 * @returns the kerf in that unit
 */
export function usualKerf(unit: LengthUnit): number {
  return convertLength(0.125, "in", unit);
}

/**
 * A gap that is just seen, 0.25 mm. Common practice, no printed source.
 *
 * @param unit - the plan's unit
 * @returns the gap in that unit
 */
export function usualGap(unit: LengthUnit): number {
  return convertLength(0.25, "mm", unit);
}

/**
 * Length of a piece of scrap that is cut on a hold-down to prove a setting: 150 mm, or 6 in where rules show inches. Common practice, no printed source.
 *
 * @param unit - the plan's unit
 * @returns the length in that unit
 */
export function usualScrap(unit: LengthUnit): number {
  return unit === "in" || unit === "ft" ? convertLength(6, "in", unit) : convertLength(150, "mm", unit);
}

/**
 * How much of an upright blade usual saws have above the table or below the arm, 75 mm or 3 in, which a blade of 250 mm or 10 in gives. Common practice, no printed
 * source.
 *
 * @param unit - the plan's unit
 * @returns the depth in that unit
 */
export function usualDepth(unit: LengthUnit): number {
  return unit === "in" || unit === "ft" ? convertLength(3, "in", unit) : convertLength(75, "mm", unit);
}

/**
 * Depth that points or clips take behind the contents, 3 mm. Common practice, no printed source.
 *
 * @param unit - the plan's unit
 * @returns the depth in that unit
 */
export function usualFastenerRoom(unit: LengthUnit): number {
  return convertLength(3, "mm", unit);
}

/**
 * How far the blade of a table saw stands above the work, so that its gullets clear it: 6 mm. Common practice, no printed source.
 *
 * @param unit - the plan's unit
 * @returns the length in that unit
 */
export function usualToothRoom(unit: LengthUnit): number {
  return convertLength(6, "mm", unit);
}
