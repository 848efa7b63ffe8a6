import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { closingPiece, gaugeTolerance, glueUp, halfRings, type MeasuredPiece } from "miterwright/closure";
import { planFrame, type FramePlan, type ProfileBrief, type SawErrors, type SawFault } from "miterwright/frame";
import { compoundMiter } from "miterwright/miter";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { RADIAN } from "../closure/assemble.js";
import { briefs, plain, rabbeted, throughJson } from "./briefs.js";
import { sawnFrame, setTo, SOUND } from "./sawn-frame.js";

const post = molding({ width: 40, thickness: 40 });
const FLIPS: Saw = tableSaw({ bevel: { left: 60, right: 0, reads: "from-vertical", step: 0.5 } });
const SLIDES: Saw = miterSaw({
  miter: { left: 60, right: 60, reads: "from-square", step: 0.5 },
  bevel: { left: 60, right: 60, reads: "from-vertical", step: 0.5 },
});

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 8, profile: plain, opening: { side: 400 }, ...changes } as ProfileBrief);
}

const anyCase = fc.record({
  sides: fc.integer({ min: 4, max: 14 }),
  slope: fc.constantFrom(0, 12, 30, 50, -20),
  lay: fc.constantFrom("flat" as const, "propped" as const, "sight-edge-down" as const, "outer-edge-down" as const),
  saw: fc.constantFrom(FLIPS, SLIDES),
});

describe("the order of gluing", () => {
  test("is that of glueUp, with the bevel blocks and cauls of the frame", () => {
    for (const [sides, slope] of [
      [3, 0],
      [8, 30],
      [9, -20],
      [1000, 10],
    ] as const) {
      const { assembly } = planOf({ sides, slope, opening: { side: 400 } });
      expect(assembly.glueUp).toEqual(glueUp({ sides, slope }));
    }
  });
});

describe("the last joint", () => {
  /** The frame's pieces, lying flat, all cut with the shared error that just gives its gap. */
  function off({ geometry, assembly }: FramePlan, way: 1 | -1): MeasuredPiece[] {
    const { sides, slope, pieces } = geometry;
    const { miter, bevel } = compoundMiter({ turn: (360 - way * assembly.tolerance!.angle) / sides, slope });
    const cut = { miter, bevel };
    return Array.from({ length: sides }, () => ({ length: pieces[0].longest.length, start: cut, end: cut }));
  }
  const ofSlope = (sides: number, slope: number): FramePlan =>
    planOf({ sides, slope, saw: SLIDES, profile: rabbeted, opening: { side: 400 } });

  test.each([4, 6, 8, 10, 12, 40])("of %d sides loses what half rings of such pieces lose", (sides) => {
    for (const slope of [0, 30, -50]) {
      const plan = ofSlope(sides, slope);
      const { lastJoint, jointWidth } = plan.assembly;
      if (lastJoint.made !== "trimmed-halves") throw new Error("an even frame");
      for (const way of [1, -1] as const) {
        const { loss } = halfRings({ pieces: off(plan, way), at: "outside", width: jointWidth, slope });
        expect(lastJoint.loss! / loss).toBeCloseTo(1, 2);
      }
      expect(lastJoint.trim).toBeCloseTo(lastJoint.loss! / 2, 12);
      // Half of the gap, to first order.
      expect(lastJoint.loss! / plan.brief.acceptedGap).toBeCloseTo(0.5, 4);
    }
  });

  test.each([3, 5, 7, 9, 11, 41])("of %d sides takes a closing piece off by what closingPiece says", (sides) => {
    for (const slope of [0, 30, -50]) {
      const plan = ofSlope(sides, slope);
      const { lastJoint, jointWidth } = plan.assembly;
      if (lastJoint.made !== "closing-piece") throw new Error("an odd frame");
      const planned = plan.geometry.pieces[0].longest.length;
      const lengths = ([1, -1] as const).map((way) => {
        const piece = closingPiece({ pieces: off(plan, way).slice(1), at: "outside", width: jointWidth, slope });
        if (!piece.possible) throw new Error(piece.reason);
        return Math.abs(piece.piece.length - planned);
      });
      expect(lastJoint.length!).toBeCloseTo(Math.max(...lengths), 8);
    }
  });
});

