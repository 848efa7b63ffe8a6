/** Radians in a degree: pi / 180. */
const RADIAN: number = Math.PI / 180;
/** Degrees in a radian: 180 / pi. */
export const DEGREES: number = 180 / Math.PI;

/**
 * Sine of an angle from 0 to 90 degrees; exact at 0, 30 and 90.
 *
 * From 45 up it goes through the cosine of the complement, so that neither function is ever asked near a place where its
 * value hangs on the last bit of its argument (90 - x is exact there).
 */
function sineOfAcute(x: number): number {
  if (x === 30) return 0.5;
  return x <= 45 ? Math.sin(x * RADIAN) : Math.cos((90 - x) * RADIAN);
}

/** Cosine of an angle from 0 to 90 degrees; exact at 0, 60 and 90. */
function cosineOfAcute(x: number): number {
  if (x === 60) return 0.5;
  return x < 45 ? Math.cos(x * RADIAN) : Math.sin((90 - x) * RADIAN);
}

/** Sine of an angle in degrees. Exact at multiples of 30 where the sine is rational; odd to the last bit. Never -0. */
export function sinDeg(degrees: number): number {
  // The remainder is exact in floating point, so large angles lose nothing; most angles do without its cost.
  let x = Math.abs(degrees);
  if (x >= 360) x %= 360;
  let sign = degrees < 0 ? -1 : 1;
  if (x >= 180) {
    x -= 180;
    sign = -sign;
  }
  return sign * sineOfAcute(x > 90 ? 180 - x : x) + 0;
}

/**
 * Cosine of an angle in degrees. Exact at multiples of 30 where the cosine is rational; even to the last bit. Never -0.
 */
export function cosDeg(degrees: number): number {
  let x = Math.abs(degrees);
  if (x >= 360) x %= 360;
  if (x > 180) x = 360 - x;
  return (x > 90 ? -cosineOfAcute(180 - x) : cosineOfAcute(x)) + 0;
}

/**
 * Tangent of an angle in degrees. Exact at multiples of 45; at odd multiples of 90 it is infinite, which callers must rule out.
 */
export function tanDeg(degrees: number): number {
  return sinDeg(degrees) / cosDeg(degrees) + 0;
}

/** Direction of the vector (x, y) in degrees, from -180 to 180; exact at multiples of 45. Never -0. */
export function atan2Deg(y: number, x: number): number {
  return Math.atan2(y, x) * DEGREES + 0;
}
