import { describe, expect, test } from "vitest";
import { realField } from "../../src/precise/real-field.js";
import { errorOf, limitOf } from "./comparison.js";
import { settingTerms, unitTerms } from "./cancellation.js";
import { randomFrom, someSides, someSlope, someTurn } from "./random.js";
import { certify, formatRows, type Row } from "./suite.js";

describe("a short certification", () => {
  const rows = certify({ grid: true, cases: 2000, seed: 2 });

  test("finds every quantity within its limit", () => {
    expect(rows.filter(({ over }) => over > 0).map((row) => formatRows([row]))).toEqual([]);
  });

  test("looks at each quantity often", () => {
    expect(rows.map(({ quantity }) => quantity)).toContain("piece length elsewhere");
    expect(rows.filter(({ cases, worst }) => cases < 40 || !(worst >= 0))).toEqual([]);
  });

  test("is the same for the same seed, and another for another", () => {
    const few = (seed: number): Row[] => certify({ grid: false, cases: 30, seed });
    expect(few(5)).toEqual(few(5));
    expect(few(5)).not.toEqual(few(6));
  });
});

describe("an error", () => {
  const field = realField(40);
  const third = field.div(field.exact(1), field.exact(3));

  test("is counted in the last places of the true value", () => {
    const want = field.exact(1);
    expect(errorOf({ quantity: "", got: 1 + 6 * Number.EPSILON, want })).toBe(6);
    expect(errorOf({ quantity: "", got: 1 - Number.EPSILON / 2, want })).toBe(0.5);
    // 1/3 lies a third of a place above its nearest double.
    expect(errorOf({ quantity: "", got: 1 / 3, want: third })).toBeCloseTo(1 / 3, 9);
    expect(errorOf({ quantity: "", got: Number.NaN, want })).toBe(Infinity);
  });

  test("of a signed sum is counted in those of its terms", () => {
    const want = field.exact(1);
    expect(errorOf({ quantity: "", got: 1 + 8 * Number.EPSILON, want, terms: 4 })).toBe(2);
    expect(errorOf({ quantity: "", got: 1 + 8 * Number.EPSILON, want, terms: 0.1 })).toBe(8);
  });

  test("of an angle is counted in sixths of 1e-14 degrees at least", () => {
    const want = field.exact(0.5);
    expect(errorOf({ quantity: "", got: 0.5 + 2 ** -47, want, angle: true })).toBeCloseTo((6 * 2 ** -47) / 1e-14, 9);
    expect(errorOf({ quantity: "", got: 90 + 2 ** -45, want: field.exact(90), angle: true })).toBe(2);
  });

  test("beside an exact zero is none or endless", () => {
    expect(errorOf({ quantity: "", got: 0, want: field.exact(0), angle: true })).toBe(0);
    expect(errorOf({ quantity: "", got: 1e-300, want: field.exact(0), angle: true })).toBe(Infinity);
  });

  test("of what must be exact is none or endless", () => {
    const want = field.exact(0.1);
    expect([
      errorOf({ quantity: "", got: 0.1, want, exact: true }),
      limitOf({ quantity: "", got: 0.1, want, exact: true }),
    ]).toEqual([0, 0]);
    expect(errorOf({ quantity: "", got: 0.1 + 2 ** -56, want, exact: true })).toBe(Infinity);
  });

  test("is unknown while the true value is", () => {
    const lost = field.sub(field.add(field.exact(1e100), third), field.exact(1e100));
    expect(errorOf({ quantity: "", got: 1 / 3, want: lost })).toBeUndefined();
  });
});

test("a normal without cancellation allows its angles nothing", () => {
  const magnitudes = [0.6, 0.48, 0.64] as const;
  expect(settingTerms([0.6, -0.48, 0.64], magnitudes)).toEqual({ miter: 0, bevel: 0 });
  // A sum of 1 that came of terms of 3, beside a leg of 1, turns 45 degrees by a radian for each.
  expect(settingTerms([1, 1, 0], [1, 3, 0]).miter).toBeCloseTo(180 / Math.PI, 12);
  expect(unitTerms([0.6, -0.48, 0.64], magnitudes).map((terms) => terms / 2)).toEqual([
    expect.closeTo(0.6, 12),
    expect.closeTo(0.48, 12),
    expect.closeTo(0.64, 12),
  ]);
});

test("random inputs reach the edges they should", () => {
  const random = randomFrom(7);
  const many = <T>(draw: () => T): T[] => Array.from({ length: 4000 }, draw);
  const slopes = many(() => Math.abs(someSlope(random)));
  expect(slopes.some((s) => s > 0 && s < 1e-9)).toBe(true);
  expect(slopes.some((s) => s > 90 - 1e-9 && s < 90)).toBe(true);
  expect(slopes.some((s) => s === 90) && slopes.some((s) => s === 0)).toBe(true);
  expect(Math.max(...slopes)).toBe(90);
  const turns = many(() => Math.abs(someTurn(random)));
  expect(turns.some((t) => t > 180 - 1e-9) && turns.some((t) => t > 0 && t < 1e-9)).toBe(true);
  expect(Math.max(...turns)).toBeLessThan(180);
  const sides = many(() => someSides(random));
  expect(Math.min(...sides)).toBe(3);
  expect(sides.some((n) => n > 500_000) && sides.every((n) => n <= 1_000_000 && Number.isInteger(n))).toBe(true);
});
