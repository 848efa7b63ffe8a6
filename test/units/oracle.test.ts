import type { Decimal } from "decimal.js";
import fc from "fast-check";
import Fraction from "fraction.js";
import {
  convertLength,
  formatAngle,
  formatLength,
  nearestFraction,
  parseAngle,
  parseLength,
  type LengthUnit,
} from "miterwright/units";
import { describe, expect, test } from "vitest";
import {
  anyAngleFormat,
  anyDenominator,
  anyDistance,
  anyLengthFormat,
  anyRounding,
  anyUnit,
  exactly,
  isNearest,
  MILLIMETERS,
  quotient,
  ratioOf,
  roundExactly,
  stepsPerDegree,
  stepsPerUnit,
} from "../laws/units.js";

/** A length in another unit, exactly; or how many parts of that it is. */
function inUnit(value: Decimal, from: LengthUnit, to: LengthUnit, parts: number = 1): Decimal {
  // Multiplied first, so that what has an end is exact.
  return quotient(value.times(MILLIMETERS[from]).times(parts), MILLIMETERS[to]);
}

describe("against decimals of 1300 digits", () => {
  test("the checker knows a neighbor from the nearest, and a tie", () => {
    expect(isNearest(0.1, quotient(1, 10))).toBe(true);
    expect(isNearest(0.1 + 2 ** -56, quotient(1, 10))).toBe(false);
    expect(isNearest(1, exactly(1).plus(exactly(2 ** -53)))).toBe(true);
    expect(isNearest(1 + 2 ** -52, exactly(1).plus(exactly(2 ** -53)))).toBe(false);
    expect(isNearest(0, exactly(5e-324).times("0.5"))).toBe(true);
    expect(isNearest(-0, exactly(0))).toBe(false);
  });

  test("convertLength rounds once, correctly", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyUnit, (value, from, to) => {
        expect(isNearest(convertLength(value, from, to), inUnit(exactly(value), from, to))).toBe(true);
      }),
    );
  });

  test("parseLength rounds decimals once, correctly", () => {
    const digits = fc.string({ unit: fc.constantFrom(...Array.from("0123456789")), minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(
        digits,
        digits,
        fc.integer({ min: -50, max: 50 }),
        anyUnit,
        anyUnit,
        (whole, decimals, power, from, to) => {
          const number = `${whole}.${decimals}e${power}`;
          expect(isNearest(parseLength(`${number} ${from}`, to), inUnit(quotient(number, 1), from, to))).toBe(true);
          expect(isNearest(parseLength(`-${number}${from}`, to), inUnit(quotient(`-${number}`, 1), from, to))).toBe(
            true,
          );
        },
      ),
    );
  });

  test("parseLength gets ties right, at any number of digits", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2 ** 60, noNaN: true }), fc.constantFrom(-1, 0, 1), (below, side) => {
        // The middle between this double and the next, or a trifle to one side of it.
        const ulp = 2 ** (Math.floor(Math.log2(below)) - 52);
        const middle = exactly(below)
          .plus(exactly(ulp / 2))
          .plus(quotient(side, "1e300"));
        expect(isNearest(parseLength(middle.toFixed(), "mm"), middle)).toBe(true);
      }),
    );
  });

  test("formatLength writes the multiple of the step that its rounding asks for", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyLengthFormat, (value, unit, options) => {
        const steps = stepsPerUnit(options);
        const exact = inUnit(exactly(value), unit, options.as, steps);
        // A value that is the double nearest to a graduation is on it.
        const nearest = roundExactly(exact, "nearest");
        const isOn = isNearest(value, quotient(inUnit(nearest, options.as, unit), steps));
        const expected = isOn ? nearest : roundExactly(exact, options.rounding!);
        const text = formatLength(value, unit, options);
        const written =
          /^(-)?(?:(\d+)(?:'| ft) )?(?:(\d+(?:\.\d+)?)(?![\d/]) ?)?(?:(\d+)\/(\d+))?(?:["']| ?[a-z]+)?$/.exec(text);
        expect(written).not.toBeNull();
        const [, minus, feet = "0", whole = "0", top = "0", bottom = "1"] = written!;
        const perFoot = options.style === "feet-inches" ? 12 : 1;
        const sum = quotient(whole, perFoot).plus(feet).plus(quotient(top, bottom).div(perFoot));
        const difference = sum.times(minus === undefined ? steps : -steps).minus(expected);
        // The sum went through thirds and sevenths of 1300 digits.
        expect(difference.abs().lt("1e-1100")).toBe(true);
        expect(minus === undefined || !expected.isZero()).toBe(true);
      }),
    );
  });

  test("formatAngle writes the multiple of the step that its rounding asks for", () => {
    fc.assert(
      fc.property(anyDistance, anyAngleFormat, (value, options) => {
        const steps = stepsPerDegree(options);
        const exact = exactly(value).times(steps);
        const nearest = roundExactly(exact, "nearest");
        const isOn = isNearest(value, quotient(nearest, steps));
        const expected = isOn ? nearest : roundExactly(exact, options.rounding!);
        const parts = formatAngle(value, options).match(/\d+(\.\d+)?/g)!;
        const sum = parts.reduce((total, part, k) => total.plus(quotient(part, 60 ** k)), quotient(0, 1));
        expect(parts).toHaveLength(options.style === "dms" ? 3 : 1);
        expect(sum.times(steps).minus(expected.abs()).abs().lt("1e-1100")).toBe(true);
        expect(formatAngle(value, options).startsWith("-")).toBe(expected.isNegative() && !expected.isZero());
      }),
    );
  });
});

