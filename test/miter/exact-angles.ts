import { D, PI, exact, ulps, type Exact } from "../exact.js";

/** Sines by the text of their angle: a grid of corners asks for the same few again and again. */
const sines = new Map<string, Exact>();

/** Sine of an angle in degrees; that of 0 is 0, without the noise of pi's last decimal. */
export function sine(degrees: Exact): Exact {
  if (degrees.mod(180).isZero()) return new D(0);
  const key = degrees.toString();
  const known = sines.get(key) ?? D.sin(degrees.times(PI).div(180));
  sines.set(key, known);
  return known;
}

/** Cosine of an angle in degrees, as the sine of its complement: a slope of 1e-300 costs no digit that a cosine has. */
export function cosine(degrees: Exact): Exact {
  return sine(new D(90).minus(degrees));
}

/** Direction of the vector (x, y) in degrees. */
export const direction = (y: Exact, x: Exact): Exact => D.atan2(y, x).times(180).div(PI);

/**
 * How far an angle is off what is allowed: 6 units in the last place or 1e-14 degrees, whichever is larger.
 *
 * @param got - what the library says
 * @param want - the truth
 * @returns the error over the bound; sound up to 1
 */
export function angleError(got: number, want: Exact): number {
  return Math.min(ulps(got, want) / 6, exact(got).minus(want).abs().div(1e-14).toNumber());
}
