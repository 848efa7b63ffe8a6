import fc from "fast-check";
import { polygonAround, polygonCorners, rectangleWithin } from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import {
  anyLength,
  anyPose,
  anySides,
  apothemBySearch,
  faultyNumbers,
  fewSides,
  roomInside,
  shopLength,
} from "../laws/polygon.js";

const RATIOS = [1e-6, 0.02, 0.3, 0.5932, 0.7, 0.95, 1, 1.02, 1.618, 2.28, 7, 1e5];
/** Rectangles that an odd polygon goes round best in a rotation that is not symmetric to the rectangle's axes. */
const TILTED = [
  [5, 1, 0.96],
  [5, 1, 1],
  [7, 860, 510],
  [7, 510, 860],
  [9, 91, 40],
  [9, 1, 1],
  [11, 95, 33],
] as const;

describe("polygonAround in a pose", () => {
  test("holds the rectangle, which touches it", () => {
    fc.assert(
      fc.property(fewSides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const { polygon, center } = polygonAround({ sides, width, height, pose });
        const room = roomInside(polygonCorners(polygon, pose), { width, height }, center);
        expect(Math.abs(room) / polygon.apothem).toBeLessThan(1e-14);
      }),
    );
  });

  test.each(["side-down", "corner-down"] as const)(
    "%s: is as small as a search finds, wherever the rectangle is put",
    (pose) => {
      for (const sides of [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 17, 22, 31]) {
        for (const ratio of RATIOS) {
          const { polygon, rotation } = polygonAround({ sides, width: ratio, height: 1, pose });
          const found = apothemBySearch(sides, rotation, { width: ratio, height: 1 });
          expect(polygon.apothem / found, `${sides} sides round ${ratio}`).toBeCloseTo(1, 11);
        }
      }
    },
  );

  test("an even polygon holds it in the middle, an odd one on the upright axis", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const { center } = polygonAround({ sides, width, height, pose });
        expect(center.x).toBe(0);
        if (sides % 2 === 0) expect(center.y).toBe(0);
      }),
    );
  });

  test("a triangle round a square stands on its base", () => {
    const { polygon, center } = polygonAround({ sides: 3, width: 1, height: 1 });
    // The square's upper corners cut off a triangle of side 1 above them.
    expect(polygon.acrossFlats).toBeCloseTo(1 + Math.sqrt(3) / 2, 14);
    expect(center.y).toBeCloseTo(0.5 - polygon.apothem, 14);
  });

  test("an odd polygon on a corner is the one on a side, upside down", () => {
    fc.assert(
      fc.property(anySides, shopLength, shopLength, (half, width, height) => {
        const sides = half % 2 === 1 ? half : half - 1;
        fc.pre(sides >= 3);
        const down = polygonAround({ sides, width, height });
        const corner = polygonAround({ sides, width, height, pose: "corner-down" });
        expect(corner.polygon).toEqual(down.polygon);
        expect(corner.center).toEqual({ x: 0, y: -down.center.y + 0 });
      }),
    );
  });

  test("lying down, a rectangle needs an even polygon as large: in the same pose for 4 i sides, else in the other", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (half, pose, width, height) => {
        const sides = Math.max(half - (half % 2), 4);
        const other = pose === "side-down" ? "corner-down" : "side-down";
        const upright = polygonAround({ sides, width, height, pose });
        const lying = polygonAround({ sides, width: height, height: width, pose: sides % 4 === 0 ? pose : other });
        expect(lying.polygon.apothem / upright.polygon.apothem).toBeCloseTo(1, 14);
      }),
    );
  });

  test("grows with the rectangle, by exactly as much where powers of two scale it", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const small = polygonAround({ sides, width, height, pose });
        const wider = polygonAround({ sides, width: width * 1.01, height, pose });
        expect(wider.polygon.apothem).toBeGreaterThanOrEqual(small.polygon.apothem);
        const large = polygonAround({ sides, width: width * 1024, height: height * 1024, pose });
        expect(large.polygon.apothem).toBe(small.polygon.apothem * 1024);
        expect(large.center.y).toBe(small.center.y * 1024);
      }),
    );
  });

  test("the allowance is added once in all to each dimension", () => {
    for (const standing of [{ pose: "corner-down" }, { rotation: "free" }] as const) {
      const loose = polygonAround({ sides: 7, width: 200, height: 150, allowance: 3, ...standing });
      expect(loose).toEqual(polygonAround({ sides: 7, width: 203, height: 153, ...standing }));
    }
  });

  test("is the inverse of rectangleWithin", () => {
    fc.assert(
      fc.property(anySides, anyPose, shopLength, shopLength, (sides, pose, width, height) => {
        const { polygon, center } = polygonAround({ sides, width, height, pose });
        const back = rectangleWithin(polygon, { aspect: width / height, pose });
        expect(back.width / width).toBeCloseTo(1, 13);
        expect(back.height / height).toBeCloseTo(1, 13);
        expect((back.center.y - center.y) / polygon.apothem).toBeCloseTo(0, 13);
      }),
    );
  });
});

