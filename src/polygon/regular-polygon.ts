import { checkObject, checkOneOf, checkSides } from "../core/check.js";
import {
  checkMeasure,
  POLYGON_MEASURES,
  type PolygonMeasure,
  type OnePolygonMeasure,
  type PolygonMeasureValues,
} from "./measures.js";
import { cosineOfQuarters, sineOfQuarters, tangentOfQuarters } from "./quarter-turns.js";

/** What fixes a regular polygon: its number of sides and exactly one measure. */
export type RegularPolygonOptions = {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
} & OnePolygonMeasure;

/** A regular polygon with all its measures and angles. */
export interface RegularPolygon extends PolygonMeasureValues {
  /** Number of sides, from 3 to 1e6. */
  readonly sides: number;
  /** Angle between two sides inside the polygon, degrees: (n - 2) 180 / n, from 60 to less than 180. */
  readonly interiorAngle: number;
  /** Exterior angle at a corner, degrees: 360 / n, up to 120. */
  readonly turn: number;
  /** Half the turn, degrees: 180 / n, up to 60. The miter of a flat frame. */
  readonly planMiter: number;
}

/** The side, apothem and circumradius that follow from one measure, h being the plan miter. */
function radiiFrom(
  n: number,
  measure: PolygonMeasure,
  value: number,
): [side: number, apothem: number, circumradius: number] {
  const sine = sineOfQuarters(2, n);
  const cosine = cosineOfQuarters(2, n);
  const tangent = sine / cosine;
  const odd = n % 2 === 1;
  const fromSide = (side: number): [number, number, number] => [side, side / (2 * tangent), side / (2 * sine)];
  const fromApothem = (apothem: number): [number, number, number] => [2 * apothem * tangent, apothem, apothem / cosine];
  const fromCorner = (around: number): [number, number, number] => [2 * around * sine, around * cosine, around];
  switch (measure) {
    case "side":
      return fromSide(value);
    case "perimeter":
      return fromSide(value / n);
    case "apothem":
      return fromApothem(value);
    case "circumradius":
      return fromCorner(value);
    case "acrossFlats": {
      if (!odd) return fromApothem(value / 2);
      const around = value / (1 + cosine);
      return [2 * value * tangentOfQuarters(1, n), around * cosine, around];
    }
    case "acrossCorners":
      return odd ? fromSide(2 * value * sineOfQuarters(1, n)) : fromCorner(value / 2);
    case "area": {
      const apothem = Math.sqrt(value / n / tangent);
      return [2 * Math.sqrt((value / n) * tangent), apothem, apothem / cosine];
    }
  }
}

/** The regular polygon that has a measure, unchecked. */
export function polygonFrom(n: number, measure: PolygonMeasure, value: number): RegularPolygon {
  const [side, apothem, circumradius] = radiiFrom(n, measure, value);
  const odd = n % 2 === 1;
  return {
    sides: n,
    side,
    apothem,
    circumradius,
    acrossFlats: odd ? apothem + circumradius : 2 * apothem,
    acrossCorners: odd ? side / (2 * sineOfQuarters(1, n)) : 2 * circumradius,
    perimeter: n * side,
    area: ((n * side) / 2) * apothem,
    interiorAngle: ((n - 2) * 180) / n,
    turn: 360 / n,
    planMiter: 180 / n,
    // The measure that was given comes back bit for bit, whatever it was computed through above.
    [measure]: value,
  };
}

/**
 * A regular polygon from its number of sides and any one measure.
 *
 * With h = 180/n, apothem a, circumradius R and side s: s = 2 a tan h, R = a / cos h, area = n s a / 2. Across flats is
 * 2 a for an even number of sides and R + a for an odd one; across corners 2 R and s / (2 sin(h/2)). The measure that
 * was given comes back bit for bit, the others within 6 units in the last place. A measure near an end of its range can
 * lead to lengths beyond theirs, by a factor below 1e7, and to areas beyond theirs by its square: nothing overflows, and
 * the functions of this module take such polygons.
 *
 * @param options - `sides`, and exactly one of `side`, `apothem`, `circumradius`, `acrossFlats`, `acrossCorners`,
 * `perimeter` (lengths, 1e-100 to 1e100) and `area` (1e-200 to 1e200)
 * @returns all measures in the unit of the one given, and the angles in degrees
 * @throws {InputError} when `sides` is not an integer from 3 to 1e6, the measure is out of range, or there is not
 * exactly one
 * @example
 * ```ts
 * import { regularPolygon } from "miterwright/polygon";
 *
 * const octagon = regularPolygon({ sides: 8, acrossFlats: 300 });
 * octagon.apothem; //=> 150
 * octagon.side; //=> 124.264068711929
 * octagon.planMiter; //=> 22.5
 * regularPolygon({ sides: 6, side: 10 }).circumradius; //=> 10
 * ```
 * @see Machinery's Handbook, 31st edition, Industrial Press 2020, pages 81-82
 */
export function regularPolygon(options: RegularPolygonOptions): RegularPolygon {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const measure = checkOneOf(given, "", POLYGON_MEASURES);
  return polygonFrom(sides, measure, checkMeasure(measure, given[measure]));
}
