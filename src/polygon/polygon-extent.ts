import { cosDeg } from "../core/degrees.js";
import type { Box, Pose } from "../core/geometry-types.js";
import { checkPolygon, type PolygonLike } from "./polygon-like.js";
import { polygonFrom } from "./regular-polygon.js";
import { checkPoseOrRotation } from "./standing.js";

/** The two measures of which a polygon's overall width and height are always one, in a pose. */
export type Across = "acrossFlats" | "acrossCorners";

/**
 * Which measure a polygon's overall width and height are, in a pose.
 *
 * An odd polygon is as high as it is across flats and as wide as it is across corners in either pose. An even one has a
 * side or a corner at the bottom and the same at the top; at its left and right it has the same again if n is a
 * multiple of 4, otherwise the other.
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
 * Overall width and height of a polygon.
 *
 * In a pose each is either the measure across flats or the one across corners. In between, a longest diagonal decides:
 * the measure across corners times the cosine of the angle between the nearest such diagonal and the axis.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param pose - how it stands, `"side-down"` by default; or by how many degrees, -360 to 360, it is rotated
 * counter-clockwise from standing on side 0
 * @returns the size of the upright box around it, in the apothem's unit
 * @throws {InputError} when the polygon is out of range or the pose unknown
 * @example
 * ```ts
 * import { polygonExtent } from "miterwright/polygon";
 *
 * polygonExtent({ sides: 8, apothem: 150 }); //=> { width: 300, height: 300 }
 * polygonExtent({ sides: 6, apothem: 150 }); //=> { width: 346.410161513775, height: 300 }
 * polygonExtent({ sides: 6, apothem: 150 }, "corner-down"); //=> { width: 300, height: 346.410161513775 }
 * polygonExtent({ sides: 4, apothem: 150 }, 30).width; //=> 409.807621135332
 * ```
 */
export function polygonExtent(polygon: PolygonLike, pose?: Pose | number): Box {
  const { sides: n, apothem } = checkPolygon(polygon);
  const stands = checkPoseOrRotation(pose);
  const whole = polygonFrom(n, "apothem", apothem);
  if (typeof stands === "string") {
    const measures = extentMeasures(n, stands);
    return { width: whole[measures.width], height: whole[measures.height] };
  }
  // The longest diagonals point in n directions half a turn round if n is odd, in n / 2 if it is even.
  const pitch = n % 2 === 1 ? 180 / n : 360 / n;
  const along = (rotation: number): number => {
    const past = rotation % pitch;
    return whole.acrossCorners * cosDeg(Math.min(past, pitch - past));
  };
  const tilt = Math.abs(stands);
  const height = along(tilt + pitch / 2);
  return { width: n % 4 === 0 ? height : along(tilt), height };
}
