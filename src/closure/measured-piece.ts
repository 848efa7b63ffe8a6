import { checkArray, checkDistance, checkInside, checkLength, checkObject, checkSlope, refuse } from "../core/check.js";
import type { SawSetting } from "../miter/index.js";

/** A piece as it was really cut: its length, and the angles of both ends for the piece lying flat. */
export interface MeasuredPiece {
  /** Length along the line that `at` names, 1e-100 to 1e100. */
  readonly length: number;
  /** The cut where the piece starts, going counter-clockwise; each angle strictly between -90 and 90 degrees. */
  readonly start: SawSetting;
  /** The cut where it ends. */
  readonly end: SawSetting;
}

/** The pieces of a ring, and where they were measured. */
export interface MeasuredRing {
  /** The pieces in the order of the ring, counter-clockwise from above. The last joint is that of the last one's end and the first one's start. */
  readonly pieces: readonly MeasuredPiece[];
  /**
   * Where across the molding the lengths were measured: along the innermost line, the outermost one, or at a level distance from
   * the inside, outward (-1e100 to 1e100).
   */
  readonly at: "inside" | "outside" | number;
  /** Joint width: level, from the inside of the molding to the outside, 1e-100 to 1e100. */
  readonly width: number;
  /**
   * Slope at which `at` and `width` are level, in degrees, -90 to 90. Default: of each piece, the slope at which the ring closes;
   * they differ by what the cuts are off, and the gaps by the square of that.
   */
  readonly slope?: number | undefined;
}

/** A ring that was checked. */
export interface CheckedRing {
  /** The pieces. */
  readonly pieces: readonly MeasuredPiece[];
  /** Level distance from the inside to the line of the lengths. */
  readonly at: number;
  /** Joint width. */
  readonly width: number;
  /** The slope that was given. */
  readonly slope: number | undefined;
}

/** Most pieces that a ring may have: each one is placed in turn. */
export const MAX_PIECES: number = 1000;

function checkCut(value: unknown, path: string): SawSetting {
  const given = checkObject(value, path);
  return {
    miter: checkInside(given["miter"], `${path}.miter`, -90, 90),
    bevel: checkInside(given["bevel"], `${path}.bevel`, -90, 90),
  };
}

function checkPiece(value: unknown, path: string): MeasuredPiece {
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

/** Checks the pieces of a ring, or of a part of one. */
export function checkRing(value: unknown, least: number): CheckedRing {
  const given = checkObject(value);
  const what = `an array of ${least} to ${MAX_PIECES} pieces`;
  const pieces = checkArray(given["pieces"], "pieces", what);
  if (pieces.length < least || pieces.length > MAX_PIECES) refuse("range", "pieces", pieces, what);
  const width = checkLength(given["width"], "width");
  return {
    pieces: pieces.map((piece, index) => checkPiece(piece, `pieces[${index}]`)),
    at: checkAt(given["at"], width),
    width,
    slope: given["slope"] === undefined ? undefined : checkSlope(given["slope"]),
  };
}
