import type { LengthUnit } from "../../core/geometry-types.js";
import { roundLength, type RoundLength } from "./round-length.js";

/** The source of a rule that the trade holds but that was not found in print. */
export const COMMON_PRACTICE: string = "common practice";

/** Pieces shorter than this are not held by hand; common practice, no printed source. */
export const HAND_HELD: RoundLength = { millimeters: 300, inches: 12 };
/** Pieces shorter than this are not cut even with a hold-down; common practice, no printed source. */
export const HELD_DOWN: RoundLength = { millimeters: 150, inches: 6 };

/**
 * The length at which a hazard's rule sets in, in the plan's unit.
 *
 * @param rule - the rule's length, round in either system
 * @param unit - the plan's unit
 * @returns the one that is round in that unit
 */
export function ruleLength(rule: RoundLength, unit: LengthUnit): number {
  return roundLength(rule, unit);
}
