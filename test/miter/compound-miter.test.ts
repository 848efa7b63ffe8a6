import { describe, expect, expectTypeOf, test } from "vitest";
import { compoundMiter, type CompoundMiter, type CompoundMiterOptions } from "miterwright/miter";
import { exact, type Exact, ulps } from "../exact.js";
import { axesAt, dec, dihedralOf, planeThrough, settingFlat, type Space } from "./space.js";
import { HARD_MITERS } from "./hard-cases.js";

/** The corner of a regular frame, built in space: the cut stands upright on the line from the center to the corner. */
function corner(half: Exact, slope: Exact): { miter: Exact; bevel: Exact; dihedral: Exact } {
  const first = axesAt(half.neg(), slope);
  const second = axesAt(half, slope);
  // Headings lie half a turn to either side of x, so the bisector is the plane x = 0.
  const normal = planeThrough(point(0, 0, 0), point(0, 1, 0), point(0, 0, 1), point(1, 0, 0));
  return { ...settingFlat(first, normal, "end"), dihedral: dihedralOf(first, second) };
}

function point(x: number, y: number, z: number): Space {
  return [dec(x), dec(y), dec(z)];
}

const INSTEAD_OF_OPTIONS = [undefined, null, 45, "45", [4, 45]];

describe("compoundMiter against 60 digits, built in space", () => {
  test.each(HARD_MITERS)("turn $turn, slope $slope: $why", ({ turn, slope }) => {
    const got = compoundMiter({ turn, slope });
    const want = corner(exact(turn).div(2), exact(slope));
    // Better than it has to be: small angles too keep all their digits, not only 1e-14 of a degree.
    expect(ulps(got.miter, want.miter)).toBeLessThanOrEqual(6);
    expect(ulps(got.bevel, want.bevel)).toBeLessThanOrEqual(6);
    expect(ulps(got.dihedral, want.dihedral)).toBeLessThanOrEqual(6);
    expect(got.planMiter).toBe(turn / 2);
  });

  test("every number of sides to 40, and some beyond, at every fifth degree", () => {
    const errors: number[] = [];
    for (const sides of [...Array(38).keys()].map((i) => i + 3).concat(97, 1000, 65_537, 1e6)) {
      for (const slope of [-75, -20, 0, 5, 35, 45, 60, 85, 90]) {
        const got = compoundMiter({ sides, slope });
        const want = corner(dec(180).div(sides), exact(slope));
        errors.push(ulps(got.miter, want.miter), ulps(got.bevel, want.bevel));
        errors.push(ulps(got.dihedral, want.dihedral));
      }
    }
    expect(Math.max(...errors)).toBeLessThanOrEqual(6);
  });
});

describe("compoundMiter where it is exact", () => {
  test("a four-sided ring at 45 degrees, each way, and not beside it", () => {
    const { miter } = compoundMiter({ sides: 4, slope: 45 });
    expect(compoundMiter({ sides: 4, slope: 45 })).toStrictEqual({ miter, bevel: 30, dihedral: 120, planMiter: 45 });
    expect(compoundMiter({ sides: 4, slope: -45 })).toStrictEqual({ miter, bevel: -30, dihedral: 240, planMiter: 45 });
    const reflex = { miter: -miter, bevel: -30, dihedral: 240, planMiter: -45 };
    expect(compoundMiter({ turn: -90, slope: 45 })).toStrictEqual(reflex);
    const steps = [45 - 2 ** -47, 45 + 2 ** -47].map((slope) => compoundMiter({ sides: 4, slope }));
    for (const [index, step] of steps.entries()) {
      const want = corner(exact(45), exact(index === 0 ? 45 - 2 ** -47 : 45 + 2 ** -47));
      expect(ulps(step.bevel, want.bevel)).toBeLessThanOrEqual(2);
    }
  });

  test.each([3, 4, 5, 6, 7, 11, 12, 49, 1e6])("lying flat, %d sides have the plan miter to the bit", (sides) => {
    const h = 180 / sides;
    expect(compoundMiter({ sides, slope: 0 })).toStrictEqual({ miter: h, bevel: 0, dihedral: 180, planMiter: h });
  });

  test.each([3, 4, 5, 6, 7, 11, 12, 49, 1e6])("standing upright, %d sides have the plan miter for bevel", (sides) => {
    const h = 180 / sides;
    expect(compoundMiter({ sides, slope: 90 })).toStrictEqual({
      miter: 0,
      bevel: h,
      dihedral: 180 - 2 * h,
      planMiter: h,
    });
    expect(compoundMiter({ sides, slope: -90 })).toStrictEqual({
      miter: 0,
      bevel: -h,
      dihedral: 180 + 2 * h,
      planMiter: h,
    });
  });

  test.each([-90, -30, -0, 0, 30, 90])("a turn of 0 is a square cut at slope %d, without a -0", (slope) => {
    const square = { miter: 0, bevel: 0, dihedral: 180, planMiter: 0 };
    expect(compoundMiter({ turn: 0, slope })).toStrictEqual(square);
    expect(compoundMiter({ turn: -0, slope })).toStrictEqual(square);
  });

  test("a reflex corner has the opposite signs", () => {
    const corner = compoundMiter({ turn: 72, slope: 40 });
    expect(compoundMiter({ turn: -72, slope: 40 })).toStrictEqual({
      miter: -corner.miter,
      bevel: -corner.bevel,
      dihedral: expect.closeTo(360 - corner.dihedral, 12) as number,
      planMiter: -36,
    });
  });
});