describe("polygonAround over all rotations", () => {
  test("holds the rectangle, which touches it, in the rotation it tells", () => {
    fc.assert(
      fc.property(fewSides, shopLength, shopLength, (sides, width, height) => {
        const { polygon, center, rotation } = polygonAround({ sides, width, height, rotation: "free" });
        expect(rotation).toBeGreaterThanOrEqual(0);
        expect(rotation).toBeLessThanOrEqual(180 / sides);
        const room = roomInside(polygonCorners(polygon, rotation), { width, height }, center);
        expect(Math.abs(room) / polygon.apothem).toBeLessThan(3e-14);
      }),
      { numRuns: 60 },
    );
  });

  test("no rotation of a fine grid, and no place, does better", () => {
    for (const sides of [3, 4, 5, 6, 7, 8, 9, 11, 12]) {
      for (const ratio of [0.02, 0.5932, 0.95, 1, 2.28]) {
        const { polygon, rotation } = polygonAround({ sides, width: ratio, height: 1, rotation: "free" });
        // All rotations there are up to a side's turn, from the one that was found.
        for (let step = 0; step < 24; step++) {
          const found = apothemBySearch(sides, rotation + (step * 360) / sides / 24, { width: ratio, height: 1 });
          const what = `${sides} sides round ${ratio}, ${step}`;
          if (step === 0) expect(polygon.apothem / found, what).toBeCloseTo(1, 11);
          else expect(found, what).toBeGreaterThan(polygon.apothem * (1 - 1e-11));
        }
      }
    }
  });

  test.each(TILTED)("%s sides round %s x %s: strictly between the symmetric rotations", (sides, width, height) => {
    const { polygon, rotation } = polygonAround({ sides, width, height, rotation: "free" });
    expect(rotation).toBeGreaterThan(1e-3);
    expect(rotation).toBeLessThan(90 / sides - 1e-3);
    for (const symmetric of [0, 90 / sides]) {
      expect(apothemBySearch(sides, symmetric, { width, height })).toBeGreaterThan(polygon.apothem * (1 + 1e-5));
    }
    for (const nearby of [-1e-3, 1e-3]) {
      expect(apothemBySearch(sides, rotation + nearby, { width, height })).toBeGreaterThan(polygon.apothem);
    }
  });

  test("a square's octagon stands on a corner, its corners on four of the octagon's", () => {
    const { polygon, rotation } = polygonAround({ sides: 8, width: 10, height: 10, rotation: "free" });
    expect(rotation).toBe(22.5);
    expect(polygon.circumradius).toBeCloseTo(10 / Math.SQRT2, 13);
  });

  test("is no larger than in either pose", () => {
    fc.assert(
      fc.property(anySides, shopLength, shopLength, (sides, width, height) => {
        const free = polygonAround({ sides, width, height, rotation: "free" }).polygon.apothem;
        for (const pose of ["side-down", "corner-down"] as const) {
          expect(free).toBeLessThanOrEqual(polygonAround({ sides, width, height, pose }).polygon.apothem * (1 + 1e-14));
        }
      }),
      { numRuns: 60 },
    );
  });

  test("looking at the nearest sides only finds what looking at all of them does", () => {
    for (const sides of [13, 15, 21, 25, 41]) {
      for (const ratio of [0.1, 0.5, 0.8, 0.97, 1.3]) {
        const { polygon } = polygonAround({ sides, width: ratio, height: 1, rotation: "free" });
        for (let step = 0; step <= 12; step++) {
          const found = apothemBySearch(sides, (step * 90) / sides / 12, { width: ratio, height: 1 });
          expect(found, `${sides} sides round ${ratio}`).toBeGreaterThan(polygon.apothem * (1 - 1e-11));
        }
      }
    }
  });
});

test("every number is sound over the whole range of lengths, for every standing", () => {
  const standings = fc.constantFrom({ pose: "side-down" }, { pose: "corner-down" }, { rotation: "free" } as const);
  fc.assert(
    fc.property(anySides, anyLength, anyLength, standings, (sides, width, height, standing) => {
      const placed = polygonAround({ sides, width, height, ...(standing as { pose?: "side-down" }) });
      expect(faultyNumbers(placed)).toEqual([]);
      expect(placed.polygon.apothem).toBeGreaterThanOrEqual(Math.min(width, height) / 2);
      expect(placed.polygon.apothem).toBeLessThanOrEqual(
        Math.hypot(width, height) / 2 + 1e-15 * Math.max(width, height),
      );
    }),
  );
});
