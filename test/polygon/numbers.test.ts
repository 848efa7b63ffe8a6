import {
  onePolygonMeasure,
  polygonAround,
  polygonCorners,
  polygonExtent,
  polygonWithin,
  POLYGON_MEASURES,
  type PolygonMeasure,
  rectangleWithin,
  regularPolygon,
} from "miterwright/polygon";
import { describe, expect, test } from "vitest";
import { exact, type Exact, ulps } from "../exact.js";
import { exactDirection, exactPolygon, exactSnug } from "./exact-polygon.js";
import { HARD_POLYGONS, HARD_RECTANGLES } from "./hard-cases.js";

/** What the library promises, in units of the last place. */
const BOUND = 6;

const POSES = ["side-down", "corner-down"] as const;
const MANY = [99, 100, 101, 997, 4096, 65_537, 99_999, 720_720, 999_983, 999_999, 1_000_000];
const SIDES = [...Array.from({ length: 38 }, (_, k) => k + 3), ...MANY];

/** The measure with the largest error, and that error. */
function worstMeasure(sides: number, given: PolygonMeasure, value: number): { measure: string; error: number } {
  const got = regularPolygon({ sides, ...onePolygonMeasure(given, value) });
  const want = exactPolygon(sides, given, exact(value));
  const errors = POLYGON_MEASURES.map((measure) => ({ measure, error: ulps(got[measure], want[measure]) }));
  return errors.reduce((worst, next) => (next.error <= worst.error ? worst : next));
}

describe("measures against decimals of 40 digits", () => {
  test.each(POLYGON_MEASURES)("from %s", (given) => {
    for (const sides of SIDES) {
      for (const value of [0.1, 300, 1.7e-90, 9.9e89]) {
        const { measure, error } = worstMeasure(sides, given, value);
        expect(error, `${measure} of ${sides} sides from ${given} ${value}`).toBeLessThanOrEqual(BOUND);
      }
    }
  });

  test.each(HARD_POLYGONS)("%s sides, %s %s: %s", (sides, given, value) => {
    expect(worstMeasure(sides, given, value).error).toBeLessThanOrEqual(BOUND);
  });
});

test("angles are quotients of whole numbers, rounded once", () => {
  for (const sides of SIDES) {
    const { interiorAngle, turn, planMiter } = regularPolygon({ sides, side: 1 });
    const half = exact(180).div(sides);
    expect(ulps(planMiter, half)).toBeLessThanOrEqual(0.5);
    expect(ulps(turn, half.times(2))).toBeLessThanOrEqual(0.5);
    expect(ulps(interiorAngle, half.times(sides - 2))).toBeLessThanOrEqual(0.5);
  }
});

