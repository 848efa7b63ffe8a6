import {
  formatLength,
  type FormatLengthOptions,
  type LengthStyle,
  type LengthUnit,
  type UnitLabel,
} from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

type Row = readonly [value: number, unit: LengthUnit, options: FormatLengthOptions, text: string];

const check = ([value, unit, options, text]: Row): void => {
  expect(formatLength(value, unit, options)).toBe(text);
};

describe("formatLength", () => {
  test.each<Row>([
    [90.5, "mm", {}, "90.5 mm"],
    [9.05, "cm", {}, "9.05 cm"],
    [0.0905, "m", {}, "0.0905 m"],
    [5.4375, "in", {}, '5 7/16"'],
    [1.25, "ft", {}, "1' 3\""],
    [1 / 3, "mm", {}, "0.33 mm"],
    [1 / 3, "cm", {}, "0.333 cm"],
    [1 / 3, "m", {}, "0.33333 m"],
    [1 / 3, "in", { style: "decimal" }, '0.333"'],
    [1 / 3, "ft", { style: "decimal" }, "0.3333'"],
    [0.3, "in", {}, '5/16"'],
  ])("by default: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [90.5, "mm", { as: "in" }, '3 9/16"'],
    [90.5, "mm", { as: "ft" }, '3 9/16"'],
    [90.5, "mm", { as: "cm" }, "9.05 cm"],
    [90.5, "mm", { style: "feet-inches", as: "ft" }, '3 9/16"'],
    [14.5, "in", { style: "feet-inches" }, "1' 2 1/2\""],
    [14.5, "in", { as: "ft" }, "1' 2 1/2\""],
    [14.5, "in", { as: "mm" }, "368.3 mm"],
    [14.5, "in", { as: "ft", style: "decimal" }, "1.2083'"],
    [14.5, "in", { as: "ft", style: "fraction" }, "1 3/16'"],
    [90.5, "mm", { style: "fraction" }, "90 1/2 mm"],
  ])("in another unit: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [90.5, "mm", { label: "letters" }, "90.5 mm"],
    [90.5, "mm", { label: "none" }, "90.5"],
    [5.4375, "in", { label: "letters" }, "5 7/16 in"],
    [5.4375, "in", { label: "none" }, "5 7/16"],
    [5.4375, "in", { label: "letters", style: "decimal" }, "5.438 in"],
    [1.5, "ft", { label: "letters", style: "decimal" }, "1.5 ft"],
    [14.5, "in", { label: "letters", style: "feet-inches" }, "1 ft 2 1/2 in"],
    [2.5, "in", { label: "letters", style: "feet-inches" }, "2 1/2 in"],
  ])("labels: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [5.5, "in", { denominator: 16, reduce: false }, '5 8/16"'],
    [5.5, "in", { denominator: 1 }, '6"'],
    [5.4375, "in", { denominator: 64 }, '5 7/16"'],
    [5.4375, "in", { denominator: 64, reduce: false }, '5 28/64"'],
    [5.4375, "in", { denominator: 10 }, '5 2/5"'],
    [14.5, "in", { style: "feet-inches", denominator: 16, reduce: false }, "1' 2 8/16\""],
    [12, "in", { style: "feet-inches", reduce: false }, "1' 0\""],
    [12.5, "in", { style: "feet-inches" }, "1' 0 1/2\""],
    [1e7 / 3, "in", { denominator: 1_000_000 }, '3333333 333333/1000000"'],
  ])("denominators: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [15.99, "in", {}, '16"'],
    [11 + 63 / 64, "in", { style: "feet-inches" }, "1' 0\""],
    [11 + 63 / 64, "in", { style: "feet-inches", denominator: 64 }, '11 63/64"'],
    [23.99, "in", { style: "feet-inches" }, "2' 0\""],
    [-11.99, "in", { style: "feet-inches" }, "-1' 0\""],
    [99.999, "mm", {}, "100 mm"],
    [99.999, "mm", { trailingZeros: true }, "100.00 mm"],
    [0.999, "in", { style: "decimal", digits: 2 }, '1"'],
    [9.5, "mm", { digits: 0 }, "10 mm"],
  ])("carries: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [0.5, "mm", { digits: 0 }, "1 mm"],
    [-0.5, "mm", { digits: 0 }, "-1 mm"],
    [2.5, "mm", { digits: 0 }, "3 mm"],
    [0.125, "mm", {}, "0.13 mm"],
    [-0.125, "mm", {}, "-0.13 mm"],
    // In binary this is a little less than it looks.
    [1.005, "mm", {}, "1 mm"],
    [1 / 32, "in", {}, '1/16"'],
    [-1 / 32, "in", {}, '-1/16"'],
    [3 / 32, "in", {}, '1/8"'],
  ])("ties go away from zero: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [5.2, "in", { denominator: 8, rounding: "up" }, '5 1/4"'],
    [5.2, "in", { denominator: 8, rounding: "down" }, '5 1/8"'],
    [-5.2, "in", { denominator: 8, rounding: "up" }, '-5 1/8"'],
    [-5.2, "in", { denominator: 8, rounding: "down" }, '-5 1/4"'],
    [11.95, "in", { style: "feet-inches", rounding: "up" }, "1' 0\""],
    [-11.95, "in", { style: "feet-inches", rounding: "down" }, "-1' 0\""],
    [0.001, "mm", { rounding: "up" }, "0.01 mm"],
    [-1234.5, "mm", { decimalMarker: "," }, "-1234,5 mm"],
    [5, "mm", { decimalMarker: ",", digits: 2, trailingZeros: true }, "5,00 mm"],
    [5.4375, "in", { decimalMarker: "," }, '5 7/16"'],
    [-0.001, "mm", { rounding: "up" }, "0 mm"],
    [0.001, "mm", { rounding: "down" }, "0 mm"],
    [-0.001, "mm", { rounding: "down" }, "-0.01 mm"],
    [1e-300, "m", { as: "mm", rounding: "up" }, "0.01 mm"],
    // 76.2 mm is 3 inches, though as a double it is a little more; 0.1 is one tenth, and 0.3 three.
    [76.2, "mm", { as: "in", rounding: "up" }, '3"'],
    [76.2, "mm", { as: "in", rounding: "down" }, '3"'],
    [0.1, "mm", { digits: 1, rounding: "up" }, "0.1 mm"],
    [0.3, "mm", { digits: 1, rounding: "down" }, "0.3 mm"],
  ])("rounds up and down: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [0, "mm", {}, "0 mm"],
    [-0, "mm", {}, "0 mm"],
    [-0, "in", {}, '0"'],
    [-0, "ft", {}, '0"'],
    [-0.001, "mm", {}, "0 mm"],
    [-0.001, "mm", { trailingZeros: true }, "0.00 mm"],
    [-0.01, "in", {}, '0"'],
    [-0.01, "in", { reduce: false }, '0"'],
    [-0.0001, "ft", {}, '0"'],
  ])("never writes -0: %d %s %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [90.5, "mm", { trailingZeros: true }, "90.50 mm"],
    [90, "mm", { trailingZeros: true }, "90.00 mm"],
    [90, "mm", { trailingZeros: true, digits: 0 }, "90 mm"],
    [100, "mm", { digits: 0 }, "100 mm"],
    [100, "mm", { digits: 3 }, "100 mm"],
    [0.05, "mm", { digits: 1, trailingZeros: true }, "0.1 mm"],
    [0.1, "mm", { digits: 20 }, "0.10000000000000000555 mm"],
    [2.5, "in", { digits: 1 }, '2.5"'],
    [90.5, "mm", { as: "in", digits: 2 }, '3.56"'],
    [14.5, "ft", { digits: 1 }, "14.5'"],
    [2.5, "in", { digits: 1, denominator: 8 }, '2 1/2"'],
    [14.5, "ft", { digits: 1, denominator: 8 }, "14' 6\""],
    [14.5, "in", { digits: 1, style: "feet-inches" }, "1' 2 1/2\""],
    [0.5, "mm", { digits: 20 }, "0.5 mm"],
    [1e21, "mm", {}, "1000000000000000000000 mm"],
    [1e23, "in", {}, '99999999999999991611392"'],
  ])("digits: %d %s %j", (...row) => {
    check(row);
  });

  test.each<[unknown, unknown, unknown, string, string, string]>([
    [
      Infinity,
      "mm",
      {},
      "range",
      "value",
      "Expected `value` to be a finite distance (-1e100 to 1e100), got Infinity (number)",
    ],
    ["5", "mm", {}, "type", "value", 'Expected `value` to be a finite distance (-1e100 to 1e100), got "5" (string)'],
    [5, "yd", {}, "unknown", "unit", 'Expected `unit` to be one of "mm", "cm", "m", "in", "ft", got "yd" (string)'],
    [5, "mm", [], "type", "options", "Expected `options` to be an object, got an empty array"],
    [
      5,
      "mm",
      { as: "yd" },
      "unknown",
      "as",
      'Expected `as` to be one of "mm", "cm", "m", "in", "ft", got "yd" (string)',
    ],
    [
      5,
      "mm",
      { style: "long" },
      "unknown",
      "style",
      'Expected `style` to be one of "decimal", "fraction", "feet-inches", got "long" (string)',
    ],
    [5, "mm", { digits: 21 }, "range", "digits", "Expected `digits` to be an integer from 0 to 20, got 21 (number)"],
    [
      5,
      "mm",
      { digits: 0.5 },
      "integer",
      "digits",
      "Expected `digits` to be an integer from 0 to 20, got 0.5 (number)",
    ],
    [5, "in", { digits: -1 }, "range", "digits", "Expected `digits` to be an integer from 0 to 20, got -1 (number)"],
    [
      5,
      "in",
      { denominator: 0 },
      "range",
      "denominator",
      "Expected `denominator` to be an integer from 1 to 1000000, got 0 (number)",
    ],
    [
      5,
      "mm",
      { denominator: "8" },
      "type",
      "denominator",
      'Expected `denominator` to be an integer from 1 to 1000000, got "8" (string)',
    ],
    [5, "in", { reduce: "no" }, "type", "reduce", 'Expected `reduce` to be true or false, got "no" (string)'],
    [
      5,
      "in",
      { trailingZeros: 0 },
      "type",
      "trailingZeros",
      "Expected `trailingZeros` to be true or false, got 0 (number)",
    ],
    [
      5,
      "in",
      { rounding: "even" },
      "unknown",
      "rounding",
      'Expected `rounding` to be one of "nearest", "up", "down", got "even" (string)',
    ],
    [
      5,
      "in",
      { label: "words" },
      "unknown",
      "label",
      'Expected `label` to be one of "sign", "letters", "none", got "words" (string)',
    ],
    [
      5,
      "mm",
      { decimalMarker: ";" },
      "unknown",
      "decimalMarker",
      'Expected `decimalMarker` to be one of ".", ",", got ";" (string)',
    ],
    [5, "in", { label: null }, "type", "label", 'Expected `label` to be one of "sign", "letters", "none", got null'],
    [
      5,
      "ft",
      { label: "none" },
      "conflict",
      "label",
      'Expected `label` to be "sign" or "letters" with the style "feet-inches", got "none" (string)',
    ],
    [
      5,
      "in",
      { style: "feet-inches", as: "in" },
      "conflict",
      "as",
      'Expected `as` to be "ft" with the style "feet-inches", got "in" (string)',
    ],
    [
      5,
      "in",
      { style: "feet-inches", as: "px" },
      "unknown",
      "as",
      'Expected `as` to be one of "mm", "cm", "m", "in", "ft", got "px" (string)',
    ],
  ])("refuses %j %j %j", (value, unit, options, code, path, message) => {
    expect(() => formatLength(value as number, unit as LengthUnit, options as FormatLengthOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }),
    );
  });

  test("ignores options it does not name, and takes `undefined` for not given", () => {
    const options = { rounding: undefined, style: undefined, as: undefined, label: undefined, page: 5 };
    expect(formatLength(5.4375, "in", options as unknown as FormatLengthOptions)).toBe('5 7/16"');
  });

  test("has named styles and labels", () => {
    expectTypeOf<LengthStyle>().toEqualTypeOf<"decimal" | "fraction" | "feet-inches">();
    expectTypeOf<UnitLabel>().toEqualTypeOf<"sign" | "letters" | "none">();
    // @ts-expect-error no such style
    expect(() => formatLength(1, "in", { style: "feet" })).toThrow();
  });
});
