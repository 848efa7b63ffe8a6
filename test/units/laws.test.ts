import fc from "fast-check";
import {
  convertLength,
  formatAngle,
  formatLength,
  nearestFraction,
  parseAngle,
  parseLength,
  type Rounding,
  tryParseAngle,
  tryParseLength,
} from "miterwright/units";
import { describe, expect, test } from "vitest";
import {
  anyAngleFormat,
  anyDenominator,
  anyDistance,
  anyLengthFormat,
  anyRounding,
  anyUnit,
  stepsPerDegree,
  stepsPerUnit,
} from "../laws/units.js";

/** The rounding that does to -x what another does to x. */
const MIRRORED: Readonly<Record<Rounding, Rounding>> = { nearest: "nearest", up: "down", down: "up" };

/** A text with its sign changed. */
function negated(text: string): string {
  if (text.startsWith("-")) return text.slice(1);
  return /[1-9]/.test(text) ? `-${text}` : text;
}

describe("what is written can be read", () => {
  test("lengths, to the last digit or part", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyLengthFormat, (value, unit, options) => {
        // Larger ones can be beyond 1e100 in a smaller unit.
        fc.pre(Math.abs(value) < 1e90);
        const text = formatLength(value, unit, options);
        const read = parseLength(text, options.as);
        // Rounding what is rounded changes nothing, whichever way it goes, unless the text has more digits than a double.
        if (Math.abs(read) * stepsPerUnit(options) < 2 ** 52)
          expect(formatLength(read, options.as, options)).toBe(text);
        if (options.style === "fraction" && unit === options.as) {
          expect(read).toBe(nearestFraction(value, options.denominator!, options).value);
        }
        if (options.label !== "none") {
          // The unit that is written counts, not the one that is asked for.
          const converted = convertLength(read, options.as, "mm");
          expect(Math.abs(parseLength(text, "mm") - converted)).toBeLessThanOrEqual(2 ** -51 * Math.abs(converted));
        }
      }),
    );
  });

  test("lengths and angles with a comma for a point, unless three decimals after it could be thousands", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyLengthFormat, anyAngleFormat, (value, unit, lengths, angles) => {
        fc.pre(Math.abs(value) < 1e90);
        const texts = [formatLength(value, unit, lengths), formatAngle(value, angles)];
        const commas = [
          formatLength(value, unit, { ...lengths, decimalMarker: "," }),
          formatAngle(value, { ...angles, decimalMarker: "," }),
        ];
        expect(commas).toEqual(texts.map((text) => text.replace(".", ",")));
        const shown = lengths.as;
        const read = [
          commas.map((text, index) => (index === 0 ? tryParseLength(text, shown) : tryParseAngle(text))),
          texts.map((text, index) => (index === 0 ? tryParseLength(text, shown) : tryParseAngle(text))),
        ];
        read[0]!.forEach((one, index) => {
          const isAsked = /(?<!\d)[1-9]\d{0,2},\d{3}(?!\d)/.test(commas[index]!);
          if (isAsked) expect(one.ok).toBe(false);
          else expect(one).toEqual(read[1]![index]);
        });
      }),
    );
  });

  test("the largest lengths, in their own unit", () => {
    expect(formatLength(1e100, "ft", { as: "mm" })).toMatch(/^3048\d{99}\.2 mm$/);
    expect(parseLength(formatLength(1e100, "ft", { as: "mm" }), "ft")).toBe(1e100);
    expect(parseLength(formatLength(-1e100, "m", { as: "ft" }), "m")).toBe(-1e100);
  });

  test("lengths with enough digits, bit for bit", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), anyUnit, (value, unit) => {
        fc.pre(value === 0 || Math.abs(value) > 0.001);
        expect(parseLength(formatLength(value, unit, { style: "decimal", digits: 20 }), unit)).toBe(value + 0);
        expect(parseLength(String(value), unit)).toBe(value + 0);
      }),
    );
  });

  test("fractions", () => {
    fc.assert(
      fc.property(anyDistance, anyDenominator, anyRounding, fc.boolean(), (value, denominator, rounding, reduce) => {
        const { text, value: rounded } = nearestFraction(value, denominator, { rounding, reduce });
        expect(parseLength(text, "in")).toBe(rounded);
        expect(nearestFraction(rounded, denominator, { rounding, reduce })).toMatchObject({
          text,
          value: rounded,
          error: 0,
        });
      }),
    );
  });

  test("angles", () => {
    fc.assert(
      fc.property(anyDistance, anyAngleFormat, (value, options) => {
        const text = formatAngle(value, options);
        fc.pre(Math.abs(value) * stepsPerDegree(options) < 2 ** 52);
        expect(formatAngle(parseAngle(text), options)).toBe(text);
      }),
    );
  });
});

describe("a change of sign changes signs alone", () => {
  test("of lengths and angles that are written", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyLengthFormat, anyAngleFormat, (value, unit, format, angle) => {
        const mirrored = { ...format, rounding: MIRRORED[format.rounding!] };
        expect(formatLength(-value, unit, mirrored)).toBe(negated(formatLength(value, unit, format)));
        expect(formatAngle(-value, { ...angle, rounding: MIRRORED[angle.rounding!] })).toBe(
          negated(formatAngle(value, angle)),
        );
      }),
    );
  });

  test("of fractions", () => {
    fc.assert(
      fc.property(anyDistance, anyDenominator, anyRounding, (value, denominator, rounding) => {
        const result = nearestFraction(value, denominator, { rounding });
        expect(nearestFraction(-value, denominator, { rounding: MIRRORED[rounding] })).toEqual({
          whole: -result.whole + 0,
          numerator: -result.numerator + 0,
          denominator: result.denominator,
          value: -result.value + 0,
          error: -result.error + 0,
          text: negated(result.text),
        });
      }),
    );
  });

  test("of conversions, and of text", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyUnit, (value, from, to) => {
        expect(convertLength(-value, from, to)).toBe(-convertLength(value, from, to) + 0);
        fc.pre(Math.abs(value) < 1e90);
        const text = formatLength(Math.abs(value), from);
        expect(parseLength(`-${text}`, to)).toBe(-parseLength(text, to) + 0);
      }),
    );
  });
});

