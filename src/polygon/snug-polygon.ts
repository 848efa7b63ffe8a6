import type { Pose } from "../core/geometry-types.js";
import type { Placement } from "./placed.js";
import { cosineOfQuarters, sineOfQuarters, tangentOfQuarters } from "./quarter-turns.js";
import { rotationOf } from "./standing.js";

/** How an upright rectangle sits in the smallest polygon that holds it. */
export interface Snug extends Placement {
  /** The polygon's apothem. */
  readonly apothem: number;
}

/**
 * The sides of the right half of a polygon that face one way: their normals rise `first`, `first + 4`, ... `last` parts
 * above the x axis (or fall as much below it), n parts being a quarter turn.
 */
interface Facing {
  readonly first: number;
  readonly last: number;
}

/** Direction of a point of the right half plane. */
export function directionInParts(n: number, x: number, y: number): number {
  return (Math.atan2(y, x) / (Math.PI / 2)) * n;
}

/** The side whose normal points nearest to (x, y), with y measured the way the sides face. */
function nearestSide({ first, last }: Facing, n: number, x: number, y: number): number {
  const steps = Math.round((directionInParts(n, x, y) - first) / 4);
  return Math.min(Math.max(first + 4 * steps, first), last);
}

/** Distance of the point (x, y) from the center, measured along the normal of a side. */
function reach(part: number, n: number, x: number, y: number): number {
  return x * cosineOfQuarters(part, n) + y * sineOfQuarters(part, n);
}

/** The first side for which `enough` holds, or the last one; `enough` never goes back to false. */
function firstSide({ first, last }: Facing, enough: (part: number) => boolean): number {
  let low = first;
  let high = last;
  while (low < high) {
    const middle = low + 4 * Math.floor((high - low) / 8);
    if (enough(middle)) high = middle;
    else low = middle + 4;
  }
  return low;
}

/**
 * The smallest polygon of a pose around an upright rectangle, with x and y half the rectangle's width and height.
 *
 * The rectangle's center lies on the polygon's upright axis (if one left of it does, so does its mirror image, and what
 * lies halfway). An even polygon has it at the center, and is as large as the side demands that faces the rectangle's
 * corner most nearly. In an odd one the upper corners push against sides of the upper half and the lower corners
 * against sides of the lower half; raising the rectangle makes the first demand more and the second less, so they are
 * equal at the best place. Each demand is a chain of straight lines, which change over where the rectangle's corner
 * crosses the ray to a corner of the polygon; two binary searches over those corners find the pair of sides, j above
 * and l below, and with p = (j + l) / 2 and q = (j - l) / 2
 *
 *     apothem = (x cos p + y sin j sin l / sin p) / cos q,    up = (x - y cot p) tan q.
 */
export function snugPolygon(n: number, pose: Pose, x: number, y: number): Snug {
  const down = pose === "side-down";
  const rotation = rotationOf(n, pose);
  if (n % 2 === 0) {
    const first = down === (n % 4 === 0) ? 0 : 2;
    const part = nearestSide({ first, last: down ? n : n - 2 }, n, x, y);
    return { apothem: reach(part, n, x, y), center: { x: 0, y: 0 }, rotation };
  }
  // Side-down. Standing on a corner it is the same upside down.
  const upper: Facing = { first: 4 - (n % 4), last: n - 2 };
  const lower: Facing = { first: n % 4, last: n };
  const j = firstSide(upper, (part) => {
    const above = x * tangentOfQuarters(part + 2, n);
    const below = 2 * y - above;
    return reach(part, n, x, above) >= reach(nearestSide(lower, n, x, below), n, x, below);
  });
  const l = firstSide(lower, (part) => {
    const below = x * tangentOfQuarters(part + 2, n);
    return reach(part, n, x, below) >= reach(j, n, x, 2 * y - below);
  });
  const p = (j + l) / 2;
  const q = (j - l) / 2;
  const upright = (y * sineOfQuarters(j, n) * sineOfQuarters(l, n)) / sineOfQuarters(p, n);
  const up = (x - y / tangentOfQuarters(p, n)) * tangentOfQuarters(q, n);
  return {
    apothem: (x * cosineOfQuarters(p, n) + upright) / cosineOfQuarters(q, n),
    center: { x: 0, y: (down ? up : -up) + 0 },
    rotation,
  };
}
