import { checkArray, checkDistance, checkInside, checkLength, checkObject, checkSlope, refuse } from "../core/check.js";
import type { SawSetting } from "../miter/index.js";

/** A stick as it was really cut: its length, and the angles of both ends for the stick lying flat. */
export interface MeasuredStick {
  /** Length along the line that `at` names, 1e-100 to 1e100. */
  readonly length: number;
  /** The cut where the stick starts, going counter-clockwise; each angle strictly between -90 and 90 degrees. */
  readonly start: SawSetting;
  /** The cut where it ends. */
  readonly end: SawSetting;
}

/** The sticks of a ring, and where they were measured. */
export interface MeasuredRing {
  /** The sticks in the order of the ring, counter-clockwise from above. The last joint is that of the last one's end and the first one's start. */
  readonly sticks: readonly MeasuredStick[];
  /**
   * Where across the molding the lengths were measured: along the innermost line, the outermost one, or at a level distance from
   * the inside, outward (-1e100 to 1e100).
   */
  readonly at: "inside" | "outside" | number;
  /** Level width of the molding, from the inside to the outside, 1e-100 to 1e100. */
  readonly width: number;
  /**
   * Slope at which `at` and `width` are level, in degrees, -90 to 90. Default: of each stick, the slope at which the ring closes;
   * they differ by what the cuts are off, and the gaps by the square of that.
   */
  readonly slope?: number | undefined;
}

/** A ring that was checked. */
export interface CheckedRing {
  /** The sticks. */
  readonly sticks: readonly MeasuredStick[];
  /** Level distance from the inside to the line of the lengths. */
  readonly at: number;
  /** Level width. */
  readonly width: number;
  /** The slope that was given. */
  readonly slope: number | undefined;
}

/** Most sticks that a ring may have: each one is placed in turn. */
export const MAX_STICKS: number = 1000;

function checkCut(value: unknown, path: string): SawSetting {
  const given = checkObject(value, path);
  return {
    miter: checkInside(given["miter"], `${path}.miter`, -90, 90),
    bevel: checkInside(given["bevel"], `${path}.bevel`, -90, 90),
  };
}

function checkStick(value: unknown, path: string): MeasuredStick {
  const given = checkObject(value, path);
  return {
    length: checkLength(given["length"], `${path}.length`),
    start: checkCut(given["start"], `${path}.start`),
    end: checkCut(given["end"], `${path}.end`),
  };
}

/** Turns the words for the line of the lengths into a level distance from the inside. */
function checkAt(value: unknown, width: number): number {
  if (value === "inside") return 0;
  if (value === "outside") return width;
  if (typeof value === "number") return checkDistance(value, "at");
  return refuse(
    typeof value === "string" ? "unknown" : "type",
    "at",
    value,
    `"inside", "outside" or a level distance from the inside`,
  );
}

/**
 * Checks the sticks of a ring, or of a part of one.
 *
 * @param value - the unchecked options
 * @param least - fewest sticks that make sense
 * @returns the ring
 */
export function checkRing(value: unknown, least: number): CheckedRing {
  const given = checkObject(value);
  const what = `an array of ${least} to ${MAX_STICKS} sticks`;
  const sticks = checkArray(given["sticks"], "sticks", what);
  if (sticks.length < least || sticks.length > MAX_STICKS) refuse("range", "sticks", sticks, what);
  const width = checkLength(given["width"], "width");
  return {
    sticks: sticks.map((stick, index) => checkStick(stick, `sticks[${index}]`)),
    at: checkAt(given["at"], width),
    width,
    slope: given["slope"] === undefined ? undefined : checkSlope(given["slope"]),
  };
}
