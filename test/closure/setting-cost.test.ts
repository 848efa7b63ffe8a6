import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ringClosure, settingCost } from "miterwright/closure";
import { compoundMiter } from "miterwright/miter";
import { frozen, workableSlope } from "../laws/closure.js";

const anySides = fc.integer({ min: 3, max: 16 });
const anyStep = fc.constantFrom(0.1, 0.25, 0.5, 1);

describe("graduations of a scale", () => {
  test("cost what a ring cut at them costs", () => {
    fc.assert(
      fc.property(anySides, workableSlope, anyStep, (sides, slope, step) => {
        const { choices, nearest } = settingCost({ sides, width: 40, slope, step });
        for (const choice of [...choices, nearest]) {
          const piece = { length: 300, start: choice, end: choice };
          const ring = ringClosure({ pieces: Array.from({ length: sides }, () => piece), at: 0, width: 40, slope });
          // A setting of nothing at all is a straight piece.
          if (choice.miter === 0 && choice.bevel === 0) continue;
          expect(choice.angle).toBeCloseTo(ring.angle, 8);
          expect(choice.jointGap).toBeCloseTo(ring.jointGap, 8);
          expect(choice.opens).toBe(ring.opens);
          expect(choice.slopeOff).toBeCloseTo(ring.slope - slope, 8);
        }
      }),
    );
  });

  test("are all on the scale, within two graduations, and sorted by their gap", () => {
    fc.assert(
      fc.property(anySides, workableSlope, anyStep, (sides, slope, step) => {
        const { choices, best, nearest, exact } = settingCost({ sides, width: 40, slope, step });
        const { miter, bevel } = compoundMiter({ sides, slope });
        expect(exact).toEqual({ miter, bevel });
        for (const choice of [...choices, nearest]) {
          for (const angle of ["miter", "bevel"] as const) {
            expect(Math.abs(choice[angle] / step - Math.round(choice[angle] / step))).toBeLessThan(1e-9);
            expect(Math.abs(choice[angle] - exact[angle])).toBeLessThan(2 * step + 1e-9);
          }
        }
        expect(best).toEqual(choices[0]);
        for (const [index, choice] of choices.slice(1).entries()) {
          expect(choice.jointGap).toBeGreaterThanOrEqual(choices[index]!.jointGap);
        }
        expect(best.jointGap).toBeLessThanOrEqual(nearest.jointGap);
        for (const angle of ["miter", "bevel"] as const) {
          expect(Math.abs(nearest[angle] - exact[angle])).toBeLessThanOrEqual(step / 2 + 1e-9);
        }
      }),
    );
  });

  test("that hit the exact setting cost nothing", () => {
    const { nearest, best, choices } = settingCost({ sides: 8, width: 40, step: 0.5 });
    expect([nearest.miter, nearest.bevel, nearest.opens]).toEqual([22.5, 0, "nowhere"]);
    expect(nearest.jointGap).toBeLessThan(1e-12);
    expect(best).toEqual(nearest);
    expect(choices).toHaveLength(1);
  });

  test("of a heptagon's miter, at a tenth, a quarter and half a degree", () => {
    // 180/7 = 25.714...: 14 ends off by 0.0143 (25.7), 0.0357 (25.75) and 0.2143 (25.5).
    const gaps = [0.1, 0.25, 0.5].map((step) => settingCost({ sides: 7, width: 40, step }).nearest);
    expect(gaps.map(({ miter }) => miter)).toEqual([25.7, 25.75, 25.5]);
    expect(gaps.map(({ angle }) => angle.toFixed(1))).toEqual(["0.2", "-0.5", "3.0"]);
    expect(gaps.map(({ opens }) => opens)).toEqual(["outside", "inside", "outside"]);
  });

  test("may differ between the two scales", () => {
    const { nearest } = settingCost({ sides: 8, width: 40, slope: 30, step: 0.5, bevelStep: 0.1 });
    expect([nearest.miter, nearest.bevel.toFixed(6)]).toEqual([19.5, "11.000000"]);
  });
});

