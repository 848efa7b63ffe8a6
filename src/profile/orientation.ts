import type { Point } from "../core/geometry-types.js";

/** Rounding error of the determinant below, as a share of its terms: (3 + 16 e) e with e = 2^-53. */
const ERROR_SHARE: number = (3 + 16 * 2 ** -53) * 2 ** -53;
/** Smallest normal number, 2^-1022. Below it products lose digits that the share does not cover. */
const SMALLEST_NORMAL: number = 2 ** -1022;

/** A finite number times 2^1074, which is an integer for every one of them. */
function exactly(value: number): bigint {
  let integer = value;
  let shift = 1074n;
  while (!Number.isInteger(integer)) {
    integer *= 2;
    shift -= 1n;
  }
  return BigInt(integer) << shift;
}

/** The sign of the determinant in exact integers. */
function exactTurn(a: Point, b: Point, c: Point): -1 | 0 | 1 {
  const x = exactly(c.x);
  const y = exactly(c.y);
  const left = (exactly(a.x) - x) * (exactly(b.y) - y);
  const right = (exactly(a.y) - y) * (exactly(b.x) - x);
  return left > right ? 1 : left < right ? -1 : 0;
}

/**
 * Which way the path a, b, c turns, exactly.
 *
 * The sign of (a - c) x (b - c), taken in floating point while that is sure and in integers else, so that points that lie
 * on a line to the last bit are told from points that nearly do.
 *
 * @see Jonathan Richard Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates, 1997, section 4.1 (value from memory)
 */
export function turnOf(a: Point, b: Point, c: Point): -1 | 0 | 1 {
  const left = (a.x - c.x) * (b.y - c.y);
  const right = (a.y - c.y) * (b.x - c.x);
  const determinant = left - right;
  const doubt = ERROR_SHARE * (Math.abs(left) + Math.abs(right)) + SMALLEST_NORMAL;
  if (Math.abs(determinant) > doubt) return determinant > 0 ? 1 : -1;
  // Usual sections are full of plumb and level edges: both products are exactly zero there.
  if ((a.x === c.x || b.y === c.y) && (a.y === c.y || b.x === c.x)) return 0;
  return exactTurn(a, b, c);
}

/**
 * Which way round a simple outline goes, exactly: which way it turns at its leftmost corner, of several the lowest. 1 for counter-clockwise, -1 for clockwise,
 * 0 for an outline that doubles back there and so is not simple.
 */
export function orientationOf(corners: readonly Point[]): -1 | 0 | 1 {
  let at = 0;
  corners.forEach(({ x, y }, index) => {
    const least = corners[at]!;
    if (x < least.x || (x === least.x && y < least.y)) at = index;
  });
  const n = corners.length;
  return turnOf(corners[(at + n - 1) % n]!, corners[at]!, corners[(at + 1) % n]!);
}
