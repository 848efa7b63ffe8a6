import { expect } from "vitest";
import { D, exact, PI, ulps, type Exact } from "../exact.js";

/**
 * Sine, cosine and tangent of a slope to 60 digits.
 *
 * @param degrees - from -90 to 90; the tangent needs them between
 */
export function exactTrig(degrees: number): { sin: Exact; cos: Exact; tan: Exact } {
  // The complement is exact, so that the cosine is 0 at 90 and has all its digits close to it.
  const sin = exact(degrees).times(PI).div(180).sin();
  const cos = new D(90).minus(exact(degrees).abs()).times(PI).div(180).sin();
  return { sin, cos, tan: sin.div(cos) };
}

/**
 * Asserts that a result is within 6 units in the last place of the true sum of its terms; the unit is taken at the sum of the
 * terms' magnitudes.
 *
 * @param got - the result
 * @param terms - what it is the sum of
 */
export function expectSum(got: number, terms: readonly Exact[]): void {
  expect(Number.isFinite(got)).toBe(true);
  const size = D.sum(0, ...terms.map((term) => term.abs()));
  expect(ulps(got, D.sum(0, ...terms), size)).toBeLessThanOrEqual(6);
}
