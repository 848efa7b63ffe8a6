import { Decimal } from "decimal.js";

/** Decimals of 50 digits, apart from the library's own. */
export const D = Decimal.clone({ precision: 50, toExpNeg: -1e4, toExpPos: 1e4 });
/** A decimal of 50 digits. */
export type Exact = InstanceType<typeof D>;
/** A vector of space: x to the right, y away, z up. */
export type Space = readonly [Exact, Exact, Exact];

const PI = D.acos(-1);

/** The value of a double, every bit of it; `new Decimal(x)` would take its shortest text instead. */
export function exact(x: number): Exact {
  let [whole, exponent] = [x, 0];
  while (!Number.isInteger(whole)) {
    whole *= 2;
    exponent -= 1;
  }
  return new D(BigInt(whole).toString()).times(D.pow(2, exponent));
}

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

export const plus = (a: Space, b: Space): Space => [a[0].plus(b[0]), a[1].plus(b[1]), a[2].plus(b[2])];
export const times = (a: Space, k: Exact): Space => [a[0].times(k), a[1].times(k), a[2].times(k)];
export const inner = (a: Space, b: Space): Exact => a[0].times(b[0]).plus(a[1].times(b[1])).plus(a[2].times(b[2]));
export const length = (a: Space): Exact => inner(a, a).sqrt();
export const outer = (a: Space, b: Space): Space => [
  a[1].times(b[2]).minus(a[2].times(b[1])),
  a[2].times(b[0]).minus(a[0].times(b[2])),
  a[0].times(b[1]).minus(a[1].times(b[0])),
];

/** Size of the last place of a double. */
function lastPlace(x: number): number {
  if (x === 0) return Number.MIN_VALUE;
  return 2 ** Math.max(Math.floor(Math.log2(Math.abs(x))) - 52, -1074);
}

/**
 * The error of a double in units of the truth's last place.
 *
 * @param got - what the library says
 * @param want - the truth
 * @returns units in the last place
 */
export function ulps(got: number, want: Exact): number {
  return exact(got).minus(want).abs().div(lastPlace(want.toNumber())).toNumber();
}

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
