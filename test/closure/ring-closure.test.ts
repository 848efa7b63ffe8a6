import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ringClosure, type MeasuredRing } from "miterwright/closure";
import { compoundMiter, joinCorner, type SawSetting } from "miterwright/miter";
import { isClean, numbersIn } from "../laws/miter.js";
import {
  evenlyFlawed,
  frozen,
  inMirror,
  measuredRing,
  renumbered,
  shifted,
  unevenlyFlawed,
  workableSlope,
  type FlawedRing,
} from "../laws/closure.js";
import { assemble, mateByCorners, type Section } from "./assemble.js";
import { HARD_RINGS } from "./hard-rings.js";

const RADIAN = Math.PI / 180;
const WOOD = { width: 60, thickness: 18 };

function sectionsOf(ring: MeasuredRing & { readonly slope: number }): Section[] {
  const { width, slope } = ring;
  const at = ring.at === "inside" ? 0 : ring.at === "outside" ? width : ring.at;
  return ring.pieces.map(() => ({ slope, at, width, wood: WOOD }));
}

/** The same ring lying flat, without the errors of its bevels. */
function flattened(flawed: FlawedRing): FlawedRing {
  const level = (cut: { readonly miter: number }): SawSetting => ({ miter: cut.miter, bevel: 0 });
  const errors = flawed.errors.map(({ start, end, length }) => ({ start: level(start), end: level(end), length }));
  return { ...flawed, slope: 0, errors };
}

/** Lengths agree when they do to a billionth of the pieces. */
function expectLength(actual: number, expected: number, ring: FlawedRing): void {
  expect(Math.abs(actual - expected) / (ring.length * ring.sides)).toBeLessThan(1e-10);
}

