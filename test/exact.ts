import { Decimal } from "decimal.js";

/** Decimals of 60 digits, apart from the library's own: the truth that doubles are held against. */
export const D: typeof Decimal = Decimal.clone({ precision: 60, toExpNeg: -1e4, toExpPos: 1e4 });
/** A decimal of 60 digits. */
export type Exact = Decimal;

/** Pi to 60 digits. */
export const PI: Exact = D.acos(-1);

/** The value of a double, every bit of it; `new Decimal(x)` would take its shortest text instead. */
export function exact(x: number): Exact {
  let [whole, exponent] = [x, 0];
  while (!Number.isInteger(whole)) {
    whole *= 2;
    exponent -= 1;
  }
  return new D(BigInt(whole).toString()).times(D.pow(2, exponent));
}

/** Size of the last place of the double nearest to a value. */
export function lastPlace(value: Exact): number {
  const x = value.abs().toNumber();
  if (x === 0) return Number.MIN_VALUE;
  // The logarithm can round up to the next power of two just below it.
  let exponent = Math.floor(Math.log2(x));
  if (2 ** exponent > x) exponent -= 1;
  return 2 ** Math.max(exponent - 52, -1074);
}

/** Error of a double in units of the last place of the true value, or of what is given as the measure of its size. */
export function ulps(got: number, want: Exact, size: Exact = want): number {
  return exact(got).minus(want).abs().div(lastPlace(size)).toNumber();
}
