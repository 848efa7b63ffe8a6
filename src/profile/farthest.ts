import type { Point } from "../core/geometry-types.js";
import { outOf } from "./tilt.js";

/**
 * The corner that stands farthest in one direction once tilted. Unchecked.
 *
 * @param outline - one point or more
 * @param cos - cosine of the tilt, or minus it for the innermost point
 * @param sin - sine of the tilt, or minus it for the innermost point
 * @returns the corner; the first of equals
 */
export function farthest(outline: readonly Point[], cos: number, sin: number): Point {
  let best = outline[0]!;
  for (const point of outline) {
    if (outOf(point.x - best.x, point.y - best.y, cos, sin) > 0) best = point;
  }
  return best;
}