describe("places against decimals of 40 digits", () => {
  /** Error in units of the last place; what is 0 must be given as 0. */
  const offBy = (got: number, want: Exact): number => {
    if (want.abs().gt(1e-30)) return ulps(got, want);
    return got === 0 ? 0 : Infinity;
  };

  test.each(POSES)("corners, %s", (pose) => {
    for (const sides of [3, 4, 5, 6, 7, 8, 11, 12, 16, 101, pose === "side-down" ? 999_999 : 65_536]) {
      const corners = polygonCorners({ sides, apothem: 3 }, pose);
      const { circumradius } = exactPolygon(sides, "apothem", exact(3));
      expect(corners).toHaveLength(sides);
      const step = Math.ceil(sides / 40);
      for (let k = 0; k < sides; k += step) {
        const { x, y } = exactDirection((pose === "side-down" ? -2 : 0) - sides + 4 * k, sides);
        const corner = corners[k]!;
        const error = Math.max(offBy(corner.x, x.times(circumradius)), offBy(corner.y, y.times(circumradius)));
        expect(error, `corner ${k} of ${sides}`).toBeLessThanOrEqual(BOUND);
      }
    }
  });

  test.each(POSES)("extents, %s", (pose) => {
    for (const sides of [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 99, 101]) {
      const { circumradius } = exactPolygon(sides, "apothem", exact(3));
      const directions = Array.from({ length: sides }, (_, k) =>
        exactDirection((pose === "side-down" ? -2 : 0) - sides + 4 * k, sides),
      );
      const spread = (values: Exact[]): Exact =>
        values.reduce((a, b) => (a.gt(b) ? a : b)).minus(values.reduce((a, b) => (a.lt(b) ? a : b)));
      const extent = polygonExtent({ sides, apothem: 3 }, pose);
      expect(ulps(extent.width, spread(directions.map(({ x }) => x)).times(circumradius))).toBeLessThanOrEqual(BOUND);
      expect(ulps(extent.height, spread(directions.map(({ y }) => y)).times(circumradius))).toBeLessThanOrEqual(BOUND);
    }
  });

  test.each(POSES)("the smallest polygon around a rectangle, %s", (pose) => {
    const sizes = [
      [1, 1],
      [3, 2],
      [2, 3],
      [1, 50],
      [50, 1],
      [7, 6.9],
      [1e-60, 1e60],
      [1e60, 1e-60],
    ] as const;
    for (let sides = 3; sides <= 32; sides++) {
      for (const [width, height] of sizes) {
        const { polygon, center } = polygonAround({ sides, width, height, pose });
        const want = exactSnug(sides, pose, exact(width), exact(height));
        const what = `${sides} sides around ${width} x ${height}`;
        expect(ulps(polygon.apothem, want.apothem), what).toBeLessThanOrEqual(BOUND);
        expect(center.x, what).toBe(0);
        if (sides % 2 === 0) expect(center.y, what).toBe(0);
        else expect(ulps(center.y, want.up, want.terms), what).toBeLessThanOrEqual(BOUND);

        const inside = rectangleWithin({ sides, apothem: 3 }, { aspect: width, pose });
        const unit = exactSnug(sides, pose, exact(width), exact(1));
        expect(ulps(inside.height, unit.apothem.pow(-1).times(3)), what).toBeLessThanOrEqual(BOUND);
        expect(ulps(inside.width, exact(width).times(3).div(unit.apothem)), what).toBeLessThanOrEqual(BOUND);
      }
    }
  });

  test.each(POSES)("a sheet's center, %s", (pose) => {
    for (const sides of [3, 5, 7, 9, 11, 101, 999_999]) {
      const { polygon, center } = polygonWithin({ sides, width: 3, height: 3, pose });
      const { circumradius, apothem } = exactPolygon(sides, "acrossCorners", exact(polygon.acrossCorners));
      const up = circumradius.minus(apothem).div(pose === "side-down" ? 2 : -2);
      expect(ulps(center.y, up), `${sides} sides`).toBeLessThanOrEqual(BOUND);
    }
  });
});

test.each(HARD_RECTANGLES)("%s sides around %s x %s: %s", (sides, width, height) => {
  for (const standing of [{ pose: "side-down" }, { pose: "corner-down" }, { rotation: "free" }] as const) {
    const { polygon, center, rotation } = polygonAround({ sides, width, height, ...standing });
    // The sides nearest to the directions of the rectangle's corners, and their neighbors, decide.
    const near = [0, 1, 2, 3].flatMap((quarter) => {
      const turned =
        Math.atan2(quarter % 2 === 0 ? height : width, quarter % 2 === 0 ? width : height) * (180 / Math.PI);
      const side = Math.round(((90 * quarter + turned + 90 - rotation) / 360) * sides);
      return Array.from({ length: 9 }, (_, k) => (side + k - 4 + 2 * sides) % sides);
    });
    const demanded = near.map((side) => {
      const turn = exact(rotation).div(90);
      const { x, y } = exactDirection(turn.times(sides).plus(4 * side - sides), sides);
      return x.abs().times(width).plus(y.abs().times(height)).div(2).plus(x.times(center.x)).plus(y.times(center.y));
    });
    const most = demanded.reduce((a, b) => (a.gt(b) ? a : b));
    expect(ulps(polygon.apothem, most), JSON.stringify(standing)).toBeLessThanOrEqual(BOUND);
  }
});
