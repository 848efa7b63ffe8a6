import type { Point, Pose } from "../core/geometry-types.js";
import { cosineOfQuarters, sineOfQuarters } from "./quarter-turns.js";

/**
 * Where the corners of the polygon of apothem 1 lie, as bare coordinates x0, y0, x1, y1 and so on: on bare numbers, unchecked.
 *
 * Polygons round one center share them, so a frame works them out once for all its arrises.
 */
export function cornerDirections(n: number, pose: Pose): Float64Array {
  // In parts of which n make a quarter turn, corner 0 lies n below the x axis, and half a side (2 parts) before that.
  const first = pose === "corner-down" ? -n : -n - 2;
  const cosine = cosineOfQuarters(2, n);
  const directions = new Float64Array(2 * n);
  for (let k = 0; k < n; k++) {
    directions[2 * k] = cosineOfQuarters(first + 4 * k, n) / cosine;
    directions[2 * k + 1] = sineOfQuarters(first + 4 * k, n) / cosine;
  }
  return directions;
}

/** The corners of the polygon of an apothem, unchecked. No coordinate is -0. */
export function cornersFrom(directions: Float64Array, apothem: number): Point[] {
  const corners: Point[] = [];
  for (let k = 0; k < directions.length; k += 2) {
    corners.push({ x: apothem * directions[k]! + 0, y: apothem * directions[k + 1]! + 0 });
  }
  return corners;
}