describe("rounded lengths", () => {
  /** Longest closing vector when every piece is half a step too long or too short, by trying all. */
  function worstOfAll(sides: number, step: number): number {
    let worst = 0;
    for (let signs = 0; signs < 2 ** sides; signs += 1) {
      let [x, y] = [0, 0];
      for (let side = 0; side < sides; side += 1) {
        const error = ((signs >> side) & 1) === 1 ? step / 2 : -step / 2;
        x += error * Math.cos((2 * Math.PI * side) / sides);
        y += error * Math.sin((2 * Math.PI * side) / sides);
      }
      worst = Math.max(worst, Math.hypot(x, y));
    }
    return worst;
  }

  test.each([3, 4, 5, 6, 7, 8, 9, 11, 12])(
    "of %d pieces leave at worst what the worst of all roundings leaves",
    (sides) => {
      const { length } = settingCost({ sides, width: 40, step: 1, length: 300.2, lengthStep: 0.5 });
      expect(length!.worst).toBeCloseTo(worstOfAll(sides, 0.5), 12);
      // n errors spread evenly over a step have a variance of step^2 / 12 each.
      expect(length!.typical).toBeCloseTo(Math.sqrt((sides * 0.25) / 12), 12);
    },
  );

  test("of nine pieces, each 0.4 off one way or the other, leave 2.30 at most: all 512 ways tried", () => {
    expect(worstOfAll(9, 0.8).toFixed(2)).toBe("2.30");
    const { length } = settingCost({ sides: 9, width: 60, step: 1, length: 150, lengthStep: 0.8 });
    expect(length!.worst.toFixed(2)).toBe("2.30");
  });

  test("on one stop change the size and open nothing", () => {
    const { length } = settingCost({ sides: 6, width: 40, step: 1, length: 300.2, lengthStep: 0.5 });
    expect(length!.rounded).toBe(300);
    expect(length!.error).toBeCloseTo(-0.2, 12);
    expect(length!.apothem).toBeCloseTo((-0.2 * Math.sqrt(3)) / 2, 12);
    expect(settingCost({ sides: 6, width: 40, step: 1 }).length).toBeNull();
  });

  test("of sixteenths round to a sixteenth", () => {
    const { length } = settingCost({ sides: 8, width: 1.5, step: 0.5, length: 5.45, lengthStep: 1 / 16 });
    expect(length!.rounded).toBe(5 + 7 / 16);
  });
});

test("results survive JSON, and options are not written to", () => {
  const result = settingCost(frozen({ sides: 7, width: 40, slope: 20, step: 0.5, length: 100, lengthStep: 1 }));
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
});

const GIVEN = { sides: 8, width: 40, step: 0.5 };

test.each([
  ["8", 'Expected `options` to be an object, got "8" (string)'],
  [{ ...GIVEN, sides: 0 }, "Expected `sides` to be an integer from 3 to 1000000, got 0 (number)"],
  [{ ...GIVEN, width: -2 }, "Expected `width` to be a positive length (1e-100 to 1e100), got -2 (number)"],
  [{ ...GIVEN, slope: -91 }, "Expected `slope` to be degrees from -90 to 90, got -91 (number)"],
  [{ ...GIVEN, step: 0 }, "Expected `step` to be degrees from 0.000001 to 45, got 0 (number)"],
  [{ ...GIVEN, step: undefined }, "Expected `step` to be degrees from 0.000001 to 45, got undefined"],
  [{ ...GIVEN, bevelStep: 46 }, "Expected `bevelStep` to be degrees from 0.000001 to 45, got 46 (number)"],
  [{ ...GIVEN, length: 100 }, "Expected `lengthStep` to be a positive length (1e-100 to 1e100), got undefined"],
  [{ ...GIVEN, lengthStep: 1 }, "Expected `length` to be a positive length (1e-100 to 1e100), got undefined"],
])("settingCost refuses %j", (options, message) => {
  expect(() => settingCost(options as never)).toThrow(message);
});
