import type { Decimal } from "decimal.js";
import { checkDigits, checkPrecise, checkRecord, LENGTH, reject, SIDES, SLOPE } from "./check.js";
import type { PreciseNumber, PreciseOptions } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { Real, RealField } from "./real-field.js";
import { checkSectionPoint, type ExactPoint, type PrecisePoint } from "./section.js";
import { space, type Vec } from "./space.js";
import { firstStick } from "./stick.js";

/** What {@link preciseStickLength} works from. */
export interface PreciseStickLengthOptions extends PreciseOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: PreciseNumber;
  /** Apothem of the polygon that the arris `on` runs along, 1e-100 to 1e100. */
  readonly apothem: PreciseNumber;
  /** Slope of the sticks in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
  /** The point of the section whose arris runs along the polygon. */
  readonly on: PrecisePoint;
  /** The point of the section at whose arris the length is measured. */
  readonly at: PrecisePoint;
}

/** A stick that was checked. */
export interface ExactStick {
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
 * A stick's length on real numbers.
 *
 * Each end of the measured arris is the common point of three planes: the joint's, which holds the frame's axis and is
 * square to the sum of two neighboring sticks' directions; the upright one along the arris; and the level one at its height.
 * The length is how far apart they are, along the stick.
 *
 * @param field - the arithmetic to work in
 * @param stick - the stick
 * @returns the length; negative when the ends have passed each other
 */
export function deriveStickLength(field: RealField, stick: ExactStick): Real {
  const { exact } = field;
  const { vec, add, sub, scale, dot, turn, planeThrough, meet } = space(field);
  const { along, out, across, through } = firstStick(field, field.exact(stick.slope));
  const from = (a: ExactPoint, b: ExactPoint): Vec =>
    add(scale(field.sub(exact(b.x), exact(a.x)), across), scale(field.sub(exact(b.y), exact(a.y)), through));
  const arris = add(scale(exact(stick.apothem), out), from(stick.on, stick.at));
  const upright = planeThrough(arris, out);
  const level = planeThrough(arris, vec(0, 0, 1));
  const ending = (step: number): Vec => {
    const neighbor = turn(along, field.div(exact(step * 360), exact(stick.sides)));
    return meet(planeThrough(vec(0, 0, 0), add(along, neighbor)), upright, level);
  };
  return dot(sub(ending(1), ending(-1)), along);
}

/**
 * The length of a regular frame's stick at one of its arrises, to up to 1000 digits.
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
 * import { preciseStickLength } from "miterwright/precise";
 *
 * const [on, at] = [{ x: 0, y: 0 }, { x: 40, y: 0 }];
 * preciseStickLength({ sides: 4, apothem: 100, slope: 0, on, at }); //=> "280"
 * preciseStickLength({ sides: 8, apothem: 100, slope: 30, on, at, digits: 20 }); //=> "111.54026988319104195"
 * ```
 */
export function preciseStickLength(options: PreciseStickLengthOptions): string {
  const given = checkRecord(options);
  const digits = checkDigits(given["digits"]);
  const stick: ExactStick = {
    sides: checkPrecise(given["sides"], "sides", SIDES).toNumber(),
    apothem: checkPrecise(given["apothem"], "apothem", LENGTH),
    slope: checkPrecise(given["slope"], "slope", SLOPE),
    on: checkSectionPoint(given["on"], "on"),
    at: checkSectionPoint(given["at"], "at"),
  };
  const { apothem, slope, on, at } = stick;
  const inputs = [apothem, slope, on.x, on.y, at.x, at.y];
  const { length } = evaluate(digits, inputs, (field) => ({ length: deriveStickLength(field, stick) }));
  if (length !== "0" && !length.startsWith("-")) return length;
  const message = "Expected `apothem` to leave the stick a length at `at`, but the frame closes before";
  return reject("impossible", "apothem", given["apothem"], message);
}
