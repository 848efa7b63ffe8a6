import type { Decimal } from "decimal.js";
import { checkObject, reject } from "../errors/internal.js";
import { checkDigits, checkPrecise, LENGTH, SIDES, SLOPE } from "./check.js";
import type { PreciseNumber, PreciseOptions } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { Real, RealField } from "./real-field.js";
import { checkSectionPoint, type ExactPoint, type PrecisePoint } from "./section.js";
import { space, type Vec } from "./space.js";
import { firstPiece } from "./piece.js";

/** What {@link precisePieceLength} works from. */
export interface PrecisePieceLengthOptions extends PreciseOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: PreciseNumber;
  /** Apothem of the polygon that the arris `on` runs along, 1e-100 to 1e100. */
  readonly apothem: PreciseNumber;
  /** Slope of the pieces in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
  /** The point of the section whose arris runs along the polygon. */
  readonly on: PrecisePoint;
  /** The point of the section at whose arris the length is measured. */
  readonly at: PrecisePoint;
}

/** A piece that was checked. */
export interface ExactPiece {
  /** Number of sides. */
  readonly sides: number;
  /** Apothem of the polygon. */
  readonly apothem: Decimal;
  /** Slope in degrees. */
  readonly slope: Decimal;
  /** The point that runs along the polygon. */
  readonly on: ExactPoint;
  /** The point that is measured. */
  readonly at: ExactPoint;
}

/**
 * A piece's length on real numbers.
 *
 * Each end of the measured arris is the common point of three planes: the joint's, which holds the frame's axis and is
 * square to the sum of two neighboring pieces' directions; the upright one along the arris; and the level one at its height.
 * The length is how far apart they are, along the piece. Negative where the ends have passed each other.
 */
export function derivePieceLength(field: RealField, piece: ExactPiece): Real {
  const { exact } = field;
  const { vec, add, sub, scale, dot, turn, planeThrough, meet } = space(field);
  const { along, out, across, through } = firstPiece(field, field.exact(piece.slope));
  const from = (a: ExactPoint, b: ExactPoint): Vec =>
    add(scale(field.sub(exact(b.x), exact(a.x)), across), scale(field.sub(exact(b.y), exact(a.y)), through));
  const arris = add(scale(exact(piece.apothem), out), from(piece.on, piece.at));
  const upright = planeThrough(arris, out);
  const level = planeThrough(arris, vec(0, 0, 1));
  const ending = (step: number): Vec => {
    const neighbor = turn(along, field.div(exact(step * 360), exact(piece.sides)));
    return meet(planeThrough(vec(0, 0, 0), add(along, neighbor)), upright, level);
  };
  return dot(sub(ending(1), ending(-1)), along);
}

/**
 * The length of a regular frame's piece at one of its arrises, to up to 1000 digits.
 *
 * Derived as the distance between the two points in which the arris meets the joint planes.
 *
 * @param options - `sides` from 3 to 1e6; `apothem` of the polygon that the arris `on` runs along (1e-100 to 1e100); `slope` in
 * degrees from -90 to 90; `on` and `at`, points of the section; `digits` from 1 to 1000, by default 50
 * @returns the length in the apothem's unit, correctly rounded to `digits` significant digits, half away from zero, without
 * trailing zeros
 * @throws {InputError} when a value is missing, malformed or out of range, or with code `"impossible"` when the measured arris
 * would have no length left
 * @example
 * ```ts
 * import { precisePieceLength } from "miterwright/precise";
 *
 * const [on, at] = [{ x: 0, y: 0 }, { x: 40, y: 0 }];
 * precisePieceLength({ sides: 4, apothem: 100, slope: 0, on, at }); //=> "280"
 * precisePieceLength({ sides: 8, apothem: 100, slope: 30, on, at, digits: 20 }); //=> "111.54026988319104195"
 * ```
 */
export function precisePieceLength(options: PrecisePieceLengthOptions): string {
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const piece: ExactPiece = {
    sides: checkPrecise(given["sides"], "sides", SIDES).toNumber(),
    apothem: checkPrecise(given["apothem"], "apothem", LENGTH),
    slope: checkPrecise(given["slope"], "slope", SLOPE),
    on: checkSectionPoint(given["on"], "on"),
    at: checkSectionPoint(given["at"], "at"),
  };
  const { apothem, slope, on, at } = piece;
  const inputs = [apothem, slope, on.x, on.y, at.x, at.y];
  const { length } = evaluate(digits, inputs, (field) => ({ length: derivePieceLength(field, piece) }));
  if (length !== "0" && !length.startsWith("-")) return length;
  const message = "Expected `apothem` to leave the piece a length at `at`, but the frame closes before";
  return reject("impossible", "apothem", given["apothem"], message);
}
