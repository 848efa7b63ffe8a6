import type { LengthUnit } from "../../core/geometry-types.js";
import { convertLength } from "../../units/index.js";

/** The source of a rule that the trade holds but that was not found in print. */
export const COMMON_PRACTICE: string = "common practice";

/** Pieces shorter than this are not held by hand, in millimeters; common practice, no printed source. */
export const HAND_HELD: number = 300;
/** Pieces shorter than this are not cut even with a hold-down, in millimeters; common practice, no printed source. */
export const HELD_DOWN: number = 150;

/**
 * A length that a caution's rule gives in millimeters, in the plan's unit.
 *
 * @param millimeters - the rule's length
 * @param unit - the plan's unit
 * @returns the same length in that unit
 */
export function ruleLength(millimeters: number, unit: LengthUnit): number {
  return convertLength(millimeters, "mm", unit);
}
