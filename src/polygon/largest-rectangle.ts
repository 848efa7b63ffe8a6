import type { Pose } from "../core/geometry-types.js";
import { cosineOfQuarters, sineOfQuarters } from "./quarter-turns.js";
import type { PlacedRectangle } from "./placed.js";
import { rotationOf } from "./standing.js";

/** Half the width, the height, and the center's height of a rectangle in a polygon of apothem 1. */
type Unit = readonly [x: number, height: number, up: number];

/**
 * Even number of sides: in the middle, its corners on a side that faces 45 degrees, else on the corner nearest to
 * there.
 */
function inEven(n: number, pose: Pose): Unit {
  const facing = (pose === "side-down") === (n % 4 === 0) ? 0 : 2;
  if ((n / 2 - facing) % 4 === 0) return [Math.SQRT1_2, Math.SQRT2, 0];
  const corner = [n / 2 - 1, n / 2, n / 2 + 1].find((part) => (part - facing) % 4 === 2)!;
  const around = 1 / cosineOfQuarters(2, n);
  return [around * cosineOfQuarters(corner, n), 2 * around * sineOfQuarters(corner, n), 0];
}

/** Odd number of sides, standing on a side. */
function inOdd(n: number): Unit {
  const half = (n + 1) / 2;
  const small = sineOfQuarters(1, n);
  if (n % 4 === 1) {
    // Two of its corners are corners of the polygon, `half` parts above the level if n = 8 i + 1, below it if n = 8 i +
    // 5.
    const sine = sineOfQuarters(half, n);
    const around = 1 / cosineOfQuarters(2, n);
    const up = (around * small ** 2) / sine;
    return [around * cosineOfQuarters(half, n), (1 + around * small) / sine, n % 8 === 1 ? up : -up];
  }
  // All four lie on sides, whose normals point half - 1 and half + 1 parts off the level.
  const both = sineOfQuarters(half - 1, n) * sineOfQuarters(half + 1, n);
  const wide = cosineOfQuarters(1, n);
  const cosine = cosineOfQuarters(half, n);
  const up = (small ** 2 * (1 - small)) / (2 * cosine * both);
  return [wide / (2 * cosine), (sineOfQuarters(half, n) * wide) / both, n % 8 === 3 ? -up : up];
}

/**
 * The upright rectangle of largest area in a polygon.
 *
 * Its corners slide along the polygon's sides until width times height is greatest: width (A - B width) is greatest at
 * A / 2 B if that lies on the sides in question, else at a corner of the polygon. Which of the two depends only on the
 * remainder of n by 8, so everything is in closed form.
 */
export function largestRectangle(n: number, apothem: number, standing: Pose | "free"): PlacedRectangle {
  // Of all rotations side-down gives the largest, except where the number of sides is a multiple of 8: standing on a
  // corner such a polygon has corners at 45 degrees.
  const pose = standing !== "free" ? standing : n % 8 === 0 ? "corner-down" : "side-down";
  const [x, height, up] = n % 2 === 0 ? inEven(n, pose) : inOdd(n);
  return {
    width: 2 * x * apothem,
    height: height * apothem,
    center: { x: 0, y: (pose === "side-down" ? up : -up) * apothem + 0 },
    rotation: rotationOf(n, pose),
  };
}