describe("against fraction.js", () => {
  test("nearestFraction takes the graduation that its rounding asks for", () => {
    fc.assert(
      fc.property(anyDistance, anyDenominator, anyRounding, (value, denominator, rounding) => {
        const exact = new Fraction(...ratioOf(value));
        const scaled = exact.mul(denominator);
        const half = new Fraction(1, 2);
        const nearest = scaled.s < 0n ? scaled.sub(half).ceil() : scaled.add(half).floor();
        const isOn = isNearest(value, quotient(String(nearest.s * nearest.n), denominator));
        const count = isOn || rounding === "nearest" ? nearest : rounding === "up" ? scaled.ceil() : scaled.floor();
        const expected = count.div(denominator);
        const result = nearestFraction(value, denominator, { rounding });
        expect(result.text).toBe(expected.toFraction(true));
        expect([result.whole, result.numerator].every((part) => part === 0 || part < 0 === expected.s < 0n)).toBe(true);
        expect(new Fraction(BigInt(result.whole)).add(result.numerator, result.denominator).equals(expected)).toBe(
          true,
        );
        expect(isNearest(result.value, quotient(String(expected.s * expected.n), String(expected.d)))).toBe(true);
        expect(result.error).toBe(result.value - value);
      }),
    );
  });

  /** A number of inches as people write it, and as a fraction. */
  const inches = fc
    .record({
      feet: fc.nat(1000),
      whole: fc.nat(11),
      denominator: fc.oneof(fc.constantFrom(2, 4, 8, 16, 32, 64), fc.integer({ min: 2, max: 1e9 })),
      share: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
      isNegative: fc.boolean(),
      minus: fc.constantFrom("-", "−", "- "),
      joint: fc.constantFrom(" ", "-", "\u00A0", "  "),
      slash: fc.constantFrom("/", "⁄", " / "),
      foot: fc.constantFrom("'", "′", "’", "ft", " feet", " ft."),
      gap: fc.constantFrom("", " ", "-", " - ", "\u202F"),
      inch: fc.constantFrom('"', "″", "”", "''", " in", " inches", ""),
    })
    .map(({ feet, whole, denominator, share, isNegative, minus, joint, slash, foot, gap, inch }) => {
      const numerator = Math.floor(share * denominator);
      const mixed = `${whole}${joint}${numerator}${slash}${denominator}`;
      const between = foot.endsWith(".") && gap === "" ? " " : gap;
      const text = `${isNegative ? minus : ""}${feet}${foot}${between}${mixed}${inch}`;
      const size = new Fraction(numerator, denominator).add(12 * feet + whole);
      return { text, exact: isNegative ? size.neg() : size };
    });

  test("parseLength reads feet and inches", () => {
    fc.assert(
      fc.property(inches, anyUnit, ({ text, exact }, unit) => {
        const expected = inUnit(quotient(String(exact.s * exact.n), String(exact.d)), "in", unit);
        expect(isNearest(parseLength(text, unit), expected), text).toBe(true);
      }),
    );
  });

  test("parseAngle reads degrees, minutes and seconds", () => {
    const part = fc.nat(59);
    fc.assert(
      fc.property(
        fc.nat(720),
        part,
        part,
        fc.nat(99_999),
        fc.boolean(),
        (degrees, minutes, seconds, decimals, isNegative) => {
          const text = `${isNegative ? "-" : ""}${degrees}°${minutes}'${seconds}.${decimals}"`;
          const exact = new Fraction(`${seconds}.${decimals}`).div(60).add(minutes).div(60).add(degrees);
          const sign = isNegative ? -1n : 1n;
          expect(isNearest(parseAngle(text), quotient(String(sign * exact.n), String(exact.d))), text).toBe(true);
        },
      ),
    );
  });
});