describe("scale", () => {
  test("a power of two scales conversions and fractions exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }).filter((value) => value === 0 || Math.abs(value) > 1e-200),
        fc.integer({ min: -20, max: 20 }),
        anyUnit,
        anyUnit,
        (value, power, from, to) => {
          const scaled = convertLength(value * 2 ** power, from, to);
          expect(scaled).toBe(convertLength(value, from, to) * 2 ** power + 0);
          const halved = nearestFraction(value, 32);
          expect(nearestFraction(value * 2, 16).value).toBe(halved.value * 2);
        },
      ),
    );
  });

  test("a power of ten moves the point of a text", () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 1n, max: 10n ** 30n }),
        fc.integer({ min: 1, max: 30 }),
        anyUnit,
        (digits, places, unit) => {
          const text = digits.toString().padStart(places + 1, "0");
          const pointed = `${text.slice(0, -places)}.${text.slice(-places)}`;
          expect(parseLength(pointed, unit)).toBe(parseLength(`${digits}e-${places}`, unit));
          expect(parseLength(`${pointed}m`, unit)).toBe(parseLength(`${pointed}e3mm`, unit));
          expect(parseLength(`${pointed}m`, unit)).toBe(parseLength(`${pointed}e2cm`, unit));
        },
      ),
    );
  });

  test("a unit that holds a whole number of another gives the same length", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 0, max: 11 }), anyUnit, (feet, inches, unit) => {
        const together = parseLength(`${feet}' ${inches}"`, unit);
        expect(together).toBe(parseLength(`${12 * feet + inches}"`, unit));
        expect(together).toBe(convertLength(12 * feet + inches, "in", unit));
      }),
    );
  });
});

describe("conversions", () => {
  test("there and back are off by no more than each of the two roundings", () => {
    fc.assert(
      fc.property(anyDistance, anyUnit, anyUnit, (value, from, to) => {
        fc.pre(Math.abs(value) < 1e90 && (value === 0 || Math.abs(value) > 1e-290));
        const back = convertLength(convertLength(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(2 * Number.EPSILON * Math.abs(value));
      }),
    );
  });

  test("keep the order of lengths", () => {
    fc.assert(
      fc.property(anyDistance, anyDistance, anyUnit, anyUnit, (a, b, from, to) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(convertLength(low, from, to)).toBeLessThanOrEqual(convertLength(high, from, to));
      }),
    );
  });
});

describe("fractions", () => {
  test("are within half a part of the number, or a part when rounded up or down", () => {
    fc.assert(
      fc.property(anyDistance, anyDenominator, (value, denominator) => {
        const slack = 1 + 1e-12;
        const room = 2 ** -50 * Math.abs(value);
        const [nearest, up, down] = (["nearest", "up", "down"] as const).map(
          (rounding) => nearestFraction(value, denominator, { rounding }).error,
        ) as [number, number, number];
        expect(Math.abs(nearest)).toBeLessThanOrEqual((0.5 / denominator) * slack + room);
        expect(up).toBeGreaterThanOrEqual(0);
        expect(up).toBeLessThanOrEqual((1 / denominator) * slack + room);
        expect(down).toBeLessThanOrEqual(0);
        expect(down).toBeGreaterThanOrEqual(-(1 / denominator) * slack - room);
      }),
    );
  });
});

describe("any text at all", () => {
  const character = fc.constantFrom(...Array.from("0123456789 -−./,'\"°½⅞⁷⁄₁mincftedgs\u00A0´x"));
  const text = fc.oneof(fc.string({ unit: character, maxLength: 20 }), fc.string({ unit: "binary", maxLength: 20 }));

  test("is a finite number, or an error that points into it", () => {
    fc.assert(
      fc.property(text, anyUnit, (typed, unit) => {
        for (const outcome of [tryParseLength(typed, unit), tryParseAngle(typed)]) {
          if (outcome.ok) {
            const size = Math.abs(outcome.value);
            expect(size === 0 || (size >= 1e-100 && size <= 1e100)).toBe(true);
            expect(Object.is(outcome.value, -0)).toBe(false);
          } else {
            expect(outcome.error.position).toBeGreaterThanOrEqual(0);
            expect(outcome.error.position).toBeLessThanOrEqual(typed.length);
            expect(["syntax", "range", "missing"]).toContain(outcome.error.code);
          }
        }
      }),
      { numRuns: 2000 },
    );
  });

  test("means the same with spaces around it", () => {
    fc.assert(
      fc.property(text, (typed) => {
        const [bare, spaced] = [tryParseLength(typed, "in"), tryParseLength(` \u2009${typed}\n `, "in")];
        expect(spaced.ok).toBe(bare.ok);
        if (bare.ok && spaced.ok) expect(spaced.value).toBe(bare.value);
      }),
      { numRuns: 1000 },
    );
  });
});
