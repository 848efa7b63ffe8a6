import { checkObject, checkRange } from "../core/check.js";
import { snuggestPolygon } from "./snuggest-polygon.js";
import { largestRectangle } from "./largest-rectangle.js";
import type { PlacedRectangle } from "./placed.js";
import { checkPolygon, type PolygonLike } from "./polygon-like.js";
import { checkStanding, type Standing } from "./standing.js";

/** Which rectangle {@link rectangleWithin} looks for, and how the polygon may stand. */
export type RectangleWithinOptions = {
  /**
   * The rectangle's width divided by its height, from 1e-100 to 1e100. When left out, the rectangle of largest area is
   * found.
   */
  readonly aspect?: number | undefined;
} & Standing;

/**
 * The largest upright rectangle within a polygon that stands in a pose, or is rotated to where the rectangle is
 * largest.
 *
 * With given proportions it is {@link polygonAround} scaled: the polygon that is snug around a rectangle of height 1 is
 * scaled to the one given. Without, the rectangle of largest area is in closed form. For an odd number of sides its
 * best rotation is the symmetric one: a search has found no better for up to 99 sides, though it is not proven.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param options - if wanted `aspect`, the rectangle's width divided by its height (1e-100 to 1e100), and the polygon's
 * `pose` or `rotation: "free"`
 * @returns the rectangle's size and its center from the polygon's center, in the apothem's unit, and the polygon's
 * rotation
 * @throws {InputError} when the polygon or an option is out of range, or a pose is given and the rotation free
 * @example
 * ```ts
 * import { rectangleWithin } from "miterwright/polygon";
 *
 * const plate = rectangleWithin({ sides: 4, apothem: 50 }, { aspect: 2 });
 * plate.width; //=> 100
 * plate.height; //=> 50
 * rectangleWithin({ sides: 8, apothem: 150 }, { aspect: 1 }).width; //=> 212.132034355964
 * rectangleWithin({ sides: 8, apothem: 150 }, { rotation: "free" }).width; //=> 229.610059419054
 * rectangleWithin({ sides: 3, apothem: 100 }).center.y; //=> -25
 * ```
 */
export function rectangleWithin(polygon: PolygonLike, options: RectangleWithinOptions = {}): PlacedRectangle {
  const { sides, apothem } = checkPolygon(polygon);
  const given = checkObject(options);
  const standing = checkStanding(given);
  if (given["aspect"] === undefined) return largestRectangle(sides, apothem, standing);
  const aspect = checkRange(given["aspect"], "aspect", {
    min: 1e-100,
    max: 1e100,
    what: "a positive ratio (1e-100 to 1e100)",
  });
  const snug = snuggestPolygon(sides, standing, aspect / 2, 0.5);
  const height = apothem / snug.apothem;
  const center = { x: snug.center.x * height, y: snug.center.y * height };
  return { width: aspect * height, height, center, rotation: snug.rotation };
}
