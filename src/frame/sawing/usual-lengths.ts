import type { LengthUnit } from "../../core/geometry-types.js";
import { roundLength } from "../round-length.js";

/** A full carbide kerf: 3.2 mm, or 1/8 in. Common practice, no printed source. */
export function usualKerf(unit: LengthUnit): number {
  return roundLength({ millimeters: 3.2, inches: 1 / 8 }, unit);
}

/** A gap that is just seen: 0.25 mm, or 0.01 in. Common practice, no printed source. */
export function usualAcceptedGap(unit: LengthUnit): number {
  return roundLength({ millimeters: 0.25, inches: 0.01 }, unit);
}

/**
 * Length of a piece of scrap that is cut on a hold-down to prove a setting: 150 mm, or 6 in. Common practice, no printed source.
 */
export function usualScrap(unit: LengthUnit): number {
  return roundLength({ millimeters: 150, inches: 6 }, unit);
}

/**
 * How much of an upright blade usual saws have above the table or below the arm, 75 mm or 3 in, which a blade of 250 mm or 10 in gives. Common practice, no printed
 * source.
 */
export function usualDepth(unit: LengthUnit): number {
  return roundLength({ millimeters: 75, inches: 3 }, unit);
}

/** Depth that points or clips take behind the contents: 3 mm, or 1/8 in. Common practice, no printed source. */
export function usualFastenerRoom(unit: LengthUnit): number {
  return roundLength({ millimeters: 3, inches: 1 / 8 }, unit);
}

/**
 * How far the blade of a table saw stands above the work, so that its gullets clear it: 6 mm, or 1/4 in. Common practice, no printed source.
 */
export function usualToothRoom(unit: LengthUnit): number {
  return roundLength({ millimeters: 6, inches: 1 / 4 }, unit);
}
