import type { LengthUnit } from "../core/geometry-types.js";
import { isInches } from "../core/unit-sizes.js";
import { convertLength } from "../units/index.js";

/** A length of common practice, as makers know it in either system: round numbers, neither converted from the other. */
export interface RoundLength {
  /** For who measures in millimeters, centimeters or meters. */
  readonly millimeters: number;
  /** For who measures in inches or feet. */
  readonly inches: number;
}

/** A length of common practice in a unit, round in the system that the unit belongs to. */
export function roundLength({ millimeters, inches }: RoundLength, unit: LengthUnit): number {
  return isInches(unit) ? convertLength(inches, "in", unit) : convertLength(millimeters, "mm", unit);
}
