import fc from "fast-check";
import { polygonCorners, polygonExtent, regularPolygon } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import {
  anyLength,
  anyPose,
  boxAround,
  depthsInside,
  faultyNumbers,
  fewSides,
  shopLength,
  sideLengths,
} from "../laws/polygon.js";

const anyRotation = fc.double({ min: -360, max: 360, noNaN: true });

describe("polygonCorners", () => {
  test("start at the left end of the bottom side, or at the bottom corner", () => {
    for (let sides = 3; sides <= 40; sides++) {
      const down = polygonCorners({ sides, apothem: 7 });
      expect(down[0]!.y).toBe(-7);
      expect(down[1]!.y).toBe(-7);
      expect(down[0]!.x).toBeLessThan(0);
      expect(down[1]!.x).toBe(-down[0]!.x);
      const corner = polygonCorners({ sides, apothem: 7 }, "corner-down");
      expect(corner[0]!.x).toBe(0);
      expect(Math.min(...corner.map(({ y }) => y))).toBe(corner[0]!.y);
      expect(corner[1]!.x).toBeGreaterThan(0);
    }
  });

  test("lie on the circle around, while the sides touch the circle within", () => {
    fc.assert(
      fc.property(fewSides, anyPose, anyLength, (sides, pose, apothem) => {
        const corners = polygonCorners({ sides, apothem }, pose);
        const { circumradius, side } = regularPolygon({ sides, apothem });
        for (const { x, y } of corners) expect(Math.hypot(x, y) / circumradius).toBeCloseTo(1, 14);
        for (const depth of depthsInside(corners, { x: 0, y: 0 })) expect(depth / apothem).toBeCloseTo(1, 13);
        for (const length of sideLengths(corners)) expect(length / side).toBeCloseTo(1, 13);
        expect(faultyNumbers(corners)).toEqual([]);
      }),
    );
  });

  test("mirror each other exactly about the upright axis", () => {
    fc.assert(
      fc.property(fewSides, anyPose, shopLength, (sides, pose, apothem) => {
        const corners = polygonCorners({ sides, apothem }, pose);
        const shift = pose === "side-down" ? 1 : 0;
        corners.forEach(({ x, y }, k) => {
          expect(corners[(shift - k + 2 * sides) % sides]).toEqual({ x: -x + 0, y });
        });
      }),
    );
  });

  test("of an odd polygon on a corner are those of the one on a side, upside down and renumbered", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), shopLength, (half, apothem) => {
        const sides = 2 * half + 1;
        const down = polygonCorners({ sides, apothem });
        polygonCorners({ sides, apothem }, "corner-down").forEach(({ x, y }, k) => {
          // Corner 0 at the bottom is the mirror image of the one at the top, which is number half + 1.
          expect(down[(half + 1 + k) % sides]).toEqual({ x: -x + 0, y: -y + 0 });
        });
      }),
    );
  });

  test("rotated by a side's turn are the same corners renumbered; by half of it, the other pose", () => {
    fc.assert(
      fc.property(fewSides, (sides) => {
        const corners = polygonCorners({ sides, apothem: 1 });
        const renumbered = polygonCorners({ sides, apothem: 1 }, 360 / sides);
        const other = polygonCorners({ sides, apothem: 1 }, 180 / sides);
        const pose = polygonCorners({ sides, apothem: 1 }, "corner-down");
        for (let k = 0; k < sides; k++) {
          const next = corners[(k + 1) % sides]!;
          expect(Math.hypot(renumbered[k]!.x - next.x, renumbered[k]!.y - next.y)).toBeLessThan(5e-15);
          expect(Math.hypot(other[k]!.x - pose[k]!.x, other[k]!.y - pose[k]!.y)).toBeLessThan(5e-15);
        }
      }),
    );
  });

  test("rotated by 0 are those of the pose, and the numbers are sound at any rotation", () => {
    expect(polygonCorners({ sides: 5, apothem: 3 }, 0)).toEqual(polygonCorners({ sides: 5, apothem: 3 }));
    fc.assert(
      fc.property(fewSides, anyRotation, (sides, rotation) => {
        expect(faultyNumbers(polygonCorners({ sides, apothem: 2 }, rotation))).toEqual([]);
      }),
    );
  });

  test("scale exactly by powers of two", () => {
    fc.assert(
      fc.property(fewSides, anyPose, shopLength, (sides, pose, apothem) => {
        const large = polygonCorners({ sides, apothem: apothem * 2 ** 40 }, pose);
        polygonCorners({ sides, apothem }, pose).forEach(({ x, y }, k) => {
          expect(large[k]).toEqual({ x: x * 2 ** 40, y: y * 2 ** 40 });
        });
      }),
    );
  });
});

describe("polygonExtent", () => {
  test("is the box around the corners", () => {
    fc.assert(
      fc.property(fewSides, fc.oneof(anyPose, anyRotation), shopLength, (sides, pose, apothem) => {
        const extent = polygonExtent({ sides, apothem }, pose);
        const box = boxAround(polygonCorners({ sides, apothem }, pose));
        expect(extent.width / box.width).toBeCloseTo(1, 12);
        expect(extent.height / box.height).toBeCloseTo(1, 12);
      }),
      { numRuns: 1000 },
    );
  });

  test("of a pose is one of the two measures across, to the bit", () => {
    for (let sides = 3; sides <= 30; sides++) {
      const { acrossFlats, acrossCorners } = regularPolygon({ sides, apothem: 11 });
      const across = (pose: "side-down" | "corner-down"): unknown[] => {
        const { width, height } = polygonExtent({ sides, apothem: 11 }, pose);
        const name = (size: number): string =>
          size === acrossFlats ? "flats" : size === acrossCorners ? "corners" : "neither";
        return [name(width), name(height)];
      };
      const expected = [
        { "side-down": ["flats", "flats"], "corner-down": ["corners", "corners"] },
        { "side-down": ["corners", "flats"], "corner-down": ["corners", "flats"] },
        { "side-down": ["corners", "flats"], "corner-down": ["flats", "corners"] },
        { "side-down": ["corners", "flats"], "corner-down": ["corners", "flats"] },
      ][sides % 4]!;
      expect(across("side-down"), `${sides} sides`).toEqual(expected["side-down"]);
      expect(across("corner-down"), `${sides} sides`).toEqual(expected["corner-down"]);
    }
  });

  test("is the same at opposite rotations, and its sides swap a quarter turn on", () => {
    fc.assert(
      fc.property(fewSides, fc.double({ min: 0, max: 270, noNaN: true }), (sides, rotation) => {
        const { width, height } = polygonExtent({ sides, apothem: 1 }, rotation);
        expect(polygonExtent({ sides, apothem: 1 }, -rotation)).toEqual({ width, height });
        const swapped = polygonExtent({ sides, apothem: 1 }, rotation + 90);
        expect(swapped.width).toBeCloseTo(height, 12);
        expect(swapped.height).toBeCloseTo(width, 12);
      }),
    );
  });
});
