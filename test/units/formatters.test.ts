import { isInputError } from "miterwright/errors";
import { formatters, parseLength, type FormattersOptions } from "miterwright/units";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loose } from "../formats.js";

function refusal(options: unknown): string {
  try {
    formatters(options as FormattersOptions);
  } catch (error) {
    if (isInputError(error)) return error.message;
    throw error;
  }
  return "";
}

describe("formatters", () => {
  test("write millimeters to a tenth, and inches to 1/32 in fractions, where nothing else is asked for", () => {
    const { length, small, angle, smallAngle } = formatters({ unit: "mm" });
    expect([length(191.26), small(0.256), angle(16.6017897), smallAngle(0.00234)].map(loose)).toEqual([
      "191.3 mm",
      "0.26 mm",
      "16.6°",
      "0.002°",
    ]);
    const inches = formatters({ unit: "in" });
    expect([inches.length(92.71875), inches.small(0.0104)].map(loose)).toEqual(['92 23/32"', '0.01"']);
    expect(loose(formatters({ unit: "ft" }).length(1.1875))).toBe(`1' 2 1/4"`);
  });

  test("take a denominator in every unit, or decimals", () => {
    const written = (options: FormattersOptions, value: number): string => loose(formatters(options).length(value));
    expect(written({ unit: "in", denominator: 8 }, 5.3)).toBe('5 1/4"');
    expect(written({ unit: "mm", denominator: 2 }, 191.3)).toBe("191.5 mm");
    expect(written({ unit: "cm", denominator: 20 }, 19.13)).toBe("19.15 cm");
    expect(written({ unit: "in", digits: 2 }, 5.4375)).toBe('5.44"');
    expect(written({ unit: "mm", digits: 0 }, 191.5)).toBe("192 mm");
  });

  test("write the decimal marker of the reader in every text", () => {
    const { length, small, angle, smallAngle, mass, force, percent, temperature, area, number, money } = formatters({
      unit: "mm",
      decimalMarker: ",",
    });
    const texts = [
      length(1.5),
      small(0.25),
      angle(22.5),
      smallAngle(0.3),
      mass(1.5),
      force(2.5),
      percent(6.5),
      temperature(21.5),
      area(2.25),
      number(1.5),
      money(3.5),
    ];
    expect(texts.map(loose)).toEqual([
      "1,5 mm",
      "0,25 mm",
      "22,5°",
      "0,3°",
      "1,5 kg",
      "2,5 N",
      "6,5 %",
      "21,5 °C",
      "2,25 mm²",
      "1,5",
      "3,50",
    ]);
  });

  test("write pounds in inches, unless the reader wants none, and money as the caller does", () => {
    // A pound is 0.45359237 kg and a pound-force 4.4482216152605 N, exactly: Federal Register, July 1, 1959.
    const { mass, force } = formatters({ unit: "in" });
    expect([mass(0.45359237), force(44.482216152605)].map(loose)).toEqual(["1 lb", "10 lbf"]);
    expect(loose(formatters({ unit: "in", pounds: false }).mass(2.345))).toBe("2.35 kg");
    expect(loose(formatters({ unit: "mm", pounds: true }).mass(10))).toBe("22 lb");
    expect(formatters({ unit: "mm", money: (amount) => `$${amount.toFixed(2)}` }).money(3)).toBe("$3.00");
    expect(formatters({ unit: "mm" }).money(1234567890123)).toBe("1.23457e+12");
  });

  test("write temperatures in degrees Celsius, areas in the square of the unit, and numbers without one", () => {
    const written = (unit: FormattersOptions["unit"]): string[] => {
      const { temperature, area, number } = formatters({ unit });
      return [temperature(-17.777), area(123456), area(0.0123456), number(1.23456)].map(loose);
    };
    expect(written("mm")).toEqual(["-17.8 °C", "123500 mm²", "0.01235 mm²", "1.23"]);
    expect(written("in")).toEqual(["-17.8 °C", "123500 in²", "0.01235 in²", "1.23"]);
    const { temperature, area, number, percent } = formatters({ unit: "cm" });
    expect([temperature(-0), area(-0), number(-0), percent(-0)].map(loose)).toEqual(["0 °C", "0 cm²", "0", "0 %"]);
    expect(number(12)).toBe("12");
  });

  test("never let a text break, and lengths can be read back", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("mm" as const, "cm" as const, "in" as const, "ft" as const),
        fc.integer({ min: 1, max: 64 }),
        fc.double({ min: 0, max: 5000, noNaN: true }),
        (unit, denominator, value) => {
          const text = formatters({ unit, denominator }).length(value);
          expect(text).not.toMatch(/ /);
          expect(Math.abs(parseLength(loose(text), unit) - value)).toBeLessThanOrEqual(0.5 / denominator + 0.006);
        },
      ),
    );
  });

  test("refuse what is no number, and options that are not sound", () => {
    const writers: readonly ((value: number) => string)[] = Object.values(formatters({ unit: "mm" }));
    for (const write of writers) {
      expect(() => write(NaN)).toThrow(RangeError);
      expect(() => write(Infinity)).toThrow(RangeError);
      expect(() => write("5" as never)).toThrow(RangeError);
    }
    expect(refusal({ unit: "yd" })).toContain("Expected `unit` to be one of");
    expect(refusal({ unit: "mm", denominater: 2 })).toContain("did you mean `denominator`?");
    expect(refusal({ unit: "mm", denominator: 2, digits: 1 })).toBe(
      "Expected exactly one of `denominator`, `digits`, got `denominator` and `digits`",
    );
    expect(refusal({ unit: "mm", digits: 7 })).toBe("Expected `digits` to be an integer from 0 to 6, got 7 (number)");
    expect(refusal({ unit: "mm", decimalMarker: ";" })).toContain('Expected `decimalMarker` to be one of ".", ","');
    expect(refusal({ unit: "mm", money: "$" })).toBe(
      'Expected `money` to be a function that writes an amount of money, got "$" (string)',
    );
  });
});
