import type { Decimal } from "decimal.js";
import { checkObject } from "../errors/internal.js";
import { checkDigits, checkPrecise, DISTANCE, SLOPE } from "./check.js";
import type { PreciseNumber, PreciseOptions } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { Real, RealField } from "./real-field.js";
import { space } from "./space.js";
import { firstPiece } from "./piece.js";

/** A point of a molding's section, in the caller's length unit. */
export interface PrecisePoint {
  /** Outward from the sight edge, -1e100 to 1e100. */
  readonly x: PreciseNumber;
  /** Up from the back, -1e100 to 1e100. */
  readonly y: PreciseNumber;
}

/** A point of a section that was checked. */
export interface ExactPoint {
  /** Outward from the sight edge. */
  readonly x: Decimal;
  /** Up from the back. */
  readonly y: Decimal;
}

/** Options of {@link preciseSection}. */
export interface PreciseSectionOptions extends PreciseOptions {
  /** Slope of the piece in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
}

/** A point of a section as it stands in the finished frame, in the caller's length unit. */
export interface PreciseSectionPoint {
  /** Level distance outward. */
  readonly out: string;
  /** Height. */
  readonly up: string;
}

/** Checks a point of a section. */
export function checkSectionPoint(value: unknown, path: string): ExactPoint {
  const given = checkObject(value, path);
  return {
    x: checkPrecise(given["x"], `${path}.x`, DISTANCE),
    y: checkPrecise(given["y"], `${path}.y`, DISTANCE),
  };
}

/**
 * A section's point in the frame, on real numbers: so far along the piece's own axis across, so far along the one through.
 */
export function deriveSection(
  field: RealField,
  point: ExactPoint,
  slope: Decimal,
): Record<keyof PreciseSectionPoint, Real> {
  const { vec, add, scale, dot } = space(field);
  const piece = firstPiece(field, field.exact(slope));
  const place = add(scale(field.exact(point.x), piece.across), scale(field.exact(point.y), piece.through));
  return { out: dot(place, piece.out), up: dot(place, vec(0, 0, 1)) };
}

/**
 * Where a point of a molding's section stands in the finished frame, to up to 1000 digits.
 *
 * The point goes along with the axes of the tilted piece.
 *
 * @param point - the point: `x` outward from the sight edge, `y` up from the back, each -1e100 to 1e100
 * @param options - `slope` in degrees from -90 to 90, and `digits` from 1 to 1000, by default 50
 * @returns `out` and `up` in the unit of the point, correctly rounded to `digits` significant digits, half away from zero,
 * without trailing zeros
 * @throws {InputError} when a value is missing, malformed or out of range
 * @example
 * ```ts
 * import { preciseSection } from "miterwright/precise";
 *
 * preciseSection({ x: 40, y: 20 }, { slope: 30, digits: 20 }); //=> { out: "24.641016151377545871", up: "37.320508075688772935" }
 * ```
 */
export function preciseSection(point: PrecisePoint, options: PreciseSectionOptions): PreciseSectionPoint {
  const checked = checkSectionPoint(point, "point");
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const slope = checkPrecise(given["slope"], "slope", SLOPE);
  return evaluate(digits, [checked.x, checked.y, slope], (field) => deriveSection(field, checked, slope));
}
