import { onePolygonMeasure, regularPolygon } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { atan2Deg, tanDeg } from "../../src/core/degrees.js";
import { BRACES, HODGSON_EXACT, POCKETBOOK_ANGLES, RULES_OF_THUMB, TWELVE_INCH } from "../published/framing-square.js";
import { ANGLES, AREA_TABLES, HANDBOOK_COLUMNS, HANDBOOK_ROWS } from "../published/polygons.js";

/** Error of a printed number in units of its last printed place. */
function placesOff(printed: string, value: number): number {
  const decimals = printed.split(".")[1]?.length ?? 0;
  return Math.abs(Number(printed) - value) * 10 ** decimals;
}

/** Tangent of the plan miter, as a polygon shows it: half a side over the apothem. */
const slantOf = (sides: number): number => regularPolygon({ sides, apothem: 1 }).side / 2;

describe("Machinery's Handbook, page 82", () => {
  test.each(HANDBOOK_ROWS)("%s sides", (sides, printed) => {
    expect(printed).toHaveLength(HANDBOOK_COLUMNS.length);
    HANDBOOK_COLUMNS.forEach(([measure, unit], column) => {
      const value = regularPolygon({ sides, ...onePolygonMeasure(unit, 1) })[measure];
      // Rounded to the nearest, so off by half a unit at most.
      expect(placesOff(printed[column]!, value), `${measure} for ${unit} 1`).toBeLessThanOrEqual(0.5);
    });
  });

  test("135 entries", () => {
    expect(HANDBOOK_ROWS.flatMap(([, printed]) => printed)).toHaveLength(135);
  });
});

describe("tables of areas", () => {
  for (const { source, rows, misprints } of AREA_TABLES) {
    describe(source, () => {
      test.each(rows)("%s sides: %s", (sides, printed) => {
        const { area } = regularPolygon({ sides, side: 1 });
        const meant = misprints?.[sides];
        if (meant !== undefined) expect(placesOff(printed, area)).toBeGreaterThan(1);
        expect(placesOff(meant ?? printed, area)).toBeLessThanOrEqual(1);
      });
    });
  }
});

test.each(ANGLES)("angles of %s sides", (sides, interior, exterior, miter) => {
  const { interiorAngle, turn, planMiter } = regularPolygon({ sides, side: 1 });
  expect(placesOff(interior, interiorAngle)).toBeLessThanOrEqual(0.5);
  expect(placesOff(exterior, turn)).toBeLessThanOrEqual(0.5);
  expect(placesOff(miter, planMiter)).toBeLessThanOrEqual(0.5);
  expect(interiorAngle + turn).toBeCloseTo(180, 12);
});

describe("the steel square", () => {
  test.each(RULES_OF_THUMB)("$sides sides, $first and $second: $error degrees off ($source)", (figure) => {
    const { planMiter } = regularPolygon({ sides: figure.sides, side: 1 });
    const meant = figure.angle === "miter" ? planMiter : 90 - planMiter;
    expect(atan2Deg(figure.second, figure.first) - meant).toBeCloseTo(figure.error, 3);
  });

  test("the rule of 22 1/2 and 9 for a nonagon is the one that is no good", () => {
    const bad = RULES_OF_THUMB.filter(({ error }) => Math.abs(error) > 1);
    expect(bad.map(({ sides, first, second }) => [sides, first, second])).toEqual([[9, 22.5, 9]]);
  });

  test.each(HODGSON_EXACT)("%s sides: %s inches against 12", (sides, printed) => {
    expect(Math.abs(12 * slantOf(sides) - printed)).toBeLessThan(1 / 64);
  });

  test.each(TWELVE_INCH)(
    "$sides sides: $printed inches against 12 (value from memory)",
    ({ sides, printed, coarse }) => {
      const off = printed - 12 * slantOf(sides);
      if (coarse === undefined) expect(Math.abs(off)).toBeLessThan(1 / 32);
      else expect(off).toBeCloseTo(coarse, 4);
    },
  );

  test.each(POCKETBOOK_ANGLES)(
    "$degrees degrees: $printed inches against $base",
    ({ degrees, base, printed, coarse }) => {
      const off = printed - base * tanDeg(degrees);
      if (coarse === undefined) expect(Math.abs(off)).toBeLessThan(1 / 64);
      else expect(off).toBeCloseTo(coarse, 4);
      // The same from a polygon that has this plan miter.
      const sides = 180 / degrees;
      if (Number.isInteger(sides)) expect(base * slantOf(sides)).toBeCloseTo(base * tanDeg(degrees), 13);
    },
  );

  test.each(BRACES)("brace between legs of $legs: $printed ($source)", ({ legs, printed }) => {
    expect(placesOff(printed, regularPolygon({ sides: 4, side: legs }).acrossCorners)).toBeLessThanOrEqual(1);
  });
});
