import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preciseCompoundMiter, type PreciseCompoundMiter } from "miterwright/precise";
import { someDigits, spread } from "./arbitraries.js";
import { cosine, fix, inverseSine, inverseTangent, sine, tangent, text, times } from "./oracle.js";

/** The closed forms: tan(miter) = cos s tan h, sin(bevel) = sin s sin h, dihedral = 180 - 2 bevel. */
function byClosedForms(turn: number, slope: number, digits: number): PreciseCompoundMiter {
  const half = fix(turn) / 2n;
  const s = fix(slope);
  const bevel = inverseSine(times(sine(s), sine(half)));
  return {
    miter: text(inverseTangent(times(cosine(s), tangent(half))), digits),
    bevel: text(bevel, digits),
    dihedral: text(fix(180) - 2n * bevel, digits),
    planMiter: text(half, digits),
  };
}

describe("published values", () => {
  // A regular tetrahedron stands on three equilateral faces: arccos(1/3). OEIS A137914, value from memory.
  test("equilateral faces round an apex have a miter of 30 and the tetrahedron's dihedral", () => {
    const slope = "70.528779365509308630754000660037564036993156899092";
    const cut = preciseCompoundMiter({ sides: 3, slope, digits: 45 });
    expect(cut.miter).toBe("30");
    expect(cut.dihedral).toBe("70.5287793655093086307540006600375640369931569");
  });

  // Common knowledge of crown molding, values from memory: cut flat for a square corner, spring angles 38 and 45.
  test.each([
    [52, "31.62", "33.86"],
    [45, "35.26", "30"],
  ])("crown that slopes %s has the known setting %s, %s", (slope, miter, bevel) => {
    expect(preciseCompoundMiter({ sides: 4, slope, digits: 4 })).toMatchObject({ miter, bevel });
  });

  // The angle whose tangent is 1/sqrt(2), in degrees: half of arccos(1/3); OEIS A137914, value from memory.
  test("a square frame at 45 degrees", () => {
    expect(preciseCompoundMiter({ sides: 4, slope: 45, digits: 40 })).toEqual({
      miter: "35.2643896827546543153770003300187820185",
      bevel: "30",
      dihedral: "120",
      planMiter: "45",
    });
  });
});

describe("preciseCompoundMiter", () => {
  test("agrees with the closed forms", () => {
    const turn = spread(-179.5, 179.5);
    const slope = spread(-89.5, 89.5);
    fc.assert(
      fc.property(turn, slope, someDigits, (t, s, digits) => {
        expect(preciseCompoundMiter({ turn: t, slope: s, digits })).toEqual(byClosedForms(t, s, digits));
      }),
      { numRuns: 60 },
    );
  });

  test.each([
    [179.999999999, 89.999999999],
    [1e-9, 1e-9],
    [120, 90 - 1e-9],
    [90, -1e-12],
    [-1e-9, 45],
    [360 / 1e6, 37],
  ])("agrees with them at the edge: turn %s, slope %s", (turn, slope) => {
    expect(preciseCompoundMiter({ turn, slope })).toEqual(byClosedForms(turn, slope, 50));
  });

  test("is exact flat and upright", () => {
    expect(preciseCompoundMiter({ sides: 5, slope: 0 })).toEqual({
      miter: "36",
      bevel: "0",
      dihedral: "180",
      planMiter: "36",
    });
    expect(preciseCompoundMiter({ sides: 5, slope: 90 })).toEqual({
      miter: "0",
      bevel: "36",
      dihedral: "108",
      planMiter: "36",
    });
    expect(preciseCompoundMiter({ sides: 5, slope: -90 })).toEqual({
      miter: "0",
      bevel: "-36",
      dihedral: "252",
      planMiter: "36",
    });
    expect(preciseCompoundMiter({ turn: 0, slope: 33 })).toEqual({
      miter: "0",
      bevel: "0",
      dihedral: "180",
      planMiter: "0",
    });
    expect(preciseCompoundMiter({ turn: -72, slope: -0 })).toMatchObject({ miter: "-36", bevel: "0" });
  });

  test("takes 360/n as the turn, not its nearest double", () => {
    const bySides = preciseCompoundMiter({ sides: 7, slope: 30 });
    const byText = preciseCompoundMiter({
      turn: "51.428571428571428571428571428571428571428571428571428571428571",
      slope: 30,
    });
    expect(bySides).toEqual(byText);
    expect(preciseCompoundMiter({ turn: 360 / 7, slope: 30 }).miter).not.toBe(bySides.miter);
  });

  test("sees a slope that is a hair off upright, far below the doubles", () => {
    const { miter } = preciseCompoundMiter({ sides: 4, slope: `89.${"9".repeat(300)}`, digits: 20 });
    // tan(miter) = sin(1e-300 degrees): the miter is 1e-300 degrees to 600 digits.
    expect(miter).toBe(`0.${"0".repeat(299)}1`);
  });
});
