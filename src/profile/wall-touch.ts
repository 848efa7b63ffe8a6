import type { Point } from "../core/geometry-types.js";
import { checkArris } from "./parse-profile.js";
import { outOf, upOf } from "./tilt.js";

/** The arrises of a rabbet. */
export interface RabbetPoints {
  /** The sight edge's back arris. */
  readonly sight: Point;
  /** The wall's end at the ledge. */
  readonly ledge: Point;
  /** The wall's end at the back. */
  readonly mouth: Point;
}

/** The arrises of a profile's rabbet. */
export function checkRabbet(arrises: Readonly<Record<string, unknown>>): RabbetPoints {
  return {
    sight: checkArris(arrises, "sightBack"),
    ledge: checkArris(arrises, "wallLedge"),
    mouth: checkArris(arrises, "wallMouth"),
  };
}

/**
 * How far down the rabbet's wall, as a share of it, level contents decide their size: 0 at the ledge, 1 at the mouth. Cosine and sine are those of the slope.
 *
 * With the wall leaning outward toward the mouth, contents touch it at their front, which is level with the sight edge's
 * back arris when that is the ledge's lower end, and else in the corner. With the wall leaning inward they must pass its
 * mouth. Where nothing can be held the result is still continuous in the slope: it stays at the mouth. Unchecked.
 */
export function wallTouch({ sight, ledge, mouth }: RabbetPoints, cos: number, sin: number): number {
  const [wallX, wallY] = [mouth.x - ledge.x, mouth.y - ledge.y];
  if (outOf(wallX, wallY, cos, sin) < 0) return 1;
  const rise = upOf(ledge.x - sight.x, ledge.y - sight.y, cos, sin);
  if (rise <= 0) return 0;
  const drop = -upOf(wallX, wallY, cos, sin);
  return rise < drop ? rise / drop : 1;
}

/** The point of the wall at a share of it, the mouth to the bit. Unchecked. */
export function wallPoint({ ledge, mouth }: RabbetPoints, share: number): Point {
  if (share === 1) return mouth;
  return { x: ledge.x + share * (mouth.x - ledge.x), y: ledge.y + share * (mouth.y - ledge.y) };
}