describe("compoundMiter refuses", () => {
  const cases: readonly (readonly [given: unknown, code: string, path: string, message: string])[] = [
    [{ slope: 45 }, "missing", "", "Expected exactly one of `sides`, `turn`, got none"],
    [
      { sides: 4, turn: 90, slope: 45 },
      "conflict",
      "turn",
      "Expected exactly one of `sides`, `turn`, got `sides` and `turn`",
    ],
    [{ sides: 4 }, "missing", "slope", "Expected `slope` to be degrees from -90 to 90, got undefined"],
    [{ sides: 4, slope: 90.5 }, "range", "slope", "Expected `slope` to be degrees from -90 to 90, got 90.5 (number)"],
    [{ sides: 4, slope: NaN }, "range", "slope", "Expected `slope` to be degrees from -90 to 90, got NaN (number)"],
    [{ sides: 4, slope: "45" }, "type", "slope", 'Expected `slope` to be degrees from -90 to 90, got "45" (string)'],
    [{ sides: 2, slope: 45 }, "range", "sides", "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)"],
    [
      { sides: 4.5, slope: 45 },
      "integer",
      "sides",
      "Expected `sides` to be an integer from 3 to 1000000, got 4.5 (number)",
    ],
    [
      { turn: 180, slope: 45 },
      "range",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got 180 (number)",
    ],
    [
      { turn: -180, slope: 45 },
      "range",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got -180 (number)",
    ],
    [
      { turn: Infinity, slope: 45 },
      "range",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got Infinity (number)",
    ],
    [
      { turn: true, slope: 45 },
      "type",
      "turn",
      "Expected `turn` to be a number between -180 and 180, bounds excluded, got true (boolean)",
    ],
  ];
  test.each(cases)("%o", (given, code, path, message) => {
    expect(() => compoundMiter(given as CompoundMiterOptions)).toThrow(
      expect.objectContaining({ name: "InputError", code, path, message }) as Error,
    );
  });

  test.each(INSTEAD_OF_OPTIONS)("%o in place of options", (given) => {
    expect(() => compoundMiter(given as unknown as CompoundMiterOptions)).toThrow(
      /^Expected `options` to be an object, got /,
    );
  });
});

test("the types of compoundMiter let exactly one measure of the corner through", () => {
  expectTypeOf(compoundMiter).returns.toEqualTypeOf<CompoundMiter>();
  expectTypeOf({ sides: 4, slope: 45 }).toExtend<CompoundMiterOptions>();
  expectTypeOf({ turn: 90, slope: 45 }).toExtend<CompoundMiterOptions>();
  expectTypeOf({ sides: 4, turn: 90, slope: 45 }).not.toExtend<CompoundMiterOptions>();
  expectTypeOf({ slope: 45 }).not.toExtend<CompoundMiterOptions>();
  expectTypeOf({ sides: 4 }).not.toExtend<CompoundMiterOptions>();
});