describe("against pieces put together in space", () => {
  test.each([
    ["by the lines of their backs", undefined],
    ["by all four corners of their ends", mateByCorners],
  ])("rings of equal cuts, mated %s", (_, mate) => {
    fc.assert(
      fc.property(evenlyFlawed, (flawed) => {
        const ring = measuredRing(flawed);
        const closure = ringClosure(ring);
        const open = assemble(ring.pieces, sectionsOf(ring), mate);
        expect(closure.angle).toBeCloseTo(open.angle, 9);
        expectLength(closure.openGap.inside, open.inside, flawed);
        expectLength(closure.openGap.outside, open.outside, flawed);
        for (const axis of ["along", "out", "up"] as const) {
          expectLength(closure.vector[axis], open.vector[axis], flawed);
        }
        for (const [index, slope] of closure.slopes.entries()) expect(slope).toBeCloseTo(open.slopes[index]!, 9);
        expect(closure.tilt).toBeCloseTo(0, 9);
        expect(closure.roll).toBeCloseTo(0, 9);
        expect(closure.rocks).toBe(false);
      }),
    );
  });

  test("rings whose cuts and lengths are all off by their own", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (flawed) => {
        const ring = measuredRing(flawed);
        const closure = ringClosure(ring);
        const open = assemble(ring.pieces, sectionsOf(ring));
        expectLength(closure.openGap.inside, open.inside, flawed);
        expectLength(closure.openGap.outside, open.outside, flawed);
        for (const axis of ["along", "out", "up"] as const) {
          expectLength(closure.vector[axis], open.vector[axis], flawed);
        }
        for (const [index, slope] of closure.slopes.entries()) expect(slope).toBeCloseTo(open.slopes[index]!, 9);
        // The bench reads small rotations off a matrix, to first order: its remainder is the square of some degrees.
        const size = (Math.abs(open.twist.along) + Math.abs(open.twist.out) + Math.abs(open.twist.up)) * RADIAN;
        const remainder = (size * size) / RADIAN + 1e-9;
        expect(Math.abs(closure.angle - open.twist.up)).toBeLessThan(remainder);
        expect(Math.abs(closure.tilt + open.twist.out)).toBeLessThan(remainder);
        expect(Math.abs(closure.roll - open.twist.along)).toBeLessThan(remainder);
      }),
    );
  });

  test("where the ends differ, feeling for flush corners instead of flush backs changes the open angle by a second-order amount only", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (flawed) => {
        const difference = (share: number): number => {
          const ring = measuredRing(flawed, share);
          return Math.abs(ringClosure(ring).angle - assemble(ring.pieces, sectionsOf(ring), mateByCorners).twist.up);
        };
        // Errors up to half a degree at 2n ends: the square of their sum, in degrees, bounds the second order.
        for (const share of [1, 0.1, 0.01]) {
          const error = flawed.sides * share;
          expect(difference(share)).toBeLessThan(error * error * RADIAN + 1e-9);
        }
      }),
    );
  });

  test("the gap is the joint line times the open angle", () => {
    fc.assert(
      fc.property(evenlyFlawed, (flawed) => {
        const ring = measuredRing(flawed, 1e-4);
        const { angle, jointGap, opens } = ringClosure(ring);
        const { jointLine } = assemble(ring.pieces, sectionsOf(ring));
        const seen = jointLine * Math.abs(angle) * RADIAN;
        expect(Math.abs(jointGap - seen)).toBeLessThan(1e-4 * seen + 1e-12);
        expect(opens).toBe(Math.abs(angle) < 1e-9 ? "nowhere" : angle > 0 ? "outside" : "inside");
      }),
    );
  });

  test("a twisted flat ring is out of flat by what its corners are out of their best plane", () => {
    // Four pieces, folded up and down in turn: the corners of a saddle.
    const up = { miter: 45, bevel: 0.2 };
    const down = { miter: 45, bevel: -0.2 };
    const pieces = [
      { length: 300, start: down, end: up },
      { length: 300, start: up, end: down },
      { length: 300, start: down, end: up },
      { length: 300, start: up, end: down },
    ];
    const ring = { pieces, at: "inside", width: 40, slope: 0 } as const;
    const { poses, blanks, up: axis } = assemble(pieces, sectionsOf(ring));
    const heights = blanks.map(({ start }, index) => {
      const [x, y, z] = start.inside;
      const { rows, origin } = poses[index]!;
      const point = [0, 1, 2].map((k) => rows[k]![0] * x + rows[k]![1] * y + rows[k]![2] * z + origin[k]!);
      return point[0]! * axis[0] + point[1]! * axis[1] + point[2]! * axis[2];
    });
    const { outOfFlat, rocks } = ringClosure(ring);
    // On a square, the residuals of the best plane are +t, -t, +t, -t.
    const saddle = Math.abs(heights[0]! - heights[1]! + heights[2]! - heights[3]!) / 2;
    expect(saddle).toBeGreaterThan(0.5);
    expect(outOfFlat).toBeCloseTo(saddle, 1);
    expect(rocks).toBe(true);
    expect(ringClosure({ ...ring, pieces: pieces.slice(0, 3).map((s) => ({ ...s })) }).rocks).toBe(false);
  });
});

describe("the law of first order", () => {
  test("the open angle is -2n (cos s dm + cos m sin s db), and what it leaves shrinks as the square", () => {
    const errors = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 24 }), workableSlope, errors, errors, (sides, slope, dm, db) => {
        const cut = compoundMiter({ sides, slope });
        const left = (share: number): number => {
          const off = { miter: cut.miter + share * dm, bevel: cut.bevel + share * db };
          const piece = { length: 100, start: off, end: off };
          const { angle } = ringClosure({ pieces: Array.from({ length: sides }, () => piece), at: 0, width: 20 });
          const law =
            -2 *
            sides *
            share *
            (Math.cos(slope * RADIAN) * dm + Math.cos(cut.miter * RADIAN) * Math.sin(slope * RADIAN) * db);
          return Math.abs(angle - law);
        };
        // Second derivatives of the turn are at most of the order of 1 / sin h per radian, for each of n joints.
        const most = (share: number): number => (4 * sides * share * share * RADIAN) / Math.sin(Math.PI / sides);
        for (const share of [1, 0.1, 0.01]) expect(left(share)).toBeLessThan(most(share) + 1e-10);
      }),
    );
  });

  test("errors of miter and bevel can cancel in the joint and leave only the slope wrong", () => {
    const cut = compoundMiter({ sides: 8, slope: 45 });
    const db = -1 / Math.cos(cut.miter * RADIAN);
    const off = { miter: cut.miter + 0.1, bevel: cut.bevel + 0.1 * db };
    const piece = { length: 100, start: off, end: off };
    const closure = ringClosure({ pieces: Array.from({ length: 8 }, () => piece), at: "inside", width: 40 });
    expect(Math.abs(closure.angle)).toBeLessThan(0.01);
    expect(closure.slope - 45).toBeLessThan(-0.3);
    // Of the same size, but not opposite: the ring is open by more than a hundred times that.
    const same = { miter: cut.miter + 0.1, bevel: cut.bevel - 0.1 * db };
    const wide = { length: 100, start: same, end: same };
    expect(
      Math.abs(ringClosure({ pieces: Array.from({ length: 8 }, () => wide), at: "inside", width: 40 }).angle),
    ).toBeGreaterThan(1);
  });
});

