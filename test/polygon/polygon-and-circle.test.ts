import fc from "fast-check";
import {
  circleAround,
  circleWithin,
  polygonAroundCircle,
  polygonCorners,
  polygonWithinCircle,
  regularPolygon,
} from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { anyLength, anySides, depthsInside, faultyNumbers, fewSides, shopLength } from "../laws/polygon.js";

describe("circles and polygons", () => {
  test("the circle around goes through every corner, the circle within touches every side", () => {
    fc.assert(
      fc.property(fewSides, shopLength, (sides, apothem) => {
        const corners = polygonCorners({ sides, apothem });
        const around = circleAround({ sides, apothem });
        const within = circleWithin({ sides, apothem });
        for (const { x, y } of corners) expect(Math.hypot(x, y) / around.radius).toBeCloseTo(1, 14);
        for (const depth of depthsInside(corners, { x: 0, y: 0 })) expect(depth / within.radius).toBeCloseTo(1, 13);
        expect(around.diameter).toBe(2 * around.radius);
        expect(within.diameter).toBe(2 * within.radius);
      }),
    );
  });

  test("a polygon around a circle has it within; one within a circle has it around", () => {
    fc.assert(
      fc.property(anySides, anyLength, (sides, diameter) => {
        const outer = polygonAroundCircle({ sides, diameter });
        expect(circleWithin(outer).diameter).toBe(diameter);
        const inner = polygonWithinCircle({ sides, diameter });
        expect(circleAround(inner).diameter / diameter).toBeCloseTo(1, 14);
        expect(inner.circumradius).toBe(diameter / 2);
        expect(faultyNumbers([outer, inner])).toEqual([]);
      }),
    );
  });

  test("the allowance is added once in all to the diameter", () => {
    expect(polygonAroundCircle({ sides: 5, diameter: 300, allowance: 4 })).toEqual(
      regularPolygon({ sides: 5, apothem: 152 }),
    );
  });
});
