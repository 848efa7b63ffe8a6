import type { Point, Pose } from "../core/geometry-types.js";
import { checkPolygon, checkPose, type PolygonLike } from "./polygon-like.js";
import { cosineOfQuarters, sineOfQuarters } from "./quarter-turns.js";

/**
 * The corners of a polygon that stands in a pose, its center at the origin.
 *
 * Side k runs from corner k to corner k + 1; y points up. Corner k lies at the angle 360 k / n past corner 0, which is the
 * left end of the bottom side (side-down) or the bottom corner (corner-down). The angle is reduced as an integer
 * fraction of a turn, so that mirrored corners agree to the last bit and the bottom side has y = -apothem exactly.
 *
 * @param polygon - the polygon; only `sides` and `apothem` are read
 * @param pose - how it stands; `"side-down"` by default
 * @returns its corners, counter-clockwise from the start of side 0, in the apothem's unit
 * @throws {InputError} when the polygon is out of range or the pose unknown
 * @example
 * ```ts
 * import { polygonCorners } from "miterwright/polygon";
 *
 * polygonCorners({ sides: 4, apothem: 5 })[0]; //=> { x: -5, y: -5 }
 * polygonCorners({ sides: 6, apothem: 5 }, "corner-down")[0]; //=> { x: 0, y: -5.77350269189626 }
 * ```
 */
export function polygonCorners(polygon: PolygonLike, pose?: Pose): Point[] {
  const { sides: n, apothem } = checkPolygon(polygon);
  // In parts of which n make a quarter turn, corner 0 lies n below the x axis, and half a side (2 parts) before that.
  const first = checkPose(pose) === "side-down" ? -n - 2 : -n;
  const cosine = cosineOfQuarters(2, n);
  return Array.from({ length: n }, (_, k) => ({
    x: apothem * (cosineOfQuarters(first + 4 * k, n) / cosine) + 0,
    y: apothem * (sineOfQuarters(first + 4 * k, n) / cosine) + 0,
  }));
}
