import { convertLength, formatAngle, formatLength, nearestFraction, parseAngle, parseLength } from "miterwright/units";
import { describe, expect, test } from "vitest";
import {
  ANGLE_FACTORS,
  DECIMAL_EQUIVALENTS,
  LENGTH_FACTORS,
  PRINTED_ANGLES,
  PRINTED_DIHEDRALS,
  RULE_OF_REASON,
  YARD_1959,
} from "../published/units.js";

describe("NBS Circular 572, addendum of 1959", () => {
  test("the yard is 0.9144 m and the inch 25.4 mm", () => {
    expect(convertLength(YARD_1959.inchesInYard, "in", "m")).toBe(YARD_1959.yardInMeters);
    expect(convertLength(YARD_1959.feetInYard, "ft", "m")).toBe(YARD_1959.yardInMeters);
    expect(convertLength(1, "in", "mm")).toBe(YARD_1959.inchInMillimeters);
    expect(parseLength("3 ft", "m")).toBe(YARD_1959.yardInMeters);
  });
});

describe("NIST SP 811, appendix B.8", () => {
  test.each(LENGTH_FACTORS)("$count $unit is $meters m", ({ count, unit, meters }) => {
    expect(convertLength(count, unit, "m")).toBe(meters);
    expect(convertLength(meters, "m", unit)).toBe(count);
    expect(parseLength(`${count} ${unit}`, "m")).toBe(meters);
  });

  test.each(ANGLE_FACTORS)("$text is $radians radians", ({ text, radians }) => {
    expect(((parseAngle(text) * Math.PI) / 180).toExponential(6)).toBe(radians);
  });
});

test.each(RULE_OF_REASON)("NIST LC 1137: $inches in is $rounded", ({ inches, digits, rounded, full }) => {
  expect(formatLength(inches, "in", { as: "cm", digits })).toBe(rounded);
  expect(formatLength(inches, "in", { as: "cm" })).toBe(full);
});

describe("Hawkins, Table of Decimal Equivalents", () => {
  test("has all 64 rows", () => {
    expect(DECIMAL_EQUIVALENTS).toHaveLength(64);
    expect(new Set(DECIMAL_EQUIVALENTS.flat()).size).toBe(128);
  });

  test.each(DECIMAL_EQUIVALENTS.map(([fraction, decimal], row) => [fraction, decimal, row + 1] as const))(
    "%s is %s",
    (fraction, decimal, sixtyFourths) => {
      const value = sixtyFourths / 64;
      expect(parseLength(`${fraction}"`, "in")).toBe(value);
      expect(parseLength(decimal, "in")).toBe(value);
      expect(formatLength(value, "in", { style: "decimal", digits: 6, trailingZeros: true, label: "none" })).toBe(
        decimal,
      );
      // The last row is printed as 1/1.
      const printed = fraction === "1/1" ? "1" : fraction;
      expect(formatLength(Number(decimal), "in", { denominator: 64, label: "none" })).toBe(printed);
      expect(nearestFraction(Number(decimal), 64)).toMatchObject({ text: printed, value, error: 0 });
    },
  );
});

describe("printed angles", () => {
  test.each(PRINTED_ANGLES)("Machinery's Handbook: $text", ({ text, tenthsOfMinutes }) => {
    expect(parseAngle(text)).toBe(tenthsOfMinutes / 600);
  });

  test.each(PRINTED_DIHEDRALS)("dihedral of the $solid", (row) => {
    const angle = (Math.acos(-Math.sqrt(row.squaredCosine)) * 180) / Math.PI;
    if ("minutes" in row) {
      expect(Math.abs(parseAngle(row.minutes) - angle)).toBeLessThan(0.5 / 60);
    } else {
      expect(formatAngle(angle, { style: "dms", rounding: "down" })).toBe(row.seconds);
    }
  });
});
