import { rotated } from "../core/rotated.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";

/** Surfaces that meet at less than this angle, in degrees, are drawn as one that is curved. */
const SMOOTH: number = 20;

/** A point of a section that is rolled about the stick's length. */
export interface RolledPoint {
  /** Where it then is. */
  readonly at: Point;
  /** Whether an edge is seen there. */
  readonly sharp: boolean;
}

/** The points of a section, rolled about the stick's length by an angle in degrees. */
export function rolledOutline(outline: readonly Point[], tilt: number): readonly RolledPoint[] {
  const [cosine, sine] = [cosDeg(tilt), sinDeg(tilt)];
  return outline.map((point, index) => {
    const next = outline[(index + 1) % outline.length]!;
    const last = outline.at(index - 1)!;
    const [ax, ay, bx, by] = [point.x - last.x, point.y - last.y, next.x - point.x, next.y - point.y];
    return {
      at: rotated(point, cosine, sine),
      sharp: ax * bx + ay * by < cosDeg(SMOOTH) * Math.hypot(ax, ay) * Math.hypot(bx, by),
    };
  });
}
