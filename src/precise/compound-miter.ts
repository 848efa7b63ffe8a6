import type { Decimal } from "decimal.js";
import type { OneOf } from "../errors/index.js";
import { checkObject, checkOneOf } from "../errors/internal.js";
import { checkDigits, checkPrecise, SIDES, SLOPE, TURN } from "./check.js";
import type { PreciseNumber, PreciseOptions } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { Real, RealField } from "./real-field.js";
import { space } from "./space.js";
import { firstPiece, secondPiece } from "./piece.js";

/** The ways to say how sharp a corner is. */
export interface PreciseCornerMeasure {
  /** Number of sides of a regular frame, an integer from 3 to 1e6. */
  readonly sides: PreciseNumber;
  /** Turn of the corner in degrees, strictly between -180 and 180. */
  readonly turn: PreciseNumber;
}

/** What {@link preciseCompoundMiter} works from: exactly one of `sides` and `turn`, and the slope. */
export type PreciseCompoundMiterOptions = OneOf<PreciseCornerMeasure> & {
  /** Slope of the sides in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
} & PreciseOptions;

/** The angles of a mitered corner between two equal sides, in degrees, for sticks that lie flat on the saw. */
export interface PreciseCompoundMiter {
  /** Miter, -90 to 90. Positive: the outer edge is the longer. */
  readonly miter: string;
  /** Bevel, -90 to 90. Positive: the face is the shorter. */
  readonly bevel: string;
  /** Inside angle between the two faces, 0 to 360. */
  readonly dihedral: string;
  /** Half the turn. */
  readonly planMiter: string;
}

/**
 * The compound miter on real numbers.
 *
 * The two pieces mirror each other in the joint, so its plane is square to the sum of their directions. The miter is the angle in the first piece's face from a
 * square cut to the line where the joint comes out there. The bevel is the angle of the plane to that face less a right angle. The dihedral is the angle
 * between the two directions that are square to that line and lie in the faces, away from it.
 */
export function deriveCompoundMiter(
  field: RealField,
  turn: Real,
  slope: Decimal,
): Record<keyof PreciseCompoundMiter, Real> {
  const { vec, add, scale, dot, cross, norm, angleAbout } = space(field);
  const tilt = field.exact(slope);
  const first = firstPiece(field, tilt);
  const second = secondPiece(field, tilt, turn);
  const joint = add(first.along, second.along);
  const line = cross(joint, first.through);
  const inFirst = cross(line, first.through);
  const inSecond = cross(second.through, line);
  const opened = angleAbout(scale(field.exact(-1), line), inFirst, inSecond);
  return {
    miter: field.atan2(dot(line, first.along), dot(line, first.across)),
    bevel: field.atan2(dot(joint, first.through), norm(line)),
    dihedral: field.choose(opened, opened, field.add(opened, field.exact(360))),
    planMiter: angleAbout(vec(0, 0, 1), first.along, joint),
  };
}

/**
 * The two saw angles of a splayed frame's corner, for sticks that lie flat on the saw, to up to 1000 digits.
 *
 * Derived from the plane in which two neighboring pieces mirror each other.
 *
 * @param options - the corner (`sides` from 3 to 1e6, or `turn` in degrees between -180 and 180, bounds excluded), `slope` in
 * degrees from -90 to 90, and `digits` from 1 to 1000, by default 50
 * @returns miter, bevel, dihedral and plan miter in degrees, correctly rounded to `digits` significant digits, half away
 * from zero, without trailing zeros
 * @throws {InputError} when an option is missing, malformed or out of range, or not exactly one of `sides` and `turn` is given
 * @example
 * ```ts
 * import { preciseCompoundMiter } from "miterwright/precise";
 *
 * const cut = preciseCompoundMiter({ sides: 4, slope: 45, digits: 30 });
 * cut.miter; //=> "35.26438968275465431537700033"
 * cut.bevel; //=> "30"
 * cut.dihedral; //=> "120"
 * ```
 */
export function preciseCompoundMiter(options: PreciseCompoundMiterOptions): PreciseCompoundMiter {
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const which = checkOneOf(given, "", ["sides", "turn"]);
  const corner = checkPrecise(given[which], which, which === "sides" ? SIDES : TURN);
  const slope = checkPrecise(given["slope"], "slope", SLOPE);
  return evaluate(digits, [corner, slope], (field) => {
    const turn = which === "sides" ? field.div(field.exact(360), field.exact(corner)) : field.exact(corner);
    return deriveCompoundMiter(field, turn, slope);
  });
}
