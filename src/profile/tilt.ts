import type { Point } from "../core/geometry-types.js";

/**
 * How far outward a section point stands once tilted: x cos s - y sin s. Unchecked. Never -0. Differences of coordinates will do too.
 */
export function outOf(x: number, y: number, cos: number, sin: number): number {
  return x * cos - y * sin + 0;
}

/**
 * How high a section point stands once tilted: x sin s + y cos s. Unchecked. Never -0. Differences of coordinates will do too.
 */
export function upOf(x: number, y: number, cos: number, sin: number): number {
  return x * sin + y * cos + 0;
}

/**
 * The corner that stands farthest in one direction once tilted. Unchecked. The first of equals; minus cosine and minus sine give the innermost point.
 */
export function farthest(outline: readonly Point[], cos: number, sin: number): Point {
  let best = outline[0]!;
  for (const point of outline) {
    if (outOf(point.x - best.x, point.y - best.y, cos, sin) > 0) best = point;
  }
  return best;
}
