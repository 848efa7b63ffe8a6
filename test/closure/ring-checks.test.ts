import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gaugeTolerance,
  measuredOpening,
  ringChecks,
  ringClosure,
  type RingCheck,
  type RingChecksOptions,
} from "miterwright/closure";
import { compoundMiter } from "miterwright/miter";
import { planPanel, simulatePanel } from "miterwright/panel";
import { offsetPolygon, polygonCorners, regularPolygon } from "miterwright/polygon";
import { frozen } from "../laws/closure.js";
import { assemble, moved, RADIAN, type Point3 } from "./assemble.js";

const anySides = fc.integer({ min: 3, max: 20 });
const find = (checks: readonly RingCheck[], code: RingCheck["code"]): RingCheck => {
  const check = checks.find((one) => one.code === code);
  if (check === undefined) throw new Error(`no check ${code}`);
  return check;
};

/** The inner corners of a flat ring of equal pieces, all joints but the last tight, put together in space. */
function corners(sides: number, apothem: number, miterError: number, stretch: readonly number[] = []): Point3[] {
  const cut = { miter: 180 / sides + miterError, bevel: 0 };
  const length = 2 * apothem * Math.tan(Math.PI / sides);
  const pieces = Array.from({ length: sides }, (_, index) => ({
    length: length + (stretch[index] ?? 0),
    start: cut,
    end: cut,
  }));
  const section = { slope: 0, at: 0, width: 30, wood: { width: 30, thickness: 15 } };
  const { poses, blanks } = assemble(
    pieces,
    pieces.map(() => section),
  );
  const starts = blanks.map(({ start }, index) => moved(poses[index]!, start.inside));
  return [...starts, moved(poses.at(-1)!, blanks.at(-1)!.end.inside)];
}

