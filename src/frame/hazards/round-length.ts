import type { LengthUnit } from "../../core/geometry-types.js";
import { convertLength } from "../../units/index.js";

/** A length of common practice, as makers know it in either system: round numbers, neither converted from the other. */
export interface RoundLength {
  /** For who measures in millimeters, centimeters or meters. */
  readonly millimeters: number;
  /** For who measures in inches or feet. */
  readonly inches: number;
}

/**
 * Whether a unit is one of inches.
 *
 * @param unit - the unit
 * @returns true for inches and feet
 */
export function isInches(unit: LengthUnit): boolean {
  return unit === "in" || unit === "ft";
}

/**
 * A length of common practice, round in the system that the plan's unit belongs to.
 *
 * @param length - the length in both systems
 * @param unit - the plan's unit
 * @returns the one that is round there, in that unit
 */
export function roundLength(length: RoundLength, unit: LengthUnit): number {
  const { millimeters, inches } = length;
  return isInches(unit) ? convertLength(inches, "in", unit) : convertLength(millimeters, "mm", unit);
}
