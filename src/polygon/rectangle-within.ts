import { checkNumber, checkObject } from "../core/check.js";
import type { Box, Point, Pose } from "../core/geometry-types.js";
import { checkPolygon, checkPose, type PolygonLike } from "./polygon-like.js";
import { snugPolygon } from "./snug-polygon.js";

/** Which rectangle {@link rectangleWithin} looks for. */
export interface RectangleWithinOptions {
  /** The rectangle's width divided by its height, from 1e-100 to 1e100. */
  readonly aspect: number;
  /** How the polygon stands. Default `"side-down"`. */
  readonly pose?: Pose;
}

/** An upright rectangle and its place in a polygon. */
export interface PlacedRectangle extends Box {
  /** The rectangle's center, as seen from the polygon's: x to the right, y up. */
  readonly center: Point;
}

/**
 * The largest upright rectangle of given proportions within a polygon.
 *
 * It is {@link polygonAround} scaled: the polygon that is snug around a rectangle of height 1 is scaled to the one given.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param options - `aspect`, the rectangle's width divided by its height (1e-100 to 1e100), and if wanted the polygon's `pose`
 * @returns the rectangle's size and its center from the polygon's center, in the apothem's unit
 * @throws {InputError} when the polygon or an option is out of range
 * @example
 * ```ts
 * import { rectangleWithin } from "miterwright/polygon";
 *
 * rectangleWithin({ sides: 4, apothem: 50 }, { aspect: 2 }); //=> { width: 100, height: 50, center: { x: 0, y: 0 } }
 * rectangleWithin({ sides: 8, apothem: 150 }, { aspect: 1 }).width; //=> 212.132034355964
 * ```
 */
export function rectangleWithin(polygon: PolygonLike, options: RectangleWithinOptions): PlacedRectangle {
  const { sides, apothem } = checkPolygon(polygon);
  const given = checkObject(options);
  const aspect = checkNumber(given["aspect"], "aspect", 1e-100, 1e100, "a positive ratio (1e-100 to 1e100)");
  const snug = snugPolygon(sides, checkPose(given["pose"]), aspect / 2, 0.5);
  const height = apothem / snug.apothem;
  return { width: aspect * height, height, center: { x: 0, y: snug.up * height } };
}