const apart = (a: Point3, b: Point3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const middle = (a: Point3, b: Point3): Point3 => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
/** Distance of a point from the line through two others, by the area of the triangle they make (Heron). */
function square(point: Point3, a: Point3, b: Point3): number {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  return Math.abs(x * (point[1] - a[1]) - y * (point[0] - a[0])) / Math.hypot(x, y);
}

describe("what to measure, and how far it may be off", () => {
  test("is true of a ring without errors", () => {
    fc.assert(
      fc.property(anySides, fc.double({ min: 50, max: 500, noNaN: true }), (sides, apothem) => {
        const checks = ringChecks({ sides, apothem, width: 30, acceptedGap: 0.3 });
        const polygon = regularPolygon({ sides, apothem });
        const points = polygonCorners(polygon);
        const far = Math.floor(sides / 2);
        expect(find(checks, "piece-length").value).toBeCloseTo(polygon.side, 9);
        expect(find(checks, sides % 2 === 0 ? "side-to-side" : "corner-to-side").value).toBeCloseTo(
          polygon.acrossFlats,
          9,
        );
        expect(find(checks, "corner-to-corner").value).toBeCloseTo(
          Math.hypot(points[0]!.x - points[far]!.x, points[0]!.y - points[far]!.y),
          9,
        );
        expect(find(checks, "corner-angle").value).toBeCloseTo(180 - 360 / sides, 9);
      }),
    );
  });

  test("has for its tolerance the most by which the accepted gap puts it off, measured on rings put together in space", () => {
    fc.assert(
      fc.property(anySides, fc.double({ min: 50, max: 500, noNaN: true }), (sides, apothem) => {
        const given = { sides, apothem, width: 30, acceptedGap: 0.3 };
        const checks = ringChecks(given);
        const error = gaugeTolerance(given).shared.miter!;
        const far = Math.floor(sides / 2);
        let [flats, diagonal] = [0, 0];
        for (const sign of [1, -1]) {
          const ring = corners(sides, apothem, sign * error);
          for (let k = 0; k + far < sides; k += 1) {
            const from = sides % 2 === 0 ? middle(ring[k]!, ring[k + 1]!) : ring[k]!;
            const across = square(from, ring[k + far]!, ring[k + far + 1]!);
            flats = Math.max(flats, Math.abs(across - regularPolygon({ sides, apothem }).acrossFlats));
          }
          // Every two corners that are farthest apart in the planned ring, which may have the open joint on either side.
          const planned = corners(sides, apothem, 0);
          const { value } = find(checks, "corner-to-corner");
          for (let one = 0; one <= sides; one += 1) {
            for (let other = one + 1; other <= sides; other += 1) {
              if (apart(planned[one]!, planned[other]!) < value - 1e-6) continue;
              diagonal = Math.max(diagonal, Math.abs(apart(ring[one]!, ring[other]!) - value));
            }
          }
        }
        const code = sides % 2 === 0 ? "side-to-side" : "corner-to-side";
        expect(find(checks, code).tolerance).toBeCloseTo(flats, 6);
        expect(find(checks, "corner-to-corner").tolerance).toBeCloseTo(diagonal, 6);
        expect(find(checks, "corner-angle").tolerance).toBeCloseTo(2 * error, 9);
        expect(find(checks, "last-joint").tolerance).toBe(0.3);
      }),
    );
  });

  test("lets lengths be off by what leaves the last joint open by the gap at worst", () => {
    fc.assert(
      fc.property(anySides, (sides) => {
        const { tolerance, value } = find(
          ringChecks({ sides, apothem: 100, width: 30, acceptedGap: 0.3 }),
          "piece-length",
        );
        const cut = { miter: 180 / sides, bevel: 0 };
        const half = Math.floor(sides / 2);
        const pieces = Array.from({ length: sides }, (_, index) => ({
          length: value + (index < half ? tolerance : -tolerance),
          start: cut,
          end: cut,
        }));
        const { vector } = ringClosure({ pieces, at: "inside", width: 30 });
        expect(Math.hypot(vector.along, vector.out)).toBeCloseTo(0.3, 9);
      }),
    );
  });

  test("tells of the slope where there is one, and of flatness where the thickness is known", () => {
    const flat: RingChecksOptions = { sides: 6, apothem: 100, width: 30, acceptedGap: 0.3 };
    const codes = (options: RingChecksOptions): string[] =>
      ringChecks(options).map(({ code, when }) => `${when} ${code}`);
    expect(codes(flat)).toEqual([
      "pieces piece-length",
      "dry corner-angle",
      "dry last-joint",
      "dry side-to-side",
      "dry corner-to-corner",
      "glued side-to-side",
      "glued corner-to-corner",
    ]);
    expect(codes({ ...flat, thickness: 15 }).filter((code) => code.endsWith("flatness"))).toHaveLength(2);
    const { tolerance } = find(ringChecks({ ...flat, thickness: 15 }), "flatness");
    // Gaping by 0.3 over 15, a fold lifts the farthest corner by a fiftieth of the way to it.
    expect(tolerance).toBeCloseTo((100 / Math.cos(30 * RADIAN)) * (0.3 / 15), 12);
    const slope = find(ringChecks({ ...flat, slope: 30 }), "slope");
    expect(slope.value).toBe(30);
    const { each } = gaugeTolerance({ ...flat, slope: 30 }).shared;
    const shifts = [1, -1]
      .flatMap((m) => [1, -1].map((b) => [m * each, b * each] as const))
      .map(([dm, db]) => {
        const cut = {
          miter: Math.atan(Math.cos(30 * RADIAN) * Math.tan(30 * RADIAN)) / RADIAN + dm,
          bevel: Math.asin(0.25) / RADIAN + db,
        };
        const piece = { length: 100, start: cut, end: cut };
        return Math.abs(ringClosure({ pieces: Array.from({ length: 6 }, () => piece), at: 0, width: 30 }).slope - 30);
      });
    expect(slope.tolerance).toBeCloseTo(Math.max(...shifts), 9);
    expect(find(ringChecks({ ...flat, slope: 90 }), "slope").tolerance).toBeGreaterThan(0);
    expect(find(ringChecks({ ...flat, slope: -1e-9 }), "slope").tolerance).toBeGreaterThan(0);
  });

  test.each([20, 70, -20, -70])(
    "moves a slope of %s by the worst of both errors, whichever way each of them goes",
    (slope) => {
      const given = { sides: 6, apothem: 100, width: 30, acceptedGap: 3, slope };
      const { each } = gaugeTolerance(given).shared;
      const exact = compoundMiter({ sides: 6, slope });
      const moves = [
        [each, each],
        [each, -each],
        [-each, each],
        [-each, -each],
      ].map(([dm, db]) => {
        const cut = { miter: exact.miter + dm!, bevel: exact.bevel + db! };
        const piece = { length: 100, start: cut, end: cut };
        const ring = ringClosure({ pieces: Array.from({ length: 6 }, () => piece), at: 0, width: 30 });
        return Math.abs(ring.slope - slope);
      });
      expect(find(ringChecks(given), "slope").tolerance).toBeCloseTo(Math.max(...moves), 9);
    },
  );

  test("halving the gap halves the tolerances, but for the square of it; scaling scales", () => {
    const one = ringChecks({ sides: 9, apothem: 100, width: 30, acceptedGap: 0.2, thickness: 15 });
    const less = ringChecks({ sides: 9, apothem: 100, width: 30, acceptedGap: 0.1, thickness: 15 });
    const large = ringChecks({ sides: 9, apothem: 800, width: 240, acceptedGap: 1.6, thickness: 120 });
    for (const [index, check] of one.entries()) {
      expect(less[index]!.tolerance / check.tolerance).toBeCloseTo(0.5, 2);
      const factor = check.kind === "length" ? 8 : 1;
      expect(large[index]!.tolerance / check.tolerance).toBeCloseTo(factor, 9);
      expect(large[index]!.value).toBeCloseTo(check.value * factor, 9);
    }
  });

  test("is told for the most sides as for a circle: the open angle takes its share from every chord", () => {
    const acceptedGap = 0.2;
    const many = ringChecks({ sides: 1e6, apothem: 1e4, width: 30, acceptedGap });
    // Half of an arc of radius r that lacks half of the open angle a is a chord of 2 r sin(90 - a/4) on a radius of r / (1 - a/360).
    const radians = acceptedGap / 30;
    const grown = 1e4 / (1 - radians / (2 * Math.PI));
    const shrunk = 1e4 / (1 + radians / (2 * Math.PI));
    const off = Math.max(
      Math.abs(2 * grown * Math.cos(radians / 4) - 2e4),
      Math.abs(2 * shrunk * Math.cos(radians / 4) - 2e4),
    );
    expect(find(many, "corner-to-corner").tolerance).toBeCloseTo(off, 6);
    expect(find(many, "side-to-side").tolerance).toBeGreaterThan(off);
  });

  test("survives JSON and writes to nothing", () => {
    const checks = ringChecks(frozen({ sides: 7, apothem: 100, width: 30, acceptedGap: 0.2, slope: 10 }));
    expect(JSON.parse(JSON.stringify(checks))).toEqual(checks);
  });
});

describe("the opening of a glued frame", () => {
  test("as planned, gives the planned polygon", () => {
    for (let sides = 3; sides <= 12; sides += 1) {
      const { apothem, acrossFlats } = regularPolygon({ sides, apothem: 100 });
      const count = sides % 2 === 0 ? sides / 2 : sides;
      const across = measuredOpening({ sides, acrossFlats: Array.from({ length: count }, () => acrossFlats) });
      expect(across.polygon.apothem).toBeCloseTo(apothem, 10);
      expect([across.spread, across.certain]).toEqual([0, false]);
      const around = measuredOpening({ sides, fromCenter: Array.from({ length: sides }, () => apothem) });
      expect(around.polygon.apothem).toBe(100);
      expect([around.spread, around.certain]).toEqual([0, true]);
    }
  });

  test("measured from a center, takes the panel that is planned for it", () => {
    fc.assert(
      fc.property(
        anySides.chain((sides) =>
          fc.array(fc.double({ min: 97, max: 103, noNaN: true }), { minLength: sides, maxLength: sides }),
        ),
        (distances) => {
          const sides = distances.length;
          const { polygon } = measuredOpening({ sides, fromCenter: distances });
          const panel = offsetPolygon(polygon, -1);
          // Around that center, no corner of the panel passes any side of the opening less the clearance.
          for (const { x, y } of polygonCorners(panel)) {
            for (const [side, distance] of distances.entries()) {
              const toward = (-90 + (360 * side) / sides) * RADIAN;
              expect(x * Math.cos(toward) + y * Math.sin(toward)).toBeLessThan(distance - 1 + 1e-9);
            }
          }
        },
      ),
    );
  });

  test("measured across flats, does not vouch for sides that are long and short in turn", () => {
    // Sides alternately 101 and 99 from the middle: 200 across everywhere, and yet no panel of 200 goes in.
    const across = measuredOpening({ sides: 6, acrossFlats: [200, 200, 200] });
    expect(across.polygon.apothem).toBe(100);
    expect(across.certain).toBe(false);
    expect(measuredOpening({ sides: 6, fromCenter: [101, 99, 101, 99, 101, 99] }).polygon.apothem).toBe(99);
  });

  test("is what the panel is made for, instead of the plan", () => {
    const { polygon, spread } = measuredOpening(frozen({ sides: 5, acrossFlats: [301, 300, 300.5, 300.2, 300.9] }));
    expect(spread).toBe(1);
    const plan = planPanel({ polygon, clearance: 1 });
    expect(plan.panel.apothem).toBeCloseTo(polygon.apothem - 1, 12);
    expect(simulatePanel(plan)).toHaveLength(5);
    expect(JSON.parse(JSON.stringify(polygon))).toEqual(polygon);
  });
});

const GIVEN = { sides: 6, apothem: 100, width: 30, acceptedGap: 0.3 };

test.each([
  [() => ringChecks(undefined as never), "Expected `options` to be an object, got undefined"],
  [() => ringChecks({ ...GIVEN, sides: 1 }), "Expected `sides` to be an integer from 3 to 1000000, got 1 (number)"],
  [() => ringChecks({ ...GIVEN, slope: 95 }), "Expected `slope` to be degrees from -90 to 90, got 95 (number)"],
  [() => ringChecks({ ...GIVEN, acceptedGap: 30 }), "Expected `acceptedGap` to be less than `width`, 30, got 30"],
  [
    () => ringChecks({ ...GIVEN, apothem: 0 }),
    "Expected `apothem` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [
    () => ringChecks({ ...GIVEN, thickness: -1 }),
    "Expected `thickness` to be a positive length (1e-100 to 1e100), got -1 (number)",
  ],
  [() => measuredOpening(5 as never), "Expected `options` to be an object, got 5 (number)"],
  [
    () => measuredOpening({ sides: 1001, acrossFlats: [] }),
    "Expected `sides` to be an integer from 3 to 1000, got 1001 (number)",
  ],
  [() => measuredOpening({ sides: 6 } as never), "Expected exactly one of `acrossFlats`, `fromCenter`, got none"],
  [
    () => measuredOpening({ sides: 6, acrossFlats: [], fromCenter: [] } as never),
    "Expected exactly one of `acrossFlats`, `fromCenter`, got `acrossFlats` and `fromCenter`",
  ],
  [
    () => measuredOpening({ sides: 6, acrossFlats: [200, 200] }),
    "Expected `acrossFlats` to be an array of 3 lengths, got an array of 2",
  ],
  [
    () => measuredOpening({ sides: 5, acrossFlats: "300" as never }),
    'Expected `acrossFlats` to be an array of 5 lengths, got "300" (string)',
  ],
  [
    () => measuredOpening({ sides: 4, fromCenter: [100, 100, 0, 100] }),
    "Expected `fromCenter[2]` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
])("refuses what cannot be measured %#", (call, message) => {
  expect(call).toThrow(message);
});
