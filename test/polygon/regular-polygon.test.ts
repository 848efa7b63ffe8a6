import fc from "fast-check";
import { onePolygonMeasure, POLYGON_MEASURES, polygonCorners, regularPolygon } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import {
  anyLength,
  anyMeasure,
  anySides,
  areaInside,
  faultyNumbers,
  fewSides,
  shopLength,
  sideLengths,
  turnsAt,
} from "../laws/polygon.js";

describe("regularPolygon", () => {
  test("a square, from every measure, is exact", () => {
    const square = { sides: 4, side: 10, apothem: 5, acrossFlats: 10, perimeter: 40, area: 100 };
    for (const measure of ["side", "apothem", "acrossFlats", "perimeter", "area"] as const) {
      expect(regularPolygon({ sides: 4, ...onePolygonMeasure(measure, square[measure]) })).toMatchObject(square);
    }
  });

  test("a hexagon's circumradius is its side, a triangle's is twice its apothem, to the bit", () => {
    fc.assert(
      fc.property(anyLength, (length) => {
        expect(regularPolygon({ sides: 6, side: length }).circumradius).toBe(length);
        expect(regularPolygon({ sides: 6, circumradius: length }).side).toBe(length);
        expect(regularPolygon({ sides: 3, circumradius: length }).apothem).toBe(length / 2);
        expect(regularPolygon({ sides: 3, side: length }).acrossCorners).toBe(length);
      }),
    );
  });

  test("angles of the polygons people make", () => {
    const angles = (sides: number): number[] => {
      const { interiorAngle, turn, planMiter } = regularPolygon({ sides, side: 1 });
      return [interiorAngle, turn, planMiter];
    };
    expect(angles(3)).toEqual([60, 120, 60]);
    expect(angles(5)).toEqual([108, 72, 36]);
    expect(angles(8)).toEqual([135, 45, 22.5]);
    expect(angles(1_000_000)).toEqual([179.99964, 0.00036, 0.00018]);
  });

  test("the given measure comes back bit for bit", () => {
    fc.assert(
      fc.property(anySides, anyMeasure, anyLength, (sides, measure, length) => {
        const value = measure === "area" ? length * length : length;
        expect(regularPolygon({ sides, ...onePolygonMeasure(measure, value) })[measure]).toBe(value);
      }),
    );
  });

  test("every measure leads back to every other", () => {
    fc.assert(
      fc.property(anySides, shopLength, (sides, side) => {
        const polygon = regularPolygon({ sides, side });
        for (const given of POLYGON_MEASURES) {
          const again = regularPolygon({ sides, ...onePolygonMeasure(given, polygon[given]) });
          for (const measure of POLYGON_MEASURES) {
            expect(Math.abs(again[measure] / polygon[measure] - 1), `${measure} from ${given}`).toBeLessThan(3e-15);
          }
        }
      }),
    );
  });

  test("the sides, put end to end with the turns between them, close round the apothem, perimeter and area", () => {
    fc.assert(
      fc.property(fewSides, shopLength, (sides, side) => {
        const polygon = regularPolygon({ sides, side });
        let [x, y, heading] = [-side / 2, -polygon.apothem, 0];
        const walked = Array.from({ length: sides }, () => {
          const from = { x, y };
          x += side * Math.cos((heading * Math.PI) / 180);
          y += side * Math.sin((heading * Math.PI) / 180);
          heading += polygon.turn;
          return from;
        });
        const near = side * 1e-12;
        expect(Math.hypot(x - walked[0]!.x, y - walked[0]!.y)).toBeLessThan(near);
        expect(Math.abs(heading - 360)).toBeLessThan(1e-9);
        for (const corner of walked) {
          expect(Math.abs(Math.hypot(corner.x, corner.y) - polygon.circumradius)).toBeLessThan(near);
        }
        expect(areaInside(walked) / polygon.area).toBeCloseTo(1, 11);
        expect(polygonCorners(polygon)).toHaveLength(sides);
        polygonCorners(polygon).forEach((corner, k) => {
          expect(Math.hypot(corner.x - walked[k]!.x, corner.y - walked[k]!.y)).toBeLessThan(near);
        });
      }),
    );
  });

  test("across flats and across corners are the narrowest and the widest a caliper finds", () => {
    for (let sides = 3; sides <= 17; sides++) {
      const polygon = regularPolygon({ sides, side: 1 });
      const corners = polygonCorners(polygon);
      const widths = Array.from({ length: 7200 }, (_, k) => {
        const angle = (k * Math.PI) / 7200;
        const heights = corners.map(({ x, y }) => x * Math.cos(angle) + y * Math.sin(angle));
        return Math.max(...heights) - Math.min(...heights);
      });
      expect(Math.min(...widths) / polygon.acrossFlats, `${sides} sides`).toBeCloseTo(1, 3);
      expect(Math.min(...widths)).toBeGreaterThan(polygon.acrossFlats * (1 - 1e-12));
      expect(Math.max(...widths) / polygon.acrossCorners, `${sides} sides`).toBeCloseTo(1, 6);
      expect(Math.max(...widths)).toBeLessThan(polygon.acrossCorners * (1 + 1e-12));
    }
  });

  test("turns sum to a full one, interior angles to (n - 2) half ones", () => {
    fc.assert(
      fc.property(fewSides, shopLength, (sides, side) => {
        const polygon = regularPolygon({ sides, side });
        const turns = turnsAt(polygonCorners(polygon));
        expect(turns.reduce((a, b) => a + b)).toBeCloseTo(360, 9);
        for (const turn of turns) {
          expect(turn).toBeCloseTo(polygon.turn, 9);
          expect(180 - turn).toBeCloseTo(polygon.interiorAngle, 9);
          expect(turn / 2).toBeCloseTo(polygon.planMiter, 9);
        }
        for (const length of sideLengths(polygonCorners(polygon))) expect(length / side).toBeCloseTo(1, 12);
      }),
    );
  });

  test("scaling by a power of two scales exactly", () => {
    fc.assert(
      fc.property(anySides, anyMeasure, shopLength, fc.integer({ min: -300, max: 300 }), (sides, measure, value, k) => {
        const squared = measure === "area";
        const factor = 2 ** Math.trunc(k / 2);
        const before = regularPolygon({ sides, ...onePolygonMeasure(measure, value) });
        const after = regularPolygon({
          sides,
          ...onePolygonMeasure(measure, value * (squared ? factor ** 2 : factor)),
        });
        for (const name of POLYGON_MEASURES) {
          expect(after[name], name).toBe(before[name] * (name === "area" ? factor ** 2 : factor));
        }
        expect(after.turn).toBe(before.turn);
      }),
    );
  });

  test("no result overflows, vanishes or is not a number, even where it leaves the range of what may be given", () => {
    fc.assert(
      fc.property(anySides, anyMeasure, anyLength, (sides, measure, length) => {
        const polygon = regularPolygon({
          sides,
          ...onePolygonMeasure(measure, measure === "area" ? length ** 2 : length),
        });
        expect(faultyNumbers(polygon)).toEqual([]);
        for (const name of POLYGON_MEASURES) expect(polygon[name], name).toBeGreaterThan(1e-250);
      }),
    );
  });

  test("options are left as they were, and other fields are not read", () => {
    const options = Object.freeze({ sides: 5, side: 2, color: "red" });
    expect(regularPolygon(options)).toEqual(regularPolygon({ sides: 5, side: 2 }));
  });

  test("survives JSON", () => {
    const polygon = regularPolygon({ sides: 7, acrossFlats: 0.1 });
    expect(JSON.parse(JSON.stringify(polygon))).toEqual(polygon);
  });
});

describe("onePolygonMeasure", () => {
  test("has the measure as its only field", () => {
    for (const measure of POLYGON_MEASURES) expect(onePolygonMeasure(measure, 3)).toEqual({ [measure]: 3 });
  });

  test("makes the same polygon as the measure written out", () => {
    expect(regularPolygon({ sides: 9, ...onePolygonMeasure("area", 50) })).toEqual(
      regularPolygon({ sides: 9, area: 50 }),
    );
  });
});
