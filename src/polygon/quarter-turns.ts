/** A quarter turn in radians: pi / 2. */
const QUARTER: number = Math.PI / 2;

/**
 * Cosine of `part / whole` quarter turns, for integers.
 *
 * The angle is reduced as a fraction, in integers, to at most half a quarter turn before any trigonometry. So corners
 * that mirror each other agree to the last bit, those on an axis lie on it exactly, and the last of a million corners
 * is as good as the first. Exact at multiples of 90 degrees, and at those of 60 where the cosine is rational. `whole` parts make a quarter turn, up to 2^50.
 * Never -0.
 */
export function cosineOfQuarters(part: number, whole: number): number {
  let rest = Math.abs(part) % (4 * whole);
  if (rest > 2 * whole) rest = 4 * whole - rest;
  const sign = rest > whole ? -1 : 1;
  if (rest > whole) rest = 2 * whole - rest;
  if (3 * rest === 2 * whole) return sign * 0.5;
  const acute = 2 * rest <= whole ? Math.cos((QUARTER * rest) / whole) : Math.sin((QUARTER * (whole - rest)) / whole);
  return sign * acute + 0;
}

/** Sine of `part / whole` quarter turns, for integers; see {@link cosineOfQuarters}. Never -0. */
export function sineOfQuarters(part: number, whole: number): number {
  return cosineOfQuarters(whole - part, whole);
}

/**
 * Tangent of `part / whole` quarter turns, for integers; see {@link cosineOfQuarters}. Never -0; infinite at odd multiples of a quarter turn, which callers
 * must rule out.
 */
export function tangentOfQuarters(part: number, whole: number): number {
  return sineOfQuarters(part, whole) / cosineOfQuarters(part, whole) + 0;
}
