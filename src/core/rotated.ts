import type { Point } from "./geometry-types.js";

/** A point of the plane, rotated counter-clockwise about the origin by an angle of which cosine and sine are given; never -0. */
export function rotated({ x, y }: Point, cosine: number, sine: number): Point {
  return { x: x * cosine - y * sine + 0, y: x * sine + y * cosine + 0 };
}
