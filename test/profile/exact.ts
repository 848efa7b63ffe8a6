import { Decimal } from "decimal.js";
import { expect } from "vitest";

/** Decimals of 60 digits, for sines and products that a double is held against. */
export const Exact: typeof Decimal = Decimal.clone({ precision: 60 });
export type Exact = Decimal;

const RADIAN = Exact.acos(-1).div(180);

/**
 * The value of a double to 60 digits. (`new Decimal(0.1)` would be the value of its shortest text, which is another number.)
 *
 * @param value - any finite number
 */
export function exact(value: number): Exact {
  if (!Number.isFinite(value)) throw new RangeError(`${value} has no decimals`);
  let integer = value;
  let halvings = 0;
  while (!Number.isInteger(integer)) {
    integer *= 2;
    halvings++;
  }
  return new Exact(BigInt(integer).toString()).div(new Exact(2).pow(halvings));
}

/** Sine and cosine of an angle in degrees. */
export function exactTrig(degrees: number): { sin: Exact; cos: Exact; tan: Exact } {
  // The complement is exact, so that the cosine is 0 at 90 and has all its digits close to it.
  const sin = exact(degrees).mul(RADIAN).sin();
  const cos = new Exact(90).sub(exact(degrees).abs()).mul(RADIAN).sin();
  return { sin, cos, tan: sin.div(cos) };
}

/** The distance from a double to the next one farther from zero. */
function ulp(magnitude: number): number {
  const exponent = Math.max(-1022, Math.floor(Math.log2(magnitude)));
  return 2 ** (exponent - 52);
}

/**
 * Asserts that a result is within some units in the last place of the true sum of its terms; the unit is taken at the sum of
 * the terms' magnitudes.
 *
 * @param actual - the result
 * @param terms - what it is the sum of
 * @param ulps - how many units it may be off
 */
export function expectSum(actual: number, terms: readonly Exact[], ulps = 6): void {
  const total = terms.reduce((sum, term) => sum.add(term), new Exact(0));
  const magnitude = terms.reduce((sum, term) => sum.add(term.abs()), new Exact(0)).toNumber();
  const off = exact(actual).sub(total).abs().toNumber();
  if (magnitude === 0) expect(off).toBe(0);
  else expect(off / ulp(magnitude)).toBeLessThanOrEqual(ulps);
}
