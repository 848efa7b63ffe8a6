import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { machineErrors, ringClosure, type StickMove } from "miterwright/closure";
import { compoundMiter, type SawSetting } from "miterwright/miter";
import { frozen } from "../laws/closure.js";
import { planeFromWords } from "../laws/saw.js";
import { assemble, RADIAN } from "./assemble.js";

type Hand = "left" | "right";
const HANDS: readonly Hand[] = ["left", "right"];
const MOVES: readonly StickMove[] = ["flip-end-for-end", "slide-past-the-blade", "roll", "tumble"];
const other = (hand: Hand): Hand => (hand === "left" ? "right" : "left");

/** How a piece lies, and which side of the blade is kept. */
interface Lying {
  readonly down: "back" | "face";
  readonly atFence: "outer-edge" | "sight-edge";
  readonly kept: Hand;
}

/** What each move does to the piece, as its words say. */
function moved({ down, atFence, kept }: Lying, move: StickMove): Lying {
  const swapped = atFence === "outer-edge" ? "sight-edge" : "outer-edge";
  if (move === "flip-end-for-end") return { down, atFence: swapped, kept };
  if (move === "slide-past-the-blade") return { down, atFence, kept: other(kept) };
  if (move === "roll") return { down: "face", atFence: swapped, kept: other(kept) };
  return { down: "face", atFence, kept };
}

interface Flaws {
  readonly square: number;
  readonly swing: number;
  readonly upright: number;
  readonly lean: number;
}
const SOUND: Flaws = { square: 0, swing: 0, upright: 0, lean: 0 };

/** What the blade cuts when gauge and blade are set to these hands and the machine has these flaws. */
function sawn(lying: Lying, cut: SawSetting, hands: readonly [Hand, Hand], flaws: Flaws): SawSetting {
  const signed = (degrees: number, hand: Hand): number => (hand === "left" ? degrees : -degrees);
  const said = (toLeft: number): { degrees: number; toward: Hand } => ({
    degrees: Math.abs(toLeft),
    toward: toLeft < 0 ? "right" : "left",
  });
  const isLeaning = cut.bevel !== 0;
  const { along, across, through } = planeFromWords({
    ...lying,
    cradled: false,
    fence: "near",
    slope: 0,
    miter: said(signed(Math.abs(cut.miter) + flaws.swing, hands[0]) + flaws.square),
    bevel: said((isLeaning ? signed(Math.abs(cut.bevel) + flaws.lean, hands[1]) : 0) + flaws.upright),
  });
  return {
    miter: Math.atan2(-across, Math.abs(along)) / RADIAN,
    bevel: Math.atan2(through, Math.hypot(along, across)) / RADIAN,
  };
}

/** Sets the saw the way a person does: to the hands for which a sound machine cuts what is wanted. */
function cutWith(lying: Lying, cut: SawSetting, flaws: Flaws): { error: SawSetting; hands: readonly [Hand, Hand] } {
  const settings = HANDS.flatMap((gauge) => HANDS.map((blade) => [gauge, blade] as const));
  const hands = settings.find((setting) => {
    const made = sawn(lying, cut, setting, SOUND);
    return Math.abs(made.miter - cut.miter) + Math.abs(made.bevel - cut.bevel) < 1e-6;
  })!;
  const made = sawn(lying, cut, hands, flaws);
  return { error: { miter: made.miter - cut.miter, bevel: made.bevel - cut.bevel }, hands };
}

const flaw = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const anyFlaws = fc.record({ square: flaw, swing: flaw, upright: flaw, lean: flaw });
const given = {
  sides: fc.integer({ min: 3, max: 12 }),
  slope: fc.constantFrom(0, 25, 50, -35),
  move: fc.constantFrom(...MOVES),
  kept: fc.constantFrom(...HANDS),
};

/** The first cut: the piece on its back, its end at the blade. */
function first(kept: Hand): Lying {
  // The piece runs to the right when its end is cut and the left is kept; then its outer edge is the nearer one.
  return { down: "back", atFence: kept === "left" ? "outer-edge" : "sight-edge", kept };
}

