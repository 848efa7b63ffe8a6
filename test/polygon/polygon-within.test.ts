import fc from "fast-check";
import { polygonCorners, polygonExtent, polygonWithin } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { anyLength, anyPose, anySides, boxAround, faultyNumbers, fewSides, shopLength } from "../laws/polygon.js";

describe("polygonWithin in a pose", () => {
  test("lies within the sheet, and reaches both edges one way", () => {
    fc.assert(
      fc.property(fewSides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const { polygon, center } = polygonWithin({ sides, width, height, pose });
        const box = boxAround(polygonCorners(polygon, pose));
        const spare = [width - box.width, height - box.height].map((room) => room / polygon.apothem);
        expect(Math.min(...spare)).toBeGreaterThan(-1e-14);
        expect(Math.min(...spare)).toBeLessThan(1e-14);
        expect((box.center.x - center.x) / polygon.apothem).toBeCloseTo(0, 14);
        expect((box.center.y - center.y) / polygon.apothem).toBeCloseTo(0, 14);
      }),
    );
  });

  test("a limit that binds comes back bit for bit as the overall width or height", () => {
    fc.assert(
      fc.property(anySides, anyPose, anyLength, (sides, pose, limit) => {
        const wide = polygonWithin({ sides, width: limit, pose }).polygon;
        const high = polygonWithin({ sides, height: limit, pose }).polygon;
        expect([wide.acrossFlats, wide.acrossCorners]).toContain(limit);
        expect([high.acrossFlats, high.acrossCorners]).toContain(limit);
        expect(polygonExtent(wide, pose).width / limit).toBeCloseTo(1, 14);
        expect(polygonExtent(high, pose).height / limit).toBeCloseTo(1, 14);
      }),
    );
  });

  test("with both limits is the smaller of those with one", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const both = polygonWithin({ sides, width, height, pose });
        const each = [polygonWithin({ sides, width, pose }), polygonWithin({ sides, height, pose })];
        expect(both.polygon.apothem).toBe(Math.min(...each.map(({ polygon }) => polygon.apothem)));
      }),
    );
  });

  test("scales exactly by powers of two", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const small = polygonWithin({ sides, width, height, pose });
        const large = polygonWithin({ sides, width: width * 64, height: height * 64, pose });
        expect(large.polygon.side).toBe(small.polygon.side * 64);
        expect(large.center.y).toBe(small.center.y * 64);
      }),
    );
  });
});

describe("polygonWithin over all rotations", () => {
  const anySheet = fc.oneof(
    fc.tuple(shopLength, shopLength),
    // Sheets so nearly square that the polygon tilts.
    fc
      .tuple(shopLength, fc.double({ min: 0.9, max: 1.1, noNaN: true }))
      .map(([width, ratio]) => [width, width * ratio]),
  ) as fc.Arbitrary<[number, number]>;

  test("lies within the sheet in the rotation it tells, touching it both ways if it is tilted", () => {
    fc.assert(
      fc.property(fewSides, anySheet, (sides, [width, height]) => {
        const { polygon, center, rotation } = polygonWithin({ sides, width, height, rotation: "free" });
        const last = sides % 2 === 1 ? 90 / sides : 180 / sides;
        expect(rotation).toBeGreaterThanOrEqual(0);
        expect(rotation).toBeLessThanOrEqual(last);
        const box = boxAround(polygonCorners(polygon, rotation));
        const spare = [width - box.width, height - box.height].map((room) => room / polygon.apothem);
        expect(Math.min(...spare)).toBeGreaterThan(-1e-13);
        expect(Math.min(...spare)).toBeLessThan(1e-13);
        if (rotation > 0 && rotation < last) expect(Math.max(...spare)).toBeLessThan(1e-13);
        expect((box.center.x - center.x) / polygon.apothem).toBeCloseTo(0, 13);
        expect((box.center.y - center.y) / polygon.apothem).toBeCloseTo(0, 13);
      }),
      { numRuns: 500 },
    );
  });

  test("no rotation of a fine grid does better", () => {
    for (let sides = 3; sides <= 16; sides++) {
      const corners = polygonCorners({ sides, apothem: 1 });
      for (const [width, height] of [
        [1, 1],
        [1, 1.02],
        [1.02, 1],
        [1.2, 1],
        [1, 3],
        [3, 1],
      ] as const) {
        const { polygon } = polygonWithin({ sides, width, height, rotation: "free" });
        const fits = Array.from({ length: 1200 }, (_, step) => {
          const angle = (step / 1200) * ((2 * Math.PI) / sides);
          const [c, s] = [Math.cos(angle), Math.sin(angle)];
          const box = boxAround(corners.map(({ x, y }) => ({ x: x * c - y * s, y: x * s + y * c })));
          return Math.min(width / box.width, height / box.height);
        });
        const what = `${sides} sides within ${width} x ${height}`;
        expect(Math.max(...fits), what).toBeLessThanOrEqual(polygon.apothem * (1 + 1e-14));
        expect(Math.max(...fits) / polygon.apothem, what).toBeCloseTo(1, 3);
      }
    }
  });

  test("the largest triangle in a square is tilted by 15 degrees, a corner in the square's", () => {
    const { polygon, rotation } = polygonWithin({ sides: 3, width: 1, height: 1, rotation: "free" });
    expect(rotation).toBeCloseTo(15, 13);
    expect(polygon.side).toBeCloseTo(Math.sqrt(6) - Math.sqrt(2), 14);
  });

  test("with one limit it stands with its narrowest across it", () => {
    fc.assert(
      fc.property(anySides, anyLength, (sides, limit) => {
        for (const one of [{ width: limit }, { height: limit }]) {
          const { polygon, rotation } = polygonWithin({ sides, ...one, rotation: "free" });
          expect(polygon.acrossFlats).toBe(limit);
          const extent = polygonExtent(polygon, rotation);
          expect(("width" in one ? extent.width : extent.height) / limit).toBeCloseTo(1, 13);
        }
      }),
    );
  });
});

test("every number is sound over the whole range of lengths, for every standing", () => {
  const standings = fc.constantFrom({ pose: "side-down" }, { pose: "corner-down" }, { rotation: "free" } as const);
  fc.assert(
    fc.property(anySides, anyLength, anyLength, standings, (sides, width, height, standing) => {
      const placed = polygonWithin({ sides, width, height, ...(standing as { pose?: "side-down" }) });
      expect(faultyNumbers(placed)).toEqual([]);
      expect(placed.polygon.acrossFlats).toBeLessThanOrEqual(Math.min(width, height) * (1 + 1e-14));
      expect(placed.polygon.acrossCorners).toBeGreaterThanOrEqual(Math.min(width, height) * (1 - 1e-14));
    }),
  );
});
