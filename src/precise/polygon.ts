import type { Decimal } from "decimal.js";
import { checkObject, checkOneOf } from "../errors/internal.js";
import { checkDigits, checkPrecise, LENGTH, SIDES } from "./check.js";
import type { PreciseNumber, PreciseOptions, Range } from "./check.js";
import { evaluate } from "./evaluate.js";
import type { OneOf } from "../errors/index.js";
import type { Real, RealField } from "./real-field.js";
import { space, type Vec } from "./space.js";

/** Every size that fixes a regular polygon once its number of sides is known. Lengths from 1e-100 to 1e100. */
export interface PreciseMeasures {
  /** Length of a side. */
  readonly side: PreciseNumber;
  /** Distance from the center to a side. */
  readonly apothem: PreciseNumber;
  /** Distance from the center to a corner. */
  readonly circumradius: PreciseNumber;
  /** Narrowest width: side to opposite side, or corner to opposite side for an odd number of sides. */
  readonly acrossFlats: PreciseNumber;
  /** Widest distance between two corners. */
  readonly acrossCorners: PreciseNumber;
  /** Sum of all sides. */
  readonly perimeter: PreciseNumber;
  /** Area, in the square of the length unit, from 1e-200 to 1e200. */
  readonly area: PreciseNumber;
}

/** Name of a measure that fixes a regular polygon. */
export type PreciseMeasure = keyof PreciseMeasures;

/** What {@link precisePolygon} works from: the number of sides and exactly one measure. */
export type PrecisePolygonOptions = {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: PreciseNumber;
} & OneOf<PreciseMeasures> &
  PreciseOptions;

/** A regular polygon with all its measures, in the unit of the one that was given, and its angles in degrees. */
export interface PrecisePolygon {
  /** Number of sides. */
  readonly sides: number;
  /** Length of a side. */
  readonly side: string;
  /** Distance from the center to a side. */
  readonly apothem: string;
  /** Distance from the center to a corner. */
  readonly circumradius: string;
  /** Narrowest width: side to opposite side, or corner to opposite side for an odd number of sides. */
  readonly acrossFlats: string;
  /** Widest distance between two corners. */
  readonly acrossCorners: string;
  /** Sum of all sides. */
  readonly perimeter: string;
  /** Area, in the square of the length unit. */
  readonly area: string;
  /** Angle between two sides, inside. */
  readonly interiorAngle: string;
  /** Exterior angle at a corner. */
  readonly turn: string;
  /** Half the turn: the miter of a flat frame. */
  readonly planMiter: string;
}

const MEASURES: readonly PreciseMeasure[] = [
  "side",
  "apothem",
  "circumradius",
  "acrossFlats",
  "acrossCorners",
  "perimeter",
  "area",
];
const AREA: Range = { what: "a positive area (1e-200 to 1e200)", low: "1e-200", high: "1e200" };

/**
 * The polygon on real numbers.
 *
 * Its corners are those of a polygon of circumradius 1, each by turning the point (1, 0); lengths are distances between
 * points and lines, the area is that of the triangle on a side, angles are those between the sides' directions. Then it
 * is enlarged to the given measure.
 */
export function derivePolygon(
  field: RealField,
  sides: number,
  measure: PreciseMeasure,
  value: Decimal,
): Record<Exclude<keyof PrecisePolygon, "sides">, Real> {
  const { exact, mul, div, sqrt } = field;
  const { vec, add, sub, scale, cross, norm, turn, angle } = space(field);
  const corner = (k: number): Vec => turn(vec(1, 0, 0), div(exact(360 * k), exact(sides)));
  const start = corner(0);
  const end = corner(1);
  const along = sub(end, start);
  const before = sub(start, corner(-1));
  const middle = scale(exact(0.5), add(start, end));
  const side = norm(along);
  const opposite = Math.ceil(sides / 2);
  const opposed = corner(opposite);
  const farthest = sides % 2 === 0 ? opposed : corner(opposite - 1);
  const unit = {
    side,
    apothem: norm(middle),
    circumradius: norm(start),
    acrossFlats: div(norm(cross(along, sub(opposed, start))), side),
    acrossCorners: norm(sub(farthest, start)),
    perimeter: mul(exact(sides), side),
    area: mul(exact(sides / 2), norm(cross(start, end))),
  };
  const given = exact(value);
  const ratio = div(given, unit[measure]);
  const factor = measure === "area" ? sqrt(ratio) : ratio;
  return {
    side: mul(unit.side, factor),
    apothem: mul(unit.apothem, factor),
    circumradius: mul(unit.circumradius, factor),
    acrossFlats: mul(unit.acrossFlats, factor),
    acrossCorners: mul(unit.acrossCorners, factor),
    perimeter: mul(unit.perimeter, factor),
    area: mul(unit.area, mul(factor, factor)),
    [measure]: given,
    interiorAngle: angle(along, scale(exact(-1), before)),
    turn: angle(before, along),
    planMiter: angle(middle, end),
  };
}

/**
 * A regular polygon from its number of sides and any one measure, to up to 1000 digits.
 *
 * Derived from the corners as vectors: lengths are distances between points and lines, the area is that of triangles, and
 * the angles are those between the sides' directions.
 *
 * @param options - `sides`; exactly one of `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`, `perimeter`
 * (lengths, 1e-100 to 1e100) and `area` (1e-200 to 1e200); `digits` from 1 to 1000, by default 50
 * @returns all measures in the unit of the given one and the angles in degrees, correctly rounded to `digits` significant
 * digits, half away from zero, without trailing zeros
 * @throws {InputError} when an option is missing, malformed or out of range, or not exactly one measure is given
 * @example
 * ```ts
 * import { precisePolygon } from "miterwright/precise";
 *
 * const heptagon = precisePolygon({ sides: 7, apothem: "0.5", digits: 30 });
 * heptagon.side; //=> "0.481574618807528644332162353057"
 * heptagon.turn; //=> "51.4285714285714285714285714286"
 * precisePolygon({ sides: 4, side: 0.1, digits: 20 }).apothem; //=> "0.050000000000000002776"
 * ```
 */
export function precisePolygon(options: PrecisePolygonOptions): PrecisePolygon {
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const sides = checkPrecise(given["sides"], "sides", SIDES).toNumber();
  const measure = checkOneOf(given, "", MEASURES);
  const value = checkPrecise(given[measure], measure, measure === "area" ? AREA : LENGTH);
  return { sides, ...evaluate(digits, [value], (field) => derivePolygon(field, sides, measure, value)) };
}
