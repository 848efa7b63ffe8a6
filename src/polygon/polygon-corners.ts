import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point, Pose } from "../core/geometry-types.js";
import { rotated } from "../core/rotated.js";
import { cornerDirections, cornersFrom } from "./corner-directions.js";
import { checkPolygon, type PolygonLike } from "./polygon-like.js";
import { checkPoseOrRotation } from "./standing.js";

/**
 * The corners of a polygon, its center at the origin.
 *
 * Side k runs from corner k to corner k + 1; y points up. Corner k lies at the angle 360 k / n past corner 0, which is
 * the left end of the bottom side (side-down) or the bottom corner (corner-down). The angle is reduced as an integer
 * fraction of a turn, so that mirrored corners agree to the last bit and the bottom side has y = -apothem exactly.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param pose - how it stands, `"side-down"` by default; or by how many degrees, -360 to 360, it is rotated
 * counter-clockwise from standing on side 0
 * @returns its corners, counter-clockwise from the start of side 0, in the apothem's unit
 * @throws {InputError} when the polygon is out of range or the pose unknown
 * @example
 * ```ts
 * import { polygonCorners } from "miterwright/polygon";
 *
 * polygonCorners({ sides: 4, apothem: 5 })[0]; //=> { x: -5, y: -5 }
 * polygonCorners({ sides: 6, apothem: 5 }, "corner-down")[0]; //=> { x: 0, y: -5.77350269189626 }
 * polygonCorners({ sides: 4, apothem: 5 }, 90)[0]; //=> { x: 5, y: -5 }
 * ```
 */
export function polygonCorners(polygon: PolygonLike, pose?: Pose | number): Point[] {
  const { sides: n, apothem } = checkPolygon(polygon);
  const stands = checkPoseOrRotation(pose);
  const corners = cornersFrom(cornerDirections(n, stands === "corner-down" ? stands : "side-down"), apothem);
  if (typeof stands === "string" || stands === 0) return corners;
  const c = cosDeg(stands);
  const s = sinDeg(stands);
  return corners.map((corner) => rotated(corner, c, s));
}
