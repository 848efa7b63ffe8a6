import type { Point } from "../core/geometry-types.js";
import { outOf, upOf } from "./tilt.js";

/**
 * How far down the rabbet's wall, as a share of it, level contents decide their size: 0 at the ledge, 1 at the mouth.
 *
 * With the wall leaning outward toward the mouth, contents touch it at their front, which is level with the sight edge's
 * back arris when that is the ledge's lower end, and else in the corner. With the wall leaning inward they must pass its
 * mouth. Where nothing can be held the result is still continuous in the slope: it stays at the mouth. Unchecked.
 *
 * @param ledgeX - abscissa of the wall's end at the ledge, from the sight edge's back arris
 * @param ledgeY - its ordinate from there
 * @param wallX - abscissa of the wall's mouth, from the wall's end at the ledge
 * @param wallY - its ordinate from there
 * @param cos - cosine of the slope
 * @param sin - sine of the slope
 * @returns the share, 0 to 1
 */
export function wallTouch(
  ledgeX: number,
  ledgeY: number,
  wallX: number,
  wallY: number,
  cos: number,
  sin: number,
): number {
  if (outOf(wallX, wallY, cos, sin) < 0) return 1;
  const rise = upOf(ledgeX, ledgeY, cos, sin);
  if (rise <= 0) return 0;
  const drop = -upOf(wallX, wallY, cos, sin);
  return rise < drop ? rise / drop : 1;
}

/**
 * The point of the wall at a share of it, the mouth to the bit. Unchecked.
 *
 * @param ledge - the wall's end at the ledge
 * @param mouth - its end at the mouth
 * @param share - how far down, 0 to 1
 * @returns the point, in the section's axes
 */
export function wallPoint(ledge: Point, mouth: Point, share: number): Point {
  if (share === 1) return mouth;
  return { x: ledge.x + share * (mouth.x - ledge.x), y: ledge.y + share * (mouth.y - ledge.y) };
}
