import { checkDistance, refuse } from "../core/check.js";
import { checkPolygon, MAX_APOTHEM, MIN_APOTHEM, type PolygonLike } from "./polygon-like.js";
import { polygonFrom, type RegularPolygon } from "./regular-polygon.js";

/**
 * The polygon whose sides are all moved outward by a distance.
 *
 * Its apothem is `apothem + distance`; its corners lie farther out by distance / cos(180/n). This is how a frame's
 * outer edge follows from its sight edge, and a panel from its opening.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param distance - how far the sides move outward, -1e100 to 1e100; negative moves them inward
 * @returns the polygon with the same center and pose
 * @throws {InputError} when the polygon or distance is out of range, or nothing of the polygon is left (`"impossible"`)
 * @example
 * ```ts
 * import { offsetPolygon } from "miterwright/polygon";
 *
 * offsetPolygon({ sides: 6, apothem: 100 }, 20).apothem; //=> 120
 * offsetPolygon({ sides: 6, apothem: 100 }, -20).side; //=> 92.3760430703401
 * ```
 */
export function offsetPolygon(polygon: PolygonLike, distance: number): RegularPolygon {
  const { sides, apothem } = checkPolygon(polygon);
  const moved = apothem + checkDistance(distance, "distance");
  if (moved < MIN_APOTHEM) {
    return refuse("impossible", "distance", distance, `a distance that leaves something of an apothem of ${apothem}`);
  }
  if (moved > MAX_APOTHEM)
    return refuse("range", "distance", distance, "a distance that leads to an apothem up to 1e106");
  return polygonFrom(sides, "apothem", moved);
}