describe("laws", () => {
  test("pieces without an error close, at their slope", () => {
    fc.assert(
      fc.property(evenlyFlawed, (flawed) => {
        const closure = ringClosure(measuredRing(flawed, 0));
        expect(closure.angle).toBeCloseTo(0, 10);
        expect(closure.opens).toBe("nowhere");
        expect(closure.slope).toBeCloseTo(flawed.slope, 9);
        for (const gap of [...Object.values(closure.openGap), ...Object.values(closure.vector)]) {
          expectLength(gap, 0, flawed);
        }
      }),
    );
  });

  test("a ring of rails and stiles that slope differently closes as it was joined", () => {
    const [side, end] = [
      { slope: 60, thickness: 18 },
      { slope: 45, thickness: 18 },
    ];
    const one = joinCorner({ turn: 90, first: side, second: end });
    const two = joinCorner({ turn: 90, first: end, second: side });
    const long = { length: 400, start: two.second, end: one.first };
    const short = { length: 250, start: one.second, end: two.first };
    const closure = ringClosure({ pieces: [long, short, long, short], at: "inside", width: 18 });
    expect(closure.angle).toBeCloseTo(0, 10);
    expect(closure.slopes.map((slope) => Number(slope.toFixed(9)))).toEqual([60, 45, 60, 45]);
    expect(Math.hypot(closure.vector.along, closure.vector.out, closure.vector.up)).toBeLessThan(1e-9);
    expect(closure.rocks).toBe(false);
  });

  test("in a mirror the ring opens by the same angle and the same gaps", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (flawed) => {
        const ring = measuredRing(flawed);
        const [one, other] = [ringClosure(ring), ringClosure({ ...ring, pieces: inMirror(ring.pieces) })];
        expect(other.angle).toBeCloseTo(one.angle, 9);
        expect(other.tilt).toBeCloseTo(one.tilt, 9);
        expect(other.roll).toBeCloseTo(-one.roll, 9);
        expect(other.jointGap).toBeCloseTo(one.jointGap, 8);
        expectLength(other.openGap.inside, one.openGap.inside, flawed);
        expectLength(other.openGap.outside, one.openGap.outside, flawed);
        expectLength(other.vector.along, one.vector.along, flawed);
        expectLength(other.vector.out, -one.vector.out, flawed);
        expectLength(other.vector.up, -one.vector.up, flawed);
        expectLength(other.outOfFlat, one.outOfFlat, flawed);
      }),
    );
  });

  test("in a flat frame opposite errors open opposite ends by the same angle", () => {
    fc.assert(
      fc.property(unevenlyFlawed, (flawed) => {
        const flat = flattened(flawed);
        expect(ringClosure(measuredRing(flat, -1)).angle).toBeCloseTo(-ringClosure(measuredRing(flat)).angle, 9);
      }),
    );
  });

  test("scaling by a power of two scales every length exactly and leaves every angle", () => {
    fc.assert(
      fc.property(unevenlyFlawed, fc.integer({ min: -60, max: 60 }), (flawed, power) => {
        const factor = 2 ** power;
        const ring = measuredRing(flawed);
        const one = ringClosure(ring);
        const scaled = ringClosure({
          ...ring,
          at: typeof ring.at === "number" ? ring.at * factor : ring.at,
          width: ring.width * factor,
          pieces: ring.pieces.map((piece) => ({ ...piece, length: piece.length * factor })),
        });
        expect(scaled.angle).toBe(one.angle);
        expect(scaled.slopes).toEqual(one.slopes);
        expect(scaled.openGap.inside).toBe(one.openGap.inside * factor + 0);
        expect(scaled.vector.out).toBe(one.vector.out * factor + 0);
        expect(scaled.jointGap).toBe(one.jointGap * factor);
        expect(scaled.outOfFlat).toBe(one.outOfFlat * factor);
      }),
    );
  });

  test("only the sum of a joint's two bevels counts, and in a flat frame only the sum of its two miters", () => {
    fc.assert(
      fc.property(unevenlyFlawed, fc.nat(), fc.double({ min: -3, max: 3, noNaN: true }), (flawed, pick, by) => {
        const ring = measuredRing(flawed);
        const whole = ringClosure(ring);
        // All joints but the last are tight: nothing tells how the fold is shared by the two ends.
        const tight = pick % (flawed.sides - 1);
        const folded = ringClosure({ ...ring, pieces: shifted(ring.pieces, tight, "bevel", by) });
        expect(folded.angle).toBeCloseTo(whole.angle, 9);
        expect(folded.tilt).toBeCloseTo(whole.tilt, 9);
        expectLength(folded.openGap.inside, whole.openGap.inside, flawed);
        expectLength(folded.openGap.outside, whole.openGap.outside, flawed);
        const joint = pick % flawed.sides;
        const bevels = ringClosure({ ...ring, pieces: shifted(ring.pieces, joint, "bevel", by) });
        expect(bevels.angle).toBeCloseTo(whole.angle, 9);

        const flat = flattened(flawed);
        const level = measuredRing(flat);
        const miters = ringClosure({ ...level, pieces: shifted(level.pieces, joint, "miter", by) });
        expect(miters.angle).toBeCloseTo(ringClosure(level).angle, 9);
        expect(miters.jointGap).toBeCloseTo(ringClosure(level).jointGap, 9);
      }),
    );
  });

  test("in a splayed ring a difference of a joint's two miters shows in the gap only to second order", () => {
    fc.assert(
      fc.property(evenlyFlawed, fc.nat(), fc.constantFrom(1, 0.1, 0.01), (flawed, pick, by) => {
        const ring = measuredRing(flawed, 0);
        const { angle } = ringClosure({ ...ring, pieces: shifted(ring.pieces, pick % flawed.sides, "miter", by) });
        expect(Math.abs(angle)).toBeLessThan(2 * flawed.sides * by * by * RADIAN + 1e-9);
      }),
    );
  });

  test("renumbering the pieces leaves the open angle: exactly in flat and in even rings, else to second order", () => {
    fc.assert(
      fc.property(unevenlyFlawed, evenlyFlawed, fc.nat(), (uneven, even, pick) => {
        const around = (flawed: FlawedRing, share = 1): number => {
          const ring = measuredRing(flawed, share);
          const moved = ringClosure({ ...ring, pieces: renumbered(ring.pieces, pick % flawed.sides) });
          return Math.abs(moved.angle - ringClosure(ring).angle);
        };
        const flat = flattened(uneven);
        expect(around(flat)).toBeLessThan(1e-9);
        expect(around(even)).toBeLessThan(1e-9);
        for (const share of [1, 0.1, 0.01]) {
          const error = uneven.sides * share;
          expect(around(uneven, share)).toBeLessThan(error * error * RADIAN + 1e-9);
        }
      }),
    );
  });

  test("where only lengths are off, the closing vector is as long wherever the ring is left open", () => {
    fc.assert(
      fc.property(unevenlyFlawed, fc.nat(), (flawed, pick) => {
        const exact = { miter: 0, bevel: 0 };
        const errors = flawed.errors.map(({ length }) => ({ length, start: exact, end: exact }));
        const ring = measuredRing({ ...flawed, errors });
        const size = (pieces: MeasuredRing["pieces"]): number => {
          const { along, out, up } = ringClosure({ ...ring, pieces }).vector;
          return Math.hypot(along, out, up);
        };
        expectLength(size(renumbered(ring.pieces, pick % flawed.sides)), size(ring.pieces), flawed);
      }),
    );
  });

  test("results survive JSON, and nothing that is passed in is written to", () => {
    const flawed: FlawedRing = {
      sides: 5,
      slope: 20,
      length: 300,
      width: 40,
      at: "outside",
      errors: Array.from({ length: 5 }, (_, index) => ({
        start: { miter: index / 10, bevel: 0.1 },
        end: { miter: 0, bevel: -index / 20 },
        length: 0.001,
      })),
    };
    const ring = frozen(measuredRing(flawed));
    const closure = ringClosure(ring);
    expect(JSON.parse(JSON.stringify(closure))).toEqual(closure);
    expect(ringClosure(JSON.parse(JSON.stringify(ring)) as MeasuredRing)).toEqual(closure);
  });
});

