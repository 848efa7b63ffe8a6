import fc from "fast-check";
import { offsetPolygon, polygonCorners, regularPolygon } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { anySides, depthsInside, fewSides, shopLength } from "../laws/polygon.js";

describe("offsetPolygon", () => {
  test("moves every side outward by the distance", () => {
    fc.assert(
      fc.property(fewSides, shopLength, fc.double({ min: 0, max: 500, noNaN: true }), (sides, apothem, distance) => {
        const outer = polygonCorners(offsetPolygon({ sides, apothem }, distance));
        for (const corner of polygonCorners({ sides, apothem })) {
          const depths = depthsInside(outer, corner).sort((a, b) => a - b);
          expect(depths[0]! - distance).toBeCloseTo(0, 8);
          expect(depths[1]! - distance).toBeCloseTo(0, 8);
        }
      }),
    );
  });

  test("by nothing is the polygon itself", () => {
    const polygon = regularPolygon({ sides: 7, apothem: 12.3 });
    expect(offsetPolygon(polygon, 0)).toEqual(polygon);
    expect(offsetPolygon(polygon, -0)).toEqual(polygon);
  });

  test("out and back in again is where it was, exactly on whole numbers", () => {
    fc.assert(
      fc.property(
        anySides,
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (sides, apothem, distance) => {
          const out = offsetPolygon({ sides, apothem }, distance);
          expect(out.apothem).toBe(apothem + distance);
          expect(offsetPolygon(out, -distance)).toEqual(regularPolygon({ sides, apothem }));
        },
      ),
    );
  });

  test("takes every polygon that regularPolygon makes, and one read back from JSON", () => {
    for (const polygon of [
      regularPolygon({ sides: 1_000_000, side: 1e100 }),
      regularPolygon({ sides: 1_000_000, perimeter: 1e-100 }),
      regularPolygon({ sides: 3, area: 1e-200 }),
      regularPolygon({ sides: 3, acrossCorners: 1e-100 }),
      regularPolygon({ sides: 1_000_000, area: 1e200 }),
    ]) {
      expect(offsetPolygon(JSON.parse(JSON.stringify(polygon)) as typeof polygon, 0).apothem).toBe(polygon.apothem);
    }
  });
});
