import { checkInteger, checkLength, checkObject } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { checkUnit } from "../core/unit-sizes.js";
import { volumeIn } from "./volume-in.js";

/** Cubic inches in a board foot: a foot by a foot by an inch. */
const BOARD_FOOT: number = 12 * 12 * 1;

/** Options of {@link boardMeasure}. */
export interface BoardMeasureOptions {
  /** Thickness of a board, 1e-100 to 1e100; the nominal one, where lumber is sold by nominal sizes. */
  readonly thickness: number;
  /** Width of a board, 1e-100 to 1e100; likewise. */
  readonly width: number;
  /** Length of a board, 1e-100 to 1e100. */
  readonly length: number;
  /** Unit of all three. */
  readonly unit: LengthUnit;
  /** Number of boards, an integer from 1 to 100000; default 1. */
  readonly count?: number | undefined;
}

/** A quantity of lumber. */
export interface BoardMeasure {
  /** In board feet. */
  readonly boardFeet: number;
  /** In cubic meters. */
  readonly cubicMeters: number;
}

/** A volume as a quantity of lumber, unchecked. */
export function lumberOf(volume: number, unit: LengthUnit): BoardMeasure {
  return {
    boardFeet: volumeIn(volume, unit, "in", BOARD_FOOT),
    cubicMeters: volumeIn(volume, unit, "m"),
  };
}

/**
 * How much lumber boards are, in board feet and in cubic meters.
 *
 * A board foot is a board of a foot by a foot by an inch, 144 cubic inches; an inch is exactly 25.4 mm.
 *
 * @param options - thickness, width and length of a board (1e-100 to 1e100), their unit, and the number of boards
 * @returns the quantity, above 0, in board feet and in cubic meters
 * @throws {InputError} when a value is missing or out of range
 * @example
 * ```ts
 * import { boardMeasure } from "miterwright/wood";
 *
 * boardMeasure({ thickness: 1, width: 6, length: 96, unit: "in", count: 3 }).boardFeet; //=> 12
 * boardMeasure({ thickness: 27, width: 150, length: 2400, unit: "mm" }).cubicMeters; //=> 0.00972
 * ```
 */
export function boardMeasure(options: BoardMeasureOptions): BoardMeasure {
  const given = checkObject(options);
  const thickness = checkLength(given["thickness"], "thickness");
  const width = checkLength(given["width"], "width");
  const length = checkLength(given["length"], "length");
  const unit = checkUnit(given["unit"]);
  const count = checkInteger(given["count"] ?? 1, "count", 1, 1e5);
  const { boardFeet, cubicMeters } = lumberOf(thickness * width * length, unit);
  return { boardFeet: boardFeet * count, cubicMeters: cubicMeters * count };
}