describe("hard cases", () => {
  test.each(HARD_RINGS)("$why", ({ ring, angle, slope }) => {
    const closure = ringClosure(ring);
    expect(numbersIn(closure).every(isClean)).toBe(true);
    if (angle !== undefined) expect(closure.angle).toBeCloseTo(angle, 9);
    if (slope !== undefined) expect(closure.slope).toBeCloseTo(slope, 9);
  });
});

const CUT = { miter: 45, bevel: 0 };
const PIECE = { length: 100, start: CUT, end: CUT };
const SQUARE = { pieces: [PIECE, PIECE, PIECE, PIECE], at: "inside", width: 20 };

test.each([
  [null, "Expected `options` to be an object, got null"],
  [{ ...SQUARE, pieces: undefined }, "Expected `pieces` to be an array of 3 to 1000 pieces, got undefined"],
  [{ ...SQUARE, pieces: [PIECE, PIECE] }, "Expected `pieces` to be an array of 3 to 1000 pieces, got an array of 2"],
  [
    { ...SQUARE, pieces: [PIECE, PIECE, { ...PIECE, length: 0 }] },
    "Expected `pieces[2].length` to be a positive length (1e-100 to 1e100), got 0 (number)",
  ],
  [
    { ...SQUARE, pieces: [PIECE, { ...PIECE, end: undefined }, PIECE] },
    "Expected `pieces[1].end` to be an object, got undefined",
  ],
  [
    { ...SQUARE, pieces: [{ ...PIECE, start: { miter: 90, bevel: 0 } }, PIECE, PIECE] },
    "Expected `pieces[0].start.miter` to be a number between -90 and 90, bounds excluded, got 90 (number)",
  ],
  [
    { ...SQUARE, pieces: [{ ...PIECE, end: { miter: 45, bevel: "0" } }, PIECE, PIECE] },
    'Expected `pieces[0].end.bevel` to be a number between -90 and 90, bounds excluded, got "0" (string)',
  ],
  [
    { ...SQUARE, at: "middle" },
    'Expected `at` to be "inside", "outside" or a level distance from the inside, got "middle" (string)',
  ],
  [
    { ...SQUARE, at: undefined },
    'Expected `at` to be "inside", "outside" or a level distance from the inside, got undefined',
  ],
  [{ ...SQUARE, at: 1e101 }, "Expected `at` to be a finite distance (-1e100 to 1e100), got 1e+101 (number)"],
  [{ ...SQUARE, width: -1 }, "Expected `width` to be a positive length (1e-100 to 1e100), got -1 (number)"],
  [{ ...SQUARE, slope: 91 }, "Expected `slope` to be degrees from -90 to 90, got 91 (number)"],
])("ringClosure refuses %j", (options, message) => {
  expect(() => ringClosure(options as never)).toThrow(message);
});
