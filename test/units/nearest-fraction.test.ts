import { type NearestFraction, nearestFraction, type NearestFractionOptions, type Rounding } from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

describe("nearestFraction", () => {
  test.each<[number, number, NearestFraction]>([
    [5.4375, 16, { whole: 5, numerator: 7, denominator: 16, value: 5.4375, error: 0, text: "5 7/16" }],
    [-5.4375, 16, { whole: -5, numerator: -7, denominator: 16, value: -5.4375, error: 0, text: "-5 7/16" }],
    [0.4375, 16, { whole: 0, numerator: 7, denominator: 16, value: 0.4375, error: 0, text: "7/16" }],
    [-0.4375, 16, { whole: 0, numerator: -7, denominator: 16, value: -0.4375, error: 0, text: "-7/16" }],
    [5.5, 16, { whole: 5, numerator: 1, denominator: 2, value: 5.5, error: 0, text: "5 1/2" }],
    [5, 16, { whole: 5, numerator: 0, denominator: 1, value: 5, error: 0, text: "5" }],
    [0, 16, { whole: 0, numerator: 0, denominator: 1, value: 0, error: 0, text: "0" }],
    [0.34375, 16, { whole: 0, numerator: 3, denominator: 8, value: 0.375, error: 0.03125, text: "3/8" }],
    [-0.34375, 16, { whole: 0, numerator: -3, denominator: 8, value: -0.375, error: -0.03125, text: "-3/8" }],
    [0.75, 3, { whole: 0, numerator: 2, denominator: 3, value: 2 / 3, error: 2 / 3 - 0.75, text: "2/3" }],
    [2.5, 1, { whole: 3, numerator: 0, denominator: 1, value: 3, error: 0.5, text: "3" }],
  ])("%d on a scale of 1/%d", (value, denominator, expected) => {
    expect(nearestFraction(value, denominator)).toEqual(expected);
  });

  test("carries", () => {
    expect(nearestFraction(15.99, 16)).toMatchObject({ whole: 16, numerator: 0, value: 16, text: "16" });
    expect(nearestFraction(-15.99, 16)).toMatchObject({ whole: -16, numerator: 0, value: -16, text: "-16" });
    expect(nearestFraction(15.999, 10)).toMatchObject({ whole: 16, numerator: 0, value: 16, text: "16" });
    expect(nearestFraction(0.001, 16)).toMatchObject({ whole: 0, value: 0, error: -0.001, text: "0" });
    expect(nearestFraction(-0.001, 16)).toMatchObject({ whole: 0, numerator: 0, value: 0, error: 0.001, text: "0" });
    expect(nearestFraction(-0.001, 10)).toMatchObject({ whole: 0, numerator: 0, value: 0, error: 0.001, text: "0" });
  });

  test.each<[number, number, Rounding, string]>([
    // 1/32 lies in the middle between two sixteenths.
    [1 / 32, 16, "nearest", "1/16"],
    [-1 / 32, 16, "nearest", "-1/16"],
    [3 / 32, 16, "nearest", "1/8"],
    [1 / 32 - 2 ** -58, 16, "nearest", "0"],
    [0.25, 10, "nearest", "3/10"],
    [-0.25, 10, "nearest", "-3/10"],
    // 0.15 is a little less in binary, 0.35 too, 0.45 a little more.
    [0.15, 10, "nearest", "1/10"],
    [0.35, 10, "nearest", "3/10"],
    [0.45, 10, "nearest", "1/2"],
    [5.4, 16, "up", "5 7/16"],
    [5.4, 16, "down", "5 3/8"],
    [-5.4, 16, "up", "-5 3/8"],
    [-5.4, 16, "down", "-5 7/16"],
    [5.375, 16, "up", "5 3/8"],
    [5.375, 16, "down", "5 3/8"],
    [-5.375, 16, "up", "-5 3/8"],
    [-5.375, 16, "down", "-5 3/8"],
    [1e-300, 16, "up", "1/16"],
    [-1e-300, 16, "up", "0"],
    [-1e-300, 16, "down", "-1/16"],
    [1e-300, 10, "up", "1/10"],
    [-1e-300, 10, "up", "0"],
    [-1e-300, 10, "down", "-1/10"],
    // 0.1 is a little more in binary and 0.3 a little less, but both are the doubles nearest to the graduation.
    [0.1, 10, "up", "1/10"],
    [0.1, 10, "down", "1/10"],
    [-0.1, 10, "down", "-1/10"],
    [0.3, 10, "down", "3/10"],
    [0.3, 10, "up", "3/10"],
    [-0.3, 10, "up", "-3/10"],
    [0.1 + 2 ** -56, 10, "up", "1/5"],
    [0.3 - 2 ** -54, 10, "down", "1/5"],
  ])("%d on a scale of 1/%d, rounded %s, is %s", (value, denominator, rounding, text) => {
    expect(nearestFraction(value, denominator, { rounding }).text).toBe(text);
  });

  test("keeps the denominator when asked to", () => {
    expect(nearestFraction(5.5, 16, { reduce: false })).toEqual({
      whole: 5,
      numerator: 8,
      denominator: 16,
      value: 5.5,
      error: 0,
      text: "5 8/16",
    });
    expect(nearestFraction(5, 16, { reduce: false })).toMatchObject({ numerator: 0, denominator: 16, text: "5" });
    expect(nearestFraction(1.5, 10, { reduce: false })).toMatchObject({
      numerator: 5,
      denominator: 10,
      text: "1 5/10",
    });
  });

  test("writes the largest numbers in full", () => {
    // The shortest text of this double ends in 50.
    expect(nearestFraction(19451840418451152, 16).text).toBe("19451840418451152");
    expect(nearestFraction(1e21, 64).text).toBe("1000000000000000000000");
    expect(nearestFraction(-1e100, 7)).toMatchObject({ whole: -1e100, numerator: 0, value: -1e100, error: 0 });
    expect(nearestFraction(2 ** 52 - 0.5, 2).text).toBe("4503599627370495 1/2");
    expect(nearestFraction(2 ** 51 - 0.5, 2).text).toBe("2251799813685247 1/2");
  });

  test.each<[unknown, unknown, unknown, string, string, string]>([
    [
      Number.NaN,
      16,
      {},
      "range",
      "value",
      "Expected `value` to be a finite distance (-1e100 to 1e100), got NaN (number)",
    ],
    ["5", 16, {}, "type", "value", 'Expected `value` to be a finite distance (-1e100 to 1e100), got "5" (string)'],
    [5, 0, {}, "range", "denominator", "Expected `denominator` to be an integer from 1 to 1000000, got 0 (number)"],
    [
      5,
      1e6 + 1,
      {},
      "range",
      "denominator",
      "Expected `denominator` to be an integer from 1 to 1000000, got 1000001 (number)",
    ],
    [
      5,
      2.5,
      {},
      "integer",
      "denominator",
      "Expected `denominator` to be an integer from 1 to 1000000, got 2.5 (number)",
    ],
    [
      5,
      undefined,
      {},
      "missing",
      "denominator",
      "Expected `denominator` to be an integer from 1 to 1000000, got undefined",
    ],
    [5, 16, null, "type", "options", "Expected `options` to be an object, got null"],
    [
      5,
      16,
      { rounding: "even" },
      "unknown",
      "rounding",
      'Expected `rounding` to be one of "nearest", "up", "down", got "even" (string)',
    ],
    [
      5,
      16,
      { rounding: 1 },
      "type",
      "rounding",
      'Expected `rounding` to be one of "nearest", "up", "down", got 1 (number)',
    ],
    [5, 16, { reduce: 1 }, "type", "reduce", "Expected `reduce` to be true or false, got 1 (number)"],
  ])("refuses %j, %j, %j", (value, denominator, options, code, path, message) => {
    expect(() => nearestFraction(value as number, denominator as number, options as NearestFractionOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }),
    );
  });

  test("has named roundings", () => {
    expectTypeOf<Rounding>().toEqualTypeOf<"nearest" | "up" | "down">();
    expectTypeOf<NearestFraction["whole"]>().toEqualTypeOf<number>();
    // @ts-expect-error no such rounding
    expect(() => nearestFraction(1, 16, { rounding: "away" })).toThrow();
  });
});
