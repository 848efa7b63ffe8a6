import { checkLength, checkObject, checkSides } from "../core/check.js";
import { checkAllowance } from "./allowance.js";
import { checkPolygon, type PolygonLike } from "./polygon-like.js";
import { polygonFrom, type RegularPolygon } from "./regular-polygon.js";

/** A circle with the center of its polygon. */
export interface Circle {
  /** Radius. */
  readonly radius: number;
  /** Twice the radius. */
  readonly diameter: number;
}

/** What {@link polygonWithinCircle} keeps within. */
export interface PolygonWithinCircleOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Diameter of the circle, a length from 1e-100 to 1e100. */
  readonly diameter: number;
}

/** What {@link polygonAroundCircle} goes round. */
export interface PolygonAroundCircleOptions extends PolygonWithinCircleOptions {
  /** Added once in all to the diameter, 0 to 1e100. Default 0. */
  readonly allowance?: number | undefined;
}

/**
 * The smallest regular polygon that contains a circle, such as a round mirror: its sides touch it.
 *
 * @param options - `sides` (3 to 1e6), the circle's `diameter` (1e-100 to 1e100), and if wanted an `allowance` (0 to
 * 1e100), added once in all to the diameter
 * @returns the polygon, whose apothem is half the diameter with its allowance
 * @throws {InputError} when an option is missing or out of range
 * @example
 * ```ts
 * import { polygonAroundCircle } from "miterwright/polygon";
 *
 * polygonAroundCircle({ sides: 8, diameter: 400, allowance: 4 }).acrossFlats; //=> 404
 * ```
 */
export function polygonAroundCircle(options: PolygonAroundCircleOptions): RegularPolygon {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const diameter = checkLength(given["diameter"], "diameter");
  return polygonFrom(sides, "apothem", (diameter + checkAllowance(given)) / 2);
}

/**
 * The largest regular polygon that can be cut from a round disk: its corners lie on the rim.
 *
 * @param options - `sides` (3 to 1e6) and the disk's `diameter` (1e-100 to 1e100)
 * @returns the polygon, whose circumradius is half the diameter
 * @throws {InputError} when an option is missing or out of range
 * @example
 * ```ts
 * import { polygonWithinCircle } from "miterwright/polygon";
 *
 * polygonWithinCircle({ sides: 6, diameter: 400 }).side; //=> 200
 * ```
 */
export function polygonWithinCircle(options: PolygonWithinCircleOptions): RegularPolygon {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  return polygonFrom(sides, "circumradius", checkLength(given["diameter"], "diameter") / 2);
}

/**
 * The smallest circle that contains a polygon: it goes through the corners.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @returns the circle, in the apothem's unit
 * @throws {InputError} when the polygon is out of range
 * @example
 * ```ts
 * import { circleAround } from "miterwright/polygon";
 *
 * circleAround({ sides: 3, apothem: 100 }).diameter; //=> 400
 * ```
 */
export function circleAround(polygon: PolygonLike): Circle {
  const { sides, apothem } = checkPolygon(polygon);
  const radius = polygonFrom(sides, "apothem", apothem).circumradius;
  return { radius, diameter: 2 * radius };
}

/**
 * The largest circle within a polygon: it touches the sides.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @returns the circle, in the apothem's unit
 * @throws {InputError} when the polygon is out of range
 * @example
 * ```ts
 * import { circleWithin } from "miterwright/polygon";
 *
 * circleWithin({ sides: 3, apothem: 100 }).diameter; //=> 200
 * ```
 */
export function circleWithin(polygon: PolygonLike): Circle {
  const { apothem } = checkPolygon(polygon);
  return { radius: apothem, diameter: 2 * apothem };
}
