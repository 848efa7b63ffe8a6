import { type AngleStyle, formatAngle, type FormatAngleOptions } from "miterwright/units";
import { describe, expect, expectTypeOf, test } from "vitest";

type Row = readonly [value: number, options: FormatAngleOptions, text: string];

const check = ([value, options, text]: Row): void => {
  expect(formatAngle(value, options)).toBe(text);
};

describe("formatAngle", () => {
  test.each<Row>([
    [22.5, {}, "22.5°"],
    [22.505, {}, "22.5°"],
    [22.515, {}, "22.52°"],
    [180 / 7, {}, "25.71°"],
    [-7.125, { digits: 1 }, "-7.1°"],
    [45, { trailingZeros: true }, "45.00°"],
    [45, { digits: 0 }, "45°"],
    [22.5, { label: "letters" }, "22.5 deg"],
    [22.5, { label: "none" }, "22.5"],
    [22.5, { digits: 0 }, "23°"],
    [-22.5, { digits: 0 }, "-23°"],
    [22.1, { digits: 0, rounding: "up" }, "23°"],
    [-22.1, { digits: 0, rounding: "up" }, "-22°"],
    [22.9, { digits: 0, rounding: "down" }, "22°"],
    [-22.9, { digits: 0, rounding: "down" }, "-23°"],
    [22.1, { digits: 1, rounding: "up" }, "22.1°"],
    [99.999, {}, "100°"],
  ])("decimal: %d %j", (...row) => {
    check(row);
  });

  test.each<Row>([
    [22.5, {}, "22°30'00\""],
    [22.505, {}, "22°30'18\""],
    [-22.505, {}, "-22°30'18\""],
    [0.5, {}, "0°30'00\""],
    [1 / 3600, {}, "0°00'01\""],
    [5.085, {}, "5°05'06\""],
    [180 / 7, {}, "25°42'51\""],
    [180 / 7, { digits: 3 }, "25°42'51.429\""],
    [22.5, { digits: 1, trailingZeros: true }, "22°30'00.0\""],
    [22.5 + 5.5 / 3600, { digits: 4 }, "22°30'05.5\""],
    [22.505, { label: "letters" }, "22 deg 30 min 18 sec"],
    [-22.505, { label: "letters" }, "-22 deg 30 min 18 sec"],
    [1e6, {}, "1000000°00'00\""],
  ])("degrees, minutes and seconds: %d %j", (value, options, text) => {
    check([value, { style: "dms", ...options }, text]);
  });

  test.each<Row>([
    [22 + 59.99 / 3600, {}, "22°01'00\""],
    [22 + 59 / 60 + 59.99 / 3600, {}, "23°00'00\""],
    [-29.99999, {}, "-30°00'00\""],
    [22 + 59.99 / 3600, { digits: 2 }, "22°00'59.99\""],
    [22 + 59.99 / 3600, { digits: 1 }, "22°01'00\""],
    [22 + 59.99 / 3600, { rounding: "down" }, "22°00'59\""],
    [-22 - 59.01 / 3600, { rounding: "down" }, "-22°01'00\""],
    [22 + 59.01 / 3600, { rounding: "up" }, "22°01'00\""],
    // 112.5 seconds: a tie.
    [1 / 32, {}, "0°01'53\""],
    [-1 / 32, {}, "-0°01'53\""],
  ])("carries: %d %j", (value, options, text) => {
    check([value, { style: "dms", ...options }, text]);
  });

  test.each<Row>([
    [-0, {}, "0°"],
    [-0.001, {}, "0°"],
    [-0, { style: "dms" }, "0°00'00\""],
    [-0.0001, { style: "dms" }, "0°00'00\""],
  ])("never writes -0: %d %j", (...row) => {
    check(row);
  });

  test.each<[unknown, unknown, string, string, string]>([
    [Number.NaN, {}, "range", "value", "Expected `value` to be degrees from -1e100 to 1e100, got NaN (number)"],
    ["5", {}, "type", "value", 'Expected `value` to be degrees from -1e100 to 1e100, got "5" (string)'],
    [5, "dms", "type", "options", 'Expected `options` to be an object, got "dms" (string)'],
    [
      5,
      { style: "radians" },
      "unknown",
      "style",
      'Expected `style` to be one of "decimal", "dms", got "radians" (string)',
    ],
    [5, { digits: 1.5 }, "integer", "digits", "Expected `digits` to be an integer from 0 to 20, got 1.5 (number)"],
    [5, { trailingZeros: 1 }, "type", "trailingZeros", "Expected `trailingZeros` to be true or false, got 1 (number)"],
    [
      5,
      { rounding: "off" },
      "unknown",
      "rounding",
      'Expected `rounding` to be one of "nearest", "up", "down", got "off" (string)',
    ],
    [
      5,
      { label: "word" },
      "unknown",
      "label",
      'Expected `label` to be one of "sign", "letters", "none", got "word" (string)',
    ],
    [
      5,
      { style: "dms", label: "none" },
      "conflict",
      "label",
      'Expected `label` to be "sign" or "letters" with the style "dms", got "none" (string)',
    ],
  ])("refuses %j %j", (value, options, code, path, message) => {
    expect(() => formatAngle(value as number, options as FormatAngleOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }),
    );
  });

  test("has named styles", () => {
    expectTypeOf<AngleStyle>().toEqualTypeOf<"decimal" | "dms">();
    // @ts-expect-error no such style
    expect(() => formatAngle(1, { style: "rad" })).toThrow();
  });
});