describe("the tolerance of the saw", () => {
  test("is gaugeTolerance across the whole joint, where the sticks lie flat", () => {
    const { assembly } = planOf({ profile: rabbeted, slope: 20, lay: "flat" });
    expect(assembly.jointWidth).toBeGreaterThan(planOf({ profile: rabbeted, slope: 20 }).geometry.levelWidth);
    expect(assembly.tolerance).toEqual(
      gaugeTolerance({ sides: 8, width: assembly.jointWidth, acceptedGap: 0.25, slope: 20 }),
    );
  });

  test("set wrong by as much on the scales of any lay, opens by the accepted gap, put together in space", () => {
    fc.assert(
      fc.property(anyCase, fc.constantFrom("miter" as const, "bevel" as const), ({ sides, slope, lay, saw }, name) => {
        const plan = planOf({ sides, slope, lay, saw, profile: post });
        const result = plan.sawing.lay;
        const tolerance = plan.assembly.tolerance?.shared[name] ?? null;
        fc.pre(result !== null && tolerance !== null);
        const { miter, bevel } = result.first;
        const [m, b] = [
          miter.degrees + (name === "miter" ? tolerance : 0),
          bevel.degrees + (name === "bevel" ? tolerance : 0),
        ];
        const { gap } = sawnFrame(plan, { first: setTo(result.first, m, b), second: setTo(result.second, m, b) });
        expect(gap / plan.brief.acceptedGap).toBeCloseTo(1, 0.9);
      }),
      { numRuns: 60 },
    );
  });

  test("does not bound the miter of a stick that stands, nor the bevel of one that is propped", () => {
    const standing = planOf({ lay: "outer-edge-down", profile: post, saw: SLIDES }).assembly.tolerance!;
    expect([standing.shared.miter, standing.shared.bevel === null]).toEqual([null, false]);
    const propped = planOf({ lay: "propped", slope: 30 }).assembly.tolerance!;
    expect([propped.shared.miter === null, propped.shared.bevel]).toEqual([false, null]);
  });

  test("and the rest without a gap narrower than the joint, or without a lay, is null", () => {
    const wide = planFrame({ sides: 9, measured: { levelWidth: 0.25 }, opening: { side: 1e6 } }).assembly;
    expect(wide.tolerance).toBeNull();
    expect(wide.lastJoint).toMatchObject({ made: "closing-piece", length: null, planMiter: null });
    const even = planFrame({ sides: 8, measured: { levelWidth: 0.2 }, opening: { side: 1e6 } }).assembly;
    expect(even.lastJoint).toMatchObject({ made: "trimmed-halves", trim: null, loss: null });
    const low = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 0.5 },
      bevel: { left: 1, right: 0, reads: "from-vertical", step: 0.5 },
    });
    const none = planOf({ saw: low }).assembly;
    expect([none.tolerance, none.sawErrors]).toEqual([null, null]);
    expect(none.lastJoint).toMatchObject({ made: "trimmed-halves" });
    expect(none.glueUp.stages).toHaveLength(3);
  });
});

describe("the faults of a saw", () => {
  const faultOf = ({ faults }: SawErrors, name: SawFault): SawErrors["faults"][number] =>
    faults.find(({ fault }) => fault === name)!;

  test("do to the frame what they do to one that is cut on such a saw and put together in space", () => {
    fc.assert(
      fc.property(
        anyCase,
        fc.constantFrom<SawFault>("square", "swing", "upright", "lean"),
        fc.constantFrom(0.1, -0.1),
        ({ sides, slope, lay, saw }, name, size) => {
          const plan = planOf({ sides, slope, lay, saw, profile: post });
          const result = plan.sawing.lay;
          fc.pre(result !== null);
          const errors = plan.assembly.sawErrors!;
          const { effect, jointGap, slopeOff, step } = faultOf(errors, name);
          const scale = name === "swing" ? result.first.miter : result.first.bevel;
          if (name === "swing" || name === "lean") expect(effect === "idle").toBe(scale.toward === "none");
          if (effect === "idle") return;
          const ring = sawnFrame(plan, result, { ...SOUND, [name]: size });
          const { length } = plan.geometry.pieces[0].longest;
          // Where a tenth of a degree is not small beside the angle that is set, its square shows.
          const square = 0.02 * plan.assembly.jointWidth * RADIAN * sides;
          expect(Math.abs(ring.gap - jointGap)).toBeLessThan(0.03 * jointGap + square);
          expect(Math.abs(Math.abs(ring.slope - slope) - slopeOff)).toBeLessThan(0.05 * slopeOff + 0.01);
          // The simulator's pieces are measured inside, where they are shorter; steps go with the length.
          const measured = plan.geometry.pieces[0].shortest.length;
          expect(Math.abs(Math.abs(ring.vector.up) * (length / measured) - step)).toBeLessThan(
            0.02 * step + 0.02 * sides,
          );
        },
      ),
      { numRuns: 150 },
    );
  });

  const told = (changes: Partial<ProfileBrief>): readonly [SawErrors["move"], ...string[]] => {
    const errors = planOf({ profile: post, ...changes }).assembly.sawErrors!;
    return [errors.move, ...errors.faults.map(({ effect }) => effect)];
  };

  test("add up or cancel by how the stick is moved between its ends", () => {
    expect(told({ saw: FLIPS, slope: 30, lay: "flat" })).toEqual([
      "flip-end-for-end",
      "cancels",
      "adds",
      "adds",
      "adds",
    ]);
    expect(told({ saw: SLIDES, slope: 30, lay: "flat" })).toEqual([
      "slide-past-the-blade",
      "cancels",
      "adds",
      "cancels",
      "adds",
    ]);
    expect(told({ saw: FLIPS, lay: "flat" })).toEqual(["flip-end-for-end", "cancels", "adds", "adds", "idle"]);
    expect(told({ saw: SLIDES, lay: "outer-edge-down" })).toEqual([
      "slide-past-the-blade",
      "cancels",
      "idle",
      "cancels",
      "adds",
    ]);
  });
});

