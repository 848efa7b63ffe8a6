import { checkLength, checkLengthOrZero, checkObject, checkSides } from "../core/check.js";
import type { Point, Pose } from "../core/geometry-types.js";
import { checkPose } from "./polygon-like.js";
import { polygonFrom, type RegularPolygon } from "./regular-polygon.js";
import { snugPolygon } from "./snug-polygon.js";

/** What {@link polygonAround} goes round. */
export interface PolygonAroundOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Width of the rectangle, a length from 1e-100 to 1e100. */
  readonly width: number;
  /** Height of the rectangle, a length from 1e-100 to 1e100. */
  readonly height: number;
  /** How the polygon stands. Default `"side-down"`. */
  readonly pose?: Pose;
  /** Added once in all to the width and once to the height, 0 to 1e100. Default 0. */
  readonly allowance?: number;
}

/** A polygon and the place of a rectangle that goes with it. */
export interface PolygonAndCenter {
  /** The polygon. */
  readonly polygon: RegularPolygon;
  /** The rectangle's center, as seen from the polygon's: x to the right, y up. */
  readonly center: Point;
}

/**
 * The smallest regular polygon that contains an upright rectangle.
 *
 * For an even number of sides the rectangle sits in the middle. For an odd one it does not: it is moved up or down to where
 * the polygon can be smallest. Both are solved exactly, in a time that grows with the logarithm of the number of sides.
 *
 * @param options - `sides` (3 to 1e6), the rectangle's `width` and `height` (1e-100 to 1e100), and if wanted the `pose` and an
 * `allowance` (0 to 1e100), added once in all to each dimension of the rectangle
 * @returns the polygon, and where the rectangle's center lies from the polygon's center, in the rectangle's unit
 * @throws {InputError} when an option is missing or out of range
 * @example
 * ```ts
 * import { polygonAround } from "miterwright/polygon";
 *
 * polygonAround({ sides: 8, width: 200, height: 200 }).polygon.apothem; //=> 141.42135623731
 * const triangle = polygonAround({ sides: 3, width: 200, height: 100 });
 * triangle.polygon.side; //=> 315.470053837925
 * triangle.center.y; //=> -41.0683602522959
 * ```
 */
export function polygonAround(options: PolygonAroundOptions): PolygonAndCenter {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const width = checkLength(given["width"], "width");
  const height = checkLength(given["height"], "height");
  const pose = checkPose(given["pose"]);
  const allowance = checkLengthOrZero(given["allowance"] ?? 0, "allowance");
  const { apothem, up } = snugPolygon(sides, pose, (width + allowance) / 2, (height + allowance) / 2);
  return { polygon: polygonFrom(sides, "apothem", apothem), center: { x: 0, y: up } };
}
