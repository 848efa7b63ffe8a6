import { convertLength, type LengthUnit } from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

describe("convertLength", () => {
  test.each([
    [1, "in", "mm", 25.4],
    [1, "ft", "in", 12],
    [1, "ft", "mm", 304.8],
    [1, "ft", "m", 0.3048],
    [1, "cm", "mm", 10],
    [1, "m", "cm", 100],
    [1, "m", "mm", 1000],
    [127, "mm", "in", 5],
    [0.3, "in", "m", 0.00762],
    [90.5, "mm", "in", 905 / 254],
    [-2.5, "cm", "in", -125 / 127],
    [0, "m", "ft", 0],
    [5.5, "in", "in", 5.5],
  ] as const)("%d %s in %s is %d", (value, from, to, expected) => {
    expect(convertLength(value, from, to)).toBe(expected);
  });

  test("never gives -0", () => {
    expect(convertLength(-0, "mm", "in")).toBe(0);
    expect(convertLength(-0, "mm", "mm")).toBe(0);
    expect(convertLength(-0, "m", "mm")).toBe(0);
    // Half of the smallest double, or less.
    expect(convertLength(-5e-324, "mm", "cm")).toBe(0);
    expect(convertLength(-5e-324, "mm", "in")).toBe(0);
  });

  test("goes down into the subnormal numbers, and up to the largest lengths", () => {
    expect(convertLength(5e-324, "in", "mm")).toBe(25 * 5e-324);
    expect(convertLength(1e100, "m", "mm")).toBe(1e103);
    expect(convertLength(-1e100, "ft", "mm")).toBe(-3.048e102);
  });

  test("rounds the subnormal numbers once, like all others", () => {
    const least = 5e-324;
    for (let count = 1; count <= 1000; count++) {
      // No count of 127ths is a tie, and of fifths neither.
      expect(convertLength(count * least, "mm", "in")).toBe(Math.round((count * 5) / 127) * least);
      expect(convertLength(count * least, "in", "mm")).toBe(Math.round((count * 127) / 5) * least);
    }
  });

  test.each([
    [Number.NaN, "range", "Expected `value` to be a finite distance (-1e100 to 1e100), got NaN (number)"],
    [Infinity, "range", "Expected `value` to be a finite distance (-1e100 to 1e100), got Infinity (number)"],
    [-1.1e100, "range", "Expected `value` to be a finite distance (-1e100 to 1e100), got -1.1e+100 (number)"],
    ["5", "type", 'Expected `value` to be a finite distance (-1e100 to 1e100), got "5" (string)'],
  ])("refuses the value %j", (value, code, message) => {
    expect(() => convertLength(value as number, "mm", "in")).toThrow(
      expect.objectContaining({ name: "InputError", code, path: "value", message }),
    );
  });

  test("refuses other units", () => {
    expect(() => convertLength(1, "yd" as LengthUnit, "in")).toThrow(
      'Expected `from` to be one of "mm", "cm", "m", "in", "ft", got "yd" (string)',
    );
    expect(() => convertLength(1, "mm", "px" as LengthUnit)).toThrow(
      'Expected `to` to be one of "mm", "cm", "m", "in", "ft", got "px" (string)',
    );
  });

  test("has the types of units", () => {
    expectTypeOf<LengthUnit>().toEqualTypeOf<"mm" | "cm" | "m" | "in" | "ft">();
    // @ts-expect-error yards are no unit here
    expect(() => convertLength(1, "mm", "yd")).toThrow();
  });
});
