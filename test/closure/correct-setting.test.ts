import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { correctSetting, ringClosure, type MeasuredPiece } from "miterwright/closure";
import { compoundMiter, type SawSetting } from "miterwright/miter";
import { frozen } from "../laws/closure.js";
import { assemble, RADIAN, type OpenRing } from "./assemble.js";

const WIDTH = 30;

/** What a maker sees of a ring that was really cut so: pieces put together in space. */
function onTheBench(sides: number, cut: SawSetting, slope: number): OpenRing {
  const piece: MeasuredPiece = { length: 250, start: cut, end: cut };
  const section = { slope, at: 0, width: WIDTH, wood: { width: 40, thickness: 15 } };
  return assemble(
    Array.from({ length: sides }, () => piece),
    Array.from({ length: sides }, () => section),
  );
}

const anyError = fc.double({ min: -0.25, max: 0.25, noNaN: true });
const anySides = fc.integer({ min: 3, max: 14 });

describe("a ring cut again with the correction", () => {
  /** Cuts, looks, corrects, cuts again: what is left of the open angle, and the slope it now has. */
  function twice(
    sides: number,
    planned: number,
    error: SawSetting,
    hold?: number | "bevel" | "miter",
  ): { left: number; slope: number } | undefined {
    const exact = compoundMiter({ sides, slope: planned });
    const cut = { miter: exact.miter + error.miter, bevel: exact.bevel + error.bevel };
    const seen = onTheBench(sides, cut, planned);
    const seenGap = Math.abs(seen.angle) * RADIAN * seen.jointLine;
    // Too narrow to be seen, or to be told from the rounding of the bench.
    if (seenGap < 1e-4) return undefined;
    const { correction, slope } = correctSetting({
      sides,
      width: WIDTH,
      seenGap,
      open: seen.angle > 0 ? "outside" : "inside",
      slope: seen.slopes[0]!,
      ...(hold === undefined ? {} : { hold }),
    });
    const again = onTheBench(
      sides,
      { miter: cut.miter + correction.miter, bevel: cut.bevel + correction.bevel },
      planned,
    );
    expect(Math.abs(again.slopes[0]! - slope)).toBeLessThan(0.05);
    return { left: Math.abs(again.angle / seen.angle), slope: again.slopes[0]! };
  }

  test("at the slope it has, gapes by less than a hundredth of what it did", () => {
    fc.assert(
      fc.property(
        anySides,
        fc.constantFrom(0, 15, 30, 45, 60, 75, -30, -70),
        anyError,
        anyError,
        (sides, slope, miter, bevel) => {
          // A flat frame is cut without a bevel; one that has an error dishes it, and then the slope is not 0.
          const result = twice(sides, slope, { miter, bevel: slope === 0 ? 0 : bevel });
          if (result !== undefined) expect(result.left).toBeLessThan(0.01);
        },
      ),
    );
  });

  test("at the slope that was planned, gapes as little, and has that slope again", () => {
    fc.assert(
      fc.property(anySides, fc.constantFrom(20, 45, 70, -40), anyError, anyError, (sides, slope, miter, bevel) => {
        const result = twice(sides, slope, { miter, bevel }, slope);
        if (result === undefined) return;
        expect(result.left).toBeLessThan(0.01);
        expect(result.slope).toBeCloseTo(slope, 1);
      }),
    );
  });

  test.each(["bevel", "miter"] as const)("with its %s left as it is, gapes as little", (hold) => {
    fc.assert(
      fc.property(anySides, fc.constantFrom(30, 45, 60, -45), anyError, anyError, (sides, slope, miter, bevel) => {
        const result = twice(sides, slope, { miter, bevel }, hold);
        if (result !== undefined) expect(result.left).toBeLessThan(0.01);
      }),
    );
  });
});

