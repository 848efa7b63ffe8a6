import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { commonGrid, fineGrid, fromGrid, gcd, toGrid } from "../../src/stock/model/grid.js";

const step = (values: number[]): number | undefined => {
  const grid = commonGrid(values);
  return grid && fromGrid(1, grid);
};

describe("grids", () => {
  test.each([
    [[5.4375, 96, 0.125], 1 / 16],
    [[433.3, 2400, 3], 0.1],
    [[1430, 410, 2400], 10],
    [[25.4 * 3.5, 25.4 * 96], 12.7],
    [[1 / 3, 2 / 3, 5], 1 / 3],
    [[0, 7], 7],
    [[], 1],
    [[1e9, 1], 1],
  ])("%j lies on the grid of %d", (values, expected) => {
    expect(step(values)).toBeCloseTo(expected, 12);
  });

  test("numbers without a common measure have no grid", () => {
    expect(commonGrid([Math.SQRT2, Math.PI])).toBeUndefined();
    expect(commonGrid([1e100, 1])).toBeUndefined();
  });

  test("scaling the values scales the grid", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 9 }),
        fc.double({ min: 1e-50, max: 1e50, noNaN: true }),
        (values, factor) => {
          const expected = values.reduce(gcd, 0) * factor;
          const found = step(values.map((value) => value * factor))!;
          expect(Math.abs(found - expected)).toBeLessThanOrEqual(1e-12 * expected);
        },
      ),
    );
  });

  test("a value is on its grid exactly, or between two numbers", () => {
    const grid = { times: 1, per: 10, exact: true };
    expect(toGrid(433.3, grid, "up")).toBe(4333);
    expect(toGrid(433.3, grid, "down")).toBe(4333);
    expect(toGrid(0.1 + 0.2, grid, "up")).toBe(3);
    expect(toGrid(433.31, grid, "up")).toBe(4334);
    expect(toGrid(433.39, grid, "down")).toBe(4333);
    expect(fromGrid(4333, grid)).toBe(433.3);
  });

  test("the fine grid is a hundred-thousandth of the longest stick or finer", () => {
    expect(fromGrid(1, fineGrid(2400, 100))).toBe(0.01);
    expect(fromGrid(1, fineGrid(96, 5))).toBe(0.0001);
    expect(fromGrid(1, fineGrid(1e9, 1))).toBe(0.001);
    expect(fromGrid(1, fineGrid(1e100, 1e-100))).toBe(1e88);
  });
});
