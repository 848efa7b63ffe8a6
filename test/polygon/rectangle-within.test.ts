import fc from "fast-check";
import type { Point } from "miterwright";
import { polygonCorners, rectangleWithin } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { anyPose, anySides, faultyNumbers, fewSides, leastOf, roomInside, shopLength } from "../laws/polygon.js";

const anyAspect = fc.double({ min: -3, max: 3, noNaN: true }).map((power) => 10 ** power);
const STANDINGS = [{ pose: "side-down" }, { pose: "corner-down" }, { rotation: "free" }] as const;

/** Where the vertical line at x enters and leaves a convex polygon. */
function chordAt(corners: readonly Point[], x: number): readonly [bottom: number, top: number] {
  const crossings = corners.flatMap((from, k) => {
    const to = corners[(k + 1) % corners.length]!;
    if (Math.min(from.x, to.x) > x || Math.max(from.x, to.x) < x || from.x === to.x) return [];
    return [from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x)];
  });
  return [Math.min(...crossings), Math.max(...crossings)];
}

describe("rectangleWithin of given proportions", () => {
  test("lies inside and touches", () => {
    fc.assert(
      fc.property(
        fewSides,
        fc.constantFrom(...STANDINGS),
        anyAspect,
        shopLength,
        (sides, standing, aspect, apothem) => {
          const { width, height, center, rotation } = rectangleWithin({ sides, apothem }, { aspect, ...standing });
          expect(width / height / aspect).toBeCloseTo(1, 14);
          const room = roomInside(polygonCorners({ sides, apothem }, rotation), { width, height }, center);
          expect(Math.abs(room) / apothem).toBeLessThan(3e-14);
        },
      ),
    );
  });

  test("no place holds a larger one", () => {
    for (const sides of [3, 4, 5, 6, 7, 8, 9, 14, 23]) {
      for (const pose of ["side-down", "corner-down"] as const) {
        const normals = polygonCorners({ sides, apothem: 1 }, pose).map((from, k, all) => {
          const to = all[(k + 1) % sides]!;
          const length = Math.hypot(to.x - from.x, to.y - from.y);
          return { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
        });
        for (const aspect of [0.05, 0.6, 1, 1.4, 12]) {
          const { height } = rectangleWithin({ sides, apothem: 1 }, { aspect, pose });
          // The height that fits at a place is concave in the place.
          const fits = (x: number, y: number): number =>
            Math.min(...normals.map((u) => (1 - u.x * x - u.y * y) / ((Math.abs(u.x) * aspect + Math.abs(u.y)) / 2)));
          const found = -leastOf((x) => leastOf((y) => -fits(x, y), -1, 1), -1, 1);
          expect(height / found, `${sides} sides, ${pose}, aspect ${aspect}`).toBeCloseTo(1, 11);
        }
      }
    }
  });

  test("scales exactly with the polygon by powers of two", () => {
    fc.assert(
      fc.property(anySides, anyPose, anyAspect, shopLength, (sides, pose, aspect, apothem) => {
        const small = rectangleWithin({ sides, apothem }, { aspect, pose });
        const large = rectangleWithin({ sides, apothem: apothem * 256 }, { aspect, pose });
        expect(large.width).toBe(small.width * 256);
        expect(large.center.y).toBe(small.center.y * 256);
      }),
    );
  });
});

describe("rectangleWithin of largest area", () => {
  test.each(["side-down", "corner-down"] as const)("%s: lies inside, and no other upright one is larger", (pose) => {
    for (let sides = 3; sides <= 34; sides++) {
      const corners = polygonCorners({ sides, apothem: 1 }, pose);
      const { width, height, center } = rectangleWithin({ sides, apothem: 1 }, { pose });
      expect(Math.abs(roomInside(corners, { width, height }, center)), `${sides} sides`).toBeLessThan(1e-14);
      const reach = Math.max(...corners.map(({ x }) => x));
      const areas = Array.from({ length: 2000 }, (_, k) => {
        const x = (reach * (k + 0.5)) / 2000;
        const [bottom, top] = chordAt(corners, x);
        return 2 * x * (top - bottom);
      });
      expect(Math.max(...areas), `${sides} sides`).toBeLessThanOrEqual(width * height * (1 + 1e-13));
      expect(Math.max(...areas) / (width * height), `${sides} sides`).toBeGreaterThan(0.999);
    }
  });

  test("agrees with the largest of its own proportions", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, (sides, pose, apothem) => {
        const largest = rectangleWithin({ sides, apothem }, { pose });
        const same = rectangleWithin({ sides, apothem }, { aspect: largest.width / largest.height, pose });
        expect(same.height / largest.height).toBeCloseTo(1, 13);
        expect((same.center.y - largest.center.y) / apothem).toBeCloseTo(0, 13);
      }),
    );
  });

  test("over all rotations: a coarse grid of rotations and edges finds none larger, and comes near", () => {
    const grid = 40;
    for (let sides = 3; sides <= 10; sides++) {
      const { width, height } = rectangleWithin({ sides, apothem: 1 }, { rotation: "free" });
      let found = 0;
      for (let step = 0; step <= 24; step++) {
        const corners = polygonCorners({ sides, apothem: 1 }, (step / 24) * (360 / sides));
        const [left, right] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))];
        const chords = Array.from({ length: grid }, (_, k) => {
          const x = left + ((right - left) * (k + 0.5)) / grid;
          return { x, chord: chordAt(corners, x) };
        });
        for (const [i, a] of chords.entries()) {
          for (const b of chords.slice(i + 1)) {
            const tall = Math.min(a.chord[1], b.chord[1]) - Math.max(a.chord[0], b.chord[0]);
            found = Math.max(found, (b.x - a.x) * tall);
          }
        }
      }
      expect(found, `${sides} sides`).toBeLessThanOrEqual(width * height * (1 + 1e-13));
      expect(found / (width * height), `${sides} sides`).toBeGreaterThan(0.97);
    }
  });

  test("over all rotations: the largest of every proportion, each rotated freely, has no larger area", () => {
    // Of an odd number of sides, for which this is not proven. Steps are fine against the angle between two sides.
    for (let sides = 3; sides <= 99; sides += 2) {
      const { width, height } = rectangleWithin({ sides, apothem: 1 }, { rotation: "free" });
      for (let step = -12; step <= 12; step++) {
        const degrees = 45 + (step * 22.5) / sides;
        if (degrees < 5 || degrees > 85) continue;
        const aspect = Math.tan((degrees * Math.PI) / 180);
        const other = rectangleWithin({ sides, apothem: 1 }, { aspect, rotation: "free" });
        expect(other.width * other.height, `${sides} sides`).toBeLessThanOrEqual(width * height * (1 + 1e-13));
      }
    }
  });

  test("in a triangle is half of it", () => {
    const { width, height } = rectangleWithin({ sides: 3, apothem: 10 });
    expect(width * height).toBeCloseTo((3 * Math.sqrt(3) * 100) / 2, 10);
  });

  test("in a polygon of 4 i sides rotated freely is the square on its corners", () => {
    for (const sides of [4, 8, 12, 16, 100, 1_000_000]) {
      const { width, height } = rectangleWithin({ sides, apothem: 1 }, { rotation: "free" });
      const side = Math.SQRT2 / Math.cos(Math.PI / sides);
      expect(width).toBeCloseTo(side, 14);
      expect(height).toBeCloseTo(side, 14);
    }
  });
});

test("every number is sound over the whole range of proportions and sizes, for every standing", () => {
  const power = fc.double({ min: -100, max: 100, noNaN: true }).map((exponent) => 10 ** exponent);
  const size = fc.double({ min: -101, max: 106, noNaN: true }).map((exponent) => 10 ** exponent);
  fc.assert(
    fc.property(anySides, size, power, fc.constantFrom(...STANDINGS), (sides, apothem, aspect, standing) => {
      fc.pre(apothem >= 1e-101 && aspect >= 1e-100 && apothem <= 1e106 && aspect <= 1e100);
      const placed = rectangleWithin({ sides, apothem }, { aspect, ...standing });
      expect(faultyNumbers(placed)).toEqual([]);
      expect(placed.width).toBeGreaterThan(0);
      expect(placed.height).toBeGreaterThan(0);
      expect(faultyNumbers(rectangleWithin({ sides, apothem }, standing))).toEqual([]);
    }),
  );
});