describe("laws", () => {
  test("what the library says of a ring is undone by what it says of its gap", () => {
    fc.assert(
      fc.property(
        anySides,
        fc.double({ min: 5, max: 85, noNaN: true }),
        anyError,
        anyError,
        (sides, slope, miter, bevel) => {
          const exact = compoundMiter({ sides, slope });
          const cut = { miter: exact.miter + miter, bevel: exact.bevel + bevel };
          const piece = { length: 250, start: cut, end: cut };
          const ring = { pieces: Array.from({ length: sides }, () => piece), at: 0, width: WIDTH } as const;
          const closure = ringClosure(ring);
          if (closure.opens === "nowhere") return;
          const result = correctSetting({
            sides,
            width: WIDTH,
            seenGap: closure.jointGap,
            open: closure.opens,
            slope: closure.slope,
          });
          expect(result.angle).toBeCloseTo(closure.angle, 9);
          expect(result.cut.miter).toBeCloseTo(cut.miter, 7);
          expect(result.cut.bevel).toBeCloseTo(cut.bevel, 7);
          expect(result.perJoint * sides).toBeCloseTo(closure.angle, 9);
        },
      ),
    );
  });

  test("a flat frame needs its miter corrected by the open angle over 2n, and no bevel", () => {
    const { correction, cut, wanted, slope } = correctSetting({ sides: 6, width: 40, seenGap: 0.8, open: "inside" });
    const angle = ((0.8 * Math.cos(30 * RADIAN)) / 40 / RADIAN) * -1;
    expect(correction.miter).toBeCloseTo(angle / 12, 12);
    expect([correction.bevel, cut.bevel, wanted.bevel, slope]).toEqual([0, 0, 0, 0]);
    expect(wanted.miter).toBe(30);
  });

  test("scaling width and gap leaves everything", () => {
    const one = correctSetting({ sides: 7, width: 40, seenGap: 0.8, open: "inside", slope: 33, hold: 30 });
    expect(correctSetting({ sides: 7, width: 160, seenGap: 3.2, open: "inside", slope: 33, hold: 30 })).toEqual(one);
  });

  test("a ring of the opposite slope is corrected by the opposite bevel", () => {
    const given = { sides: 7, width: 40, seenGap: 0.8, open: "outside" } as const;
    const [up, down] = [33, -33].map((slope) => correctSetting({ ...given, slope }));
    expect(down!.correction).toEqual({ miter: up!.correction.miter, bevel: -up!.correction.bevel });
    expect(down!.changes).toEqual(up!.changes);
  });

  test("survives JSON and writes to nothing", () => {
    const result = correctSetting(
      frozen({ sides: 7, width: 40, seenGap: 0.8, open: "outside", slope: 20, hold: "bevel" }),
    );
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

test("which way miter and bevel go is said by codes", () => {
  const changes = (options: Partial<Parameters<typeof correctSetting>[0]>): unknown =>
    Object.values(correctSetting({ sides: 8, width: 40, seenGap: 1, open: "outside", ...options }).changes);
  expect(changes({})).toEqual(["more", "leave"]);
  expect(changes({ open: "inside" })).toEqual(["less", "leave"]);
  expect(changes({ slope: 90 })).toEqual(["leave", "more"]);
  expect(changes({ slope: 2, hold: 0 })).toEqual(["more", "less"]);
  expect(changes({ slope: 2, hold: -2 })).toEqual(["more", "through-zero"]);
});

const GIVEN = { sides: 8, width: 40, seenGap: 1, open: "outside" };

test.each([
  [undefined, "Expected `options` to be an object, got undefined"],
  [{ ...GIVEN, sides: 2 }, "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)"],
  [{ ...GIVEN, width: 0 }, "Expected `width` to be a positive length (1e-100 to 1e100), got 0 (number)"],
  [{ ...GIVEN, seenGap: undefined }, "Expected `seenGap` to be a positive length (1e-100 to 1e100), got undefined"],
  [{ ...GIVEN, seenGap: 40 }, "Expected `seenGap` to be less than `width`, 40, got 40"],
  [{ ...GIVEN, open: "top" }, 'Expected `open` to be one of "inside", "outside", got "top" (string)'],
  [{ ...GIVEN, slope: "30" }, 'Expected `slope` to be degrees from -90 to 90, got "30" (string)'],
  [{ ...GIVEN, hold: 100 }, "Expected `hold` to be degrees from -90 to 90, got 100 (number)"],
  [{ ...GIVEN, hold: "slope" }, 'Expected `hold` to be one of "bevel", "miter", got "slope" (string)'],
  [{ ...GIVEN, hold: "miter" }, 'Expected `hold` to be a slope or "bevel", as only the miter can close a flat frame'],
  [
    { ...GIVEN, slope: -90, hold: "bevel" },
    'Expected `hold` to be a slope or "miter", as only the bevel can close an upright frame',
  ],
  [
    { ...GIVEN, slope: 1, open: "inside", hold: "miter" },
    "Expected `hold` to be a slope, as the miter alone already turns the ring further than it may",
  ],
  [
    { ...GIVEN, slope: 89, open: "inside", hold: "bevel" },
    "Expected `hold` to be a slope, as the bevel alone already turns the ring further than it may",
  ],
])("correctSetting refuses %j", (options, message) => {
  expect(() => correctSetting(options as never)).toThrow(message);
});