describe("against a saw made of vectors, and a piece moved by the words", () => {
  test("both ends are off by what is said", () => {
    fc.assert(
      fc.property(fc.record(given), anyFlaws, ({ sides, slope, move, kept }, flaws) => {
        const { miter, bevel } = compoundMiter({ sides, slope });
        const { end, start, joint } = machineErrors({ sides, slope, move, kept, ...flaws });
        const lying = first(kept);
        const [ending, starting] = [lying, moved(lying, move)].map(
          (one) => cutWith(one, { miter, bevel }, flaws).error,
        );
        for (const angle of ["miter", "bevel"] as const) {
          expect(end[angle]).toBeCloseTo(ending![angle], 9);
          expect(start[angle]).toBeCloseTo(starting![angle], 9);
          expect(joint[angle]).toBeCloseTo(ending![angle] + starting![angle], 9);
        }
      }),
    );
  });

  test("the gauge is swung over for flip and slide, the blade for slide and tumble, and nothing is set anew for a roll", () => {
    const cut = compoundMiter({ sides: 6, slope: 30 });
    const reset = MOVES.map((move) => {
      const [a, b] = [first("left"), moved(first("left"), move)].map((one) => cutWith(one, cut, SOUND).hands);
      return [move, a![0] !== b![0], a![1] !== b![1]];
    });
    expect(reset).toEqual([
      ["flip-end-for-end", true, false],
      ["slide-past-the-blade", true, true],
      ["roll", false, false],
      ["tumble", false, true],
    ]);
  });

  test("rings cut so open and dish as is said, put together in space", () => {
    fc.assert(
      fc.property(fc.record(given), anyFlaws, ({ sides, slope, move, kept }, flaws) => {
        const { miter, bevel } = compoundMiter({ sides, slope });
        const small = Object.fromEntries(Object.entries(flaws).map(([name, value]) => [name, value / 100]));
        const result = machineErrors({ sides, slope, move, kept, ...small });
        const off = (error: SawSetting): SawSetting => ({ miter: miter + error.miter, bevel: bevel + error.bevel });
        const piece = { length: 200, start: off(result.start), end: off(result.end) };
        const section = { slope, at: 0, width: 30, wood: { width: 40, thickness: 15 } };
        const open = assemble(
          Array.from({ length: sides }, () => piece),
          Array.from({ length: sides }, () => section),
        );
        expect(Math.abs(result.angle - open.angle)).toBeLessThan(1e-4 * sides);
        const mean = open.slopes.reduce((sum, one) => sum + one / sides, 0);
        expect(Math.abs(result.slopeOff - (mean - slope))).toBeLessThan(1e-4 * sides);
        expect(Math.abs(result.step * 200 + open.vector.up)).toBeLessThan(1e-3 * sides);
      }),
    );
  });
});

describe("errors told apart by how the piece was moved", () => {
  test("only what adds in the joint is said to add", () => {
    for (const move of MOVES) {
      for (const slope of [0, 30]) {
        const one = (name: keyof Flaws): SawSetting => machineErrors({ sides: 6, slope, move, [name]: 0.1 }).joint;
        const { effect } = machineErrors({ sides: 6, slope, move });
        expect(effect.square).toBe(one("square").miter === 0 ? "cancels" : "adds");
        expect(effect.swing).toBe(one("swing").miter === 0 ? "cancels" : "adds");
        expect(effect.upright).toBe(one("upright").bevel === 0 ? "cancels" : "adds");
        expect(effect.lean).toBe(one("lean").bevel === 0 ? "idle" : "adds");
      }
    }
  });

  test("a blade off upright dishes a flat frame cut by flips, and a frame cut by slides closes flat all the same", () => {
    const dished = machineErrors({ sides: 4, move: "flip-end-for-end", upright: 0.5 });
    expect(dished.slopeOff).toBeCloseTo(0.5 / Math.SQRT1_2, 2);
    const level = machineErrors({ sides: 4, move: "slide-past-the-blade", upright: 0.5 });
    expect([level.slopeOff, level.joint.bevel]).toEqual([0, 0]);
    const off = (error: SawSetting): SawSetting => ({ miter: 45 + error.miter, bevel: error.bevel });
    const piece = { length: 200, start: off(level.start), end: off(level.end) };
    const ring = ringClosure({ pieces: [piece, piece, piece, piece], at: "inside", width: 30 });
    expect(ring.angle).toBeCloseTo(0, 12);
    expect(ring.rocks).toBe(false);
  });

  test("survives JSON and writes to nothing", () => {
    const result = machineErrors(frozen({ sides: 7, move: "flip-end-for-end", slope: 10, lean: 0.2 }));
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

test.each([
  [[], "Expected `options` to be an object, got an empty array"],
  [{ sides: 2, move: "flip-end-for-end" }, "Expected `sides` to be an integer from 3 to 1000000, got 2 (number)"],
  [
    { sides: 6 },
    'Expected `move` to be one of "flip-end-for-end", "slide-past-the-blade", "roll", "tumble", got undefined',
  ],
  [
    { sides: 6, move: "turn" },
    'Expected `move` to be one of "flip-end-for-end", "slide-past-the-blade", "roll", "tumble", got "turn" (string)',
  ],
  [
    { sides: 6, move: "flip-end-for-end", kept: "both" },
    'Expected `kept` to be one of "left", "right", got "both" (string)',
  ],
  [{ sides: 6, move: "flip-end-for-end", slope: 91 }, "Expected `slope` to be degrees from -90 to 90, got 91 (number)"],
  [{ sides: 6, move: "flip-end-for-end", square: 6 }, "Expected `square` to be degrees from -5 to 5, got 6 (number)"],
  [{ sides: 6, move: "flip-end-for-end", swing: "1" }, 'Expected `swing` to be degrees from -5 to 5, got "1" (string)'],
  [
    { sides: 6, move: "flip-end-for-end", upright: NaN },
    "Expected `upright` to be degrees from -5 to 5, got NaN (number)",
  ],
  [{ sides: 6, move: "flip-end-for-end", lean: -5.1 }, "Expected `lean` to be degrees from -5 to 5, got -5.1 (number)"],
])("machineErrors refuses %j", (options, message) => {
  expect(() => machineErrors(options as never)).toThrow(message);
});