describe("as a whole", () => {
  test("survives JSON, of any frame, and has no NaN, Infinity or -0", () => {
    const visit = (value: unknown, path: string): void => {
      if (typeof value === "number" && (!Number.isFinite(value) || Object.is(value, -0)))
        throw new Error(`${path}: ${value}`);
      if (typeof value === "object" && value !== null)
        for (const [key, inner] of Object.entries(value)) visit(inner, `${path}.${key}`);
    };
    fc.assert(
      fc.property(briefs, (brief) => {
        const { assembly } = planFrame(brief);
        visit(assembly, "assembly");
        expect(throughJson(assembly)).toEqual(assembly);
      }),
      { numRuns: 60 },
    );
  });

  test.each<[string, Partial<ProfileBrief>]>([
    ["three sides", { sides: 3, opening: { side: 500 } }],
    ["a thousand", { sides: 1000, opening: { acrossFlats: 1e5 } }],
    ["upright", { slope: 90 }],
    ["upright, the sight edge up", { slope: -90 }],
    ["nearly upright", { slope: 89.9 }],
    ["nearly upright, the sight edge up", { slope: -89.9 }],
    ["tiny", { profile: molding({ width: 1e-98, thickness: 1e-99 }), opening: { side: 1e-97 }, acceptedGap: 1e-100 }],
    ["huge", { profile: molding({ width: 1e98, thickness: 1e97 }), opening: { side: 1e99 }, acceptedGap: 1e95 }],
    ["a hair of a gap", { acceptedGap: 1e-100 }],
  ])("of a frame with %s is finite and not negative", (_, brief) => {
    const { assembly } = planOf({ saw: SLIDES, ...brief });
    expect(throughJson(assembly)).toEqual(assembly);
    for (const { jointGap, slopeOff, step } of assembly.sawErrors?.faults ?? []) {
      for (const size of [jointGap, slopeOff, step]) expect(size >= 0 && Number.isFinite(size)).toBe(true);
    }
    const { lastJoint, tolerance } = assembly;
    const sizes =
      lastJoint.made === "closing-piece" ? [lastJoint.length, lastJoint.planMiter] : [lastJoint.trim, lastJoint.loss];
    for (const size of sizes) expect(size! >= 0 && Number.isFinite(size)).toBe(true);
    expect(tolerance!.shared.each).toBeGreaterThan(0);
  });

  test("scales with the frame and mirrors with its slope", () => {
    // In one lay: up and down are best cut in different ones, and so are sticks that a usual saw cuts through and those that it does not.
    const one = planOf({ sides: 7, slope: 20, lay: "flat" }).assembly;
    const large = planOf({
      sides: 7,
      slope: 20,
      lay: "flat",
      acceptedGap: 2,
      profile: molding({ width: 320, thickness: 160 }),
      opening: { side: 3200 },
    }).assembly;
    const [a, b] = [one, large].map(({ lastJoint }) => (lastJoint.made === "closing-piece" ? lastJoint.length! : NaN));
    expect(b! / a!).toBeCloseTo(8, 9);
    expect(large.tolerance!.shared.each).toBeCloseTo(one.tolerance!.shared.each, 12);
    for (const [index, fault] of one.sawErrors!.faults.entries()) {
      expect(large.sawErrors!.faults[index]!.jointGap).toBeCloseTo(8 * fault.jointGap, 9);
      expect(large.sawErrors!.faults[index]!.step).toBeCloseTo(8 * fault.step, 9);
    }
    const down = planOf({ sides: 7, slope: -20, lay: "flat" }).assembly;
    for (const [index, fault] of one.sawErrors!.faults.entries()) {
      expect(down.sawErrors!.faults[index]!.jointGap).toBeCloseTo(fault.jointGap, 9);
      expect(down.sawErrors!.faults[index]!.slopeOff).toBeCloseTo(fault.slopeOff, 9);
    }
  });
});
