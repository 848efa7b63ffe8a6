import { describe, expect, test } from "vitest";
import { slopeFromPlumb, slopeFromRiseAndRun, slopeFromSpring, type RiseAndRun } from "miterwright/miter";
import { exact } from "../exact.js";
import { angleError, direction } from "./exact-angles.js";

describe("slopes from what is measured", () => {
  test("a spring angle and degrees off plumb are the complement", () => {
    expect([0, 30, 38, 45, 52, 90].map(slopeFromSpring)).toStrictEqual([90, 60, 52, 45, 38, 0]);
    expect([0, 15, 90].map(slopeFromPlumb)).toStrictEqual([90, 75, 0]);
  });

  test.each([
    [8, 12],
    [1, 1],
    [1e100, 1e-100],
    [1e-100, 1e100],
    [-3, 4],
    [Math.PI, 1e8],
  ])("rise %d in a run of %d, against 60 digits", (rise, run) => {
    expect(angleError(slopeFromRiseAndRun({ rise, run }), direction(exact(rise), exact(run)))).toBeLessThanOrEqual(1);
  });

  test("upright, flat and diagonal are exact", () => {
    const slope = (rise: number, run: number): number => slopeFromRiseAndRun({ rise, run });
    expect([slope(5, 0), slope(-5, 0), slope(0, 5), slope(-0, 5), slope(5, 5), slope(-5, 5)]).toStrictEqual([
      90, -90, 0, 0, 45, -45,
    ]);
  });
});

describe("slope helpers refuse", () => {
  const cases: readonly (readonly [call: () => number, code: string, path: string, message: string])[] = [
    [() => slopeFromSpring(91), "range", "spring", "Expected `spring` to be degrees from 0 to 90, got 91 (number)"],
    [() => slopeFromSpring(-1), "range", "spring", "Expected `spring` to be degrees from 0 to 90, got -1 (number)"],
    [
      () => slopeFromSpring("38" as unknown as number),
      "type",
      "spring",
      'Expected `spring` to be degrees from 0 to 90, got "38" (string)',
    ],
    [
      () => slopeFromPlumb(NaN),
      "range",
      "offPlumb",
      "Expected `offPlumb` to be degrees from 0 to 90, got NaN (number)",
    ],
    [
      () => slopeFromRiseAndRun({ rise: 0, run: 0 }),
      "impossible",
      "rise",
      "Expected `rise` or `run` to differ from 0: a point has no slope",
    ],
    [
      () => slopeFromRiseAndRun({ rise: 1, run: -1 }),
      "range",
      "run",
      "Expected `run` to be zero or a positive length (up to 1e100), got -1 (number)",
    ],
    [
      () => slopeFromRiseAndRun({ rise: Infinity, run: 1 }),
      "range",
      "rise",
      "Expected `rise` to be a finite distance (-1e100 to 1e100), got Infinity (number)",
    ],
    [
      () => slopeFromRiseAndRun({ rise: 1 } as RiseAndRun),
      "missing",
      "run",
      "Expected `run` to be zero or a positive length (up to 1e100), got undefined",
    ],
    [
      () => slopeFromRiseAndRun(45 as unknown as RiseAndRun),
      "type",
      "measures",
      "Expected `measures` to be an object, got 45 (number)",
    ],
  ];
  test.each(cases)("%o", (call, code, path, message) => {
    expect(call).toThrow(expect.objectContaining({ name: "InputError", code, path, message }) as Error);
  });
});
