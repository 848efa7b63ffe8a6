import fc from "fast-check";
import { describe, expect, expectTypeOf, test } from "vitest";
import {
  precisePolygon,
  type PreciseMeasure,
  type PrecisePolygon,
  type PrecisePolygonOptions,
} from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, over, PI, root, sine, tangent, text, times, type Fixed } from "./oracle.js";

/** Every length of the regular polygon of a given side by its textbook formula, and the area. */
function polygonBySide(n: number, side: Fixed): Record<PreciseMeasure, Fixed> {
  const half = fix(180) / BigInt(n);
  const apothem = over(side, 2n * tangent(half));
  const circumradius = over(side, 2n * sine(half));
  return {
    side,
    apothem,
    circumradius,
    acrossFlats: n % 2 === 0 ? 2n * apothem : apothem + circumradius,
    acrossCorners: n % 2 === 0 ? 2n * circumradius : 2n * times(circumradius, cosine(half / 2n)),
    perimeter: BigInt(n) * side,
    area: (BigInt(n) * times(side, apothem)) / 2n,
  };
}

const measures: readonly PreciseMeasure[] = [
  "side",
  "apothem",
  "circumradius",
  "acrossFlats",
  "acrossCorners",
  "perimeter",
  "area",
];
const given = (
  sides: number | string,
  measure: PreciseMeasure,
  value: number | string,
  digits?: number,
): PrecisePolygon => precisePolygon({ sides, [measure]: value, digits } as unknown as PrecisePolygonOptions);

describe("published constants", () => {
  // OEIS A002193, square root of 2; value from memory.
  test("a unit square is sqrt(2) across corners", () => {
    const square = precisePolygon({ sides: 4, side: 1, digits: 76 });
    expect(square.acrossCorners).toBe("1.414213562373095048801688724209698078569671875376948073176679737990732478462");
  });

  // OEIS A002194, square root of 3; value from memory.
  test("a unit hexagon is sqrt(3) across flats", () => {
    const hexagon = precisePolygon({ sides: 6, side: 1, digits: 76 });
    expect(hexagon.acrossFlats).toBe("1.732050807568877293527446341505872366942805253810380628055806979451933016909");
  });

  // OEIS A001622, the golden ratio; value from memory.
  test("a unit pentagon is the golden ratio across corners", () => {
    const pentagon = precisePolygon({ sides: 5, side: 1, digits: 73 });
    expect(pentagon.acrossCorners).toBe("1.618033988749894848204586834365638117720309179805762862135448622705260463");
  });

  // Machinery's Handbook, 31st edition, Industrial Press 2020, p. 82: area, and sides of n = 7 in terms of S, R and r.
  test.each([
    ["side", "area", "3.6339"],
    ["circumradius", "area", "2.7364"],
    ["apothem", "area", "3.371"],
    ["side", "circumradius", "1.1524"],
    ["apothem", "circumradius", "1.1099"],
    ["circumradius", "side", "0.8678"],
    ["apothem", "side", "0.9631"],
  ] as const)("a heptagon of %s 1 has the printed %s %s", (measure, asked, printed) => {
    expect(given(7, measure, 1, printed.startsWith("0") ? 4 : 5)[asked]).toBe(printed);
  });
});

describe("precisePolygon", () => {
  test("has the textbook formulas' lengths and area, from any measure", () => {
    const sides = fc.oneof(fc.integer({ min: 3, max: 40 }), fc.integer({ min: 3, max: 1_000_000 }));
    const value = spread(1e-3, 1e6);
    fc.assert(
      fc.property(sides, value, someDigits, fc.constantFrom(...measures), (n, v, digits, measure) => {
        const unit = polygonBySide(n, fix(1));
        const ratio = over(fix(v), unit[measure]);
        const side = measure === "area" ? root(ratio) : ratio;
        const wanted = { ...polygonBySide(n, side), [measure]: fix(v) };
        const got = given(n, measure, v, digits);
        for (const name of measures) expect([name, got[name]]).toEqual([name, text(wanted[name], digits)]);
      }),
      { numRuns: 60 },
    );
  });

  test("has the angles (n - 2) 180/n, 360/n and 180/n", () => {
    for (const n of [3, 4, 5, 6, 7, 8, 9, 12, 17, 100, 999_999, 1_000_000]) {
      const whole = BigInt(n);
      const got = precisePolygon({ sides: n, side: 1 });
      expect(got.turn).toBe(text(fix(360) / whole, 50));
      expect(got.planMiter).toBe(text(fix(180) / whole, 50));
      expect(got.interiorAngle).toBe(text((fix(180) * (whole - 2n)) / whole, 50));
    }
  });

  test("takes a double at its exact value and a text at its own", () => {
    expect(precisePolygon({ sides: 4, side: 0.1, digits: 60 }).perimeter).toBe(
      "0.40000000000000002220446049250313080847263336181640625",
    );
    expect(precisePolygon({ sides: 4, side: "0.1", digits: 60 }).perimeter).toBe("0.4");
    expect(precisePolygon({ sides: "4", side: "1e-1" })).toEqual(precisePolygon({ sides: 4, side: "0.1" }));
    expect(precisePolygon({ sides: 4, side: "+.1E0" })).toEqual(precisePolygon({ sides: 4, side: "0.1" }));
  });

  test("gives the given measure back, rounded to the digits", () => {
    for (const measure of measures) {
      expect(given(7, measure, "12.5")[measure]).toBe("12.5");
      expect(given(7, measure, 1 / 3, 20)[measure]).toBe("0.33333333333333331483");
    }
  });

  test("shifts the decimal point when the size is taken ten thousand times", () => {
    const small = precisePolygon({ sides: 7, side: "3.25" });
    const large = precisePolygon({ sides: 7, side: "32500" });
    expect(large.acrossFlats.replace(".", "")).toBe(small.acrossFlats.replace(".", ""));
    expect(large.area.replace(".", "")).toBe(small.area.replace(".", ""));
    expect(large.turn).toBe(small.turn);
  });

  test("holds from 1e-100 to 1e100", () => {
    const tiny = precisePolygon({ sides: 4, side: "1e-100" });
    expect(tiny.area).toBe(`0.${"0".repeat(199)}1`);
    const huge = precisePolygon({ sides: 4, area: "1e200" });
    expect(huge.side).toBe(`1${"0".repeat(100)}`);
  });

  test("has the circle's area within its 1,000,000 sides, to as many places as it should", () => {
    // The polygon's area is pi (1 - 2/3 (pi/n)^2 + ...): it has pi's first 11 digits and not the 12th.
    const { area } = precisePolygon({ sides: 1_000_000, circumradius: 1 });
    expect(area.slice(0, 12)).toBe(text(PI, 30).slice(0, 12));
    expect(area).toBe(text((fix(1_000_000) * sine(fix(360) / 1_000_000n)) / (2n * fix(1)), 50));
  });

  test("is typed by its exactly one measure", () => {
    expectTypeOf(precisePolygon).returns.toEqualTypeOf<PrecisePolygon>();
    // @ts-expect-error two measures
    expect(() => precisePolygon({ sides: 4, side: 1, area: 1 })).toThrow("got `side` and `area`");
    // @ts-expect-error no measure
    expect(() => precisePolygon({ sides: 4 })).toThrow("got none");
  });
});
