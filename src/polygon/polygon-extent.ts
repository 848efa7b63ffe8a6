import type { Box, Pose } from "../core/geometry-types.js";
import { checkPolygon, checkPose, type PolygonLike } from "./polygon-like.js";
import { polygonFrom } from "./regular-polygon.js";

/** The two measures of which a polygon's overall width and height are always one. */
export type Across = "acrossFlats" | "acrossCorners";

/**
 * Which measure a polygon's overall width and height are, in a pose.
 *
 * An odd polygon is as high as it is across flats and as wide as it is across corners in either pose. An even one has a
 * side or a corner at the bottom and the same at the top; at its left and right it has the same again if n is a multiple
 * of 4, otherwise the other.
 *
 * @param n - number of sides
 * @param pose - how it stands
 * @returns the measure that is its width, and the one that is its height
 */
export function extentMeasures(n: number, pose: Pose): { width: Across; height: Across } {
  if (n % 2 === 1) return { width: "acrossCorners", height: "acrossFlats" };
  const flat = pose === "side-down";
  return {
    width: flat === (n % 4 === 0) ? "acrossFlats" : "acrossCorners",
    height: flat ? "acrossFlats" : "acrossCorners",
  };
}

/**
 * Overall width and height of a polygon that stands in a pose.
 *
 * Each is either the measure across flats or the one across corners.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param pose - how it stands; `"side-down"` by default
 * @returns the size of the upright box around it, in the apothem's unit
 * @throws {InputError} when the polygon is out of range or the pose unknown
 * @example
 * ```ts
 * import { polygonExtent } from "miterwright/polygon";
 *
 * polygonExtent({ sides: 8, apothem: 150 }); //=> { width: 300, height: 300 }
 * polygonExtent({ sides: 6, apothem: 150 }); //=> { width: 346.410161513775, height: 300 }
 * polygonExtent({ sides: 6, apothem: 150 }, "corner-down"); //=> { width: 300, height: 346.410161513775 }
 * ```
 */
export function polygonExtent(polygon: PolygonLike, pose?: Pose): Box {
  const { sides, apothem } = checkPolygon(polygon);
  const measures = extentMeasures(sides, checkPose(pose));
  const whole = polygonFrom(sides, "apothem", apothem);
  return { width: whole[measures.width], height: whole[measures.height] };
}
