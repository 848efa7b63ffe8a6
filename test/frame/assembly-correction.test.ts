import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { correctSetting, ringClosure } from "miterwright/closure";
import { correctFromGap, planFrame, type FramePlan, type ProfileBrief, type SeenGap } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { correctionLines } from "miterwright/words";
import { deepFreeze, plain, throughJson } from "./briefs.js";
import { sawnFrame, SOUND, type Flaws } from "./sawn-frame.js";

/** Stock as thick as wide, which stands on either edge. */
const post = molding({ width: 40, thickness: 40 });
const WIDE = { left: 70, right: 70, step: 0.5 };
/** A blade that leans one way, so that sticks are flipped, and one that leans both ways, so that they slide. */
const FLIPS: Saw = tableSaw({
  miter: { ...WIDE, reads: "from-square" },
  bevel: { ...WIDE, right: 0, reads: "from-vertical" },
});
const SLIDES: Saw = miterSaw({ miter: { ...WIDE, reads: "from-square" }, bevel: { ...WIDE, reads: "from-vertical" } });

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 8, profile: post, opening: { side: 300 }, ...changes } as ProfileBrief);
}

const flaw = fc.double({ min: -0.25, max: 0.25, noNaN: true });
const flaws = fc.record({ square: fc.constant(0), swing: flaw, upright: flaw, lean: flaw });

describe.each(["flat", "propped", "sight-edge-down", "outer-edge-down", "face-down"] as const)(
  "a frame cut %s",
  (lay) => {
    describe.each([
      ["flip-end-for-end", FLIPS],
      ["slide-past-the-blade", SLIDES],
    ] as const)("with a %s between its ends", (move, saw) => {
      /** Cuts a frame on a flawed saw, looks, corrects, cuts again on the same saw: what it gaped, and what it gapes then. */
      function twice(
        brief: Partial<ProfileBrief>,
        machine: Flaws,
        hold?: SeenGap["hold"],
      ): { plan: FramePlan; before: number; after: number; slope: number; said: number } | undefined {
        const plan = planOf({ ...brief, lay, saw });
        const result = plan.sawing.lay;
        if (result === null) return undefined;
        expect(result.first.kept === result.second.kept ? "flip-end-for-end" : "slide-past-the-blade").toBe(move);
        // A scale at 0 is not used. Where the correction leaves 0, the scale's own error would come in anew, and be seen in the next ring.
        const { miter, bevel } = result.first;
        const flawed = {
          ...machine,
          ...(miter.toward === "none" ? { swing: 0 } : {}),
          ...(bevel.toward === "none" ? { lean: 0 } : {}),
        };
        const seen = sawnFrame(plan, result, flawed);
        // Too narrow to be seen, or to be told from the rounding of the bench.
        if (seen.gap < 0.01) return undefined;
        const corrected = correctFromGap(plan, {
          seenGap: seen.gap,
          open: seen.angle > 0 ? "outside" : "inside",
          slope: seen.slope,
          shown: { miter: miter.reading, bevel: bevel.reading },
          ...(hold === undefined ? {} : { hold }),
        });
        const again = sawnFrame(plan, corrected, flawed);
        return { plan, before: seen.gap, after: again.gap, slope: again.slope, said: corrected.slope };
      }

      test("and corrected gapes by less than a hundredth of what it did, at the slope that was planned", () => {
        let seen = 0;
        fc.assert(
          fc.property(
            fc.integer({ min: 3, max: 14 }),
            fc.constantFrom(0, 15, 30, 45, 60, -30),
            flaws,
            (sides, slope, flawed) => {
              // A flat frame that lies flat is cut with the blade upright; off upright it dishes, and no setting of the gauge undoes it.
              const result = twice({ sides, slope }, flawed);
              if (result === undefined) return;
              seen += 1;
              expect(result.after / result.before).toBeLessThan(0.01);
              expect(Math.abs(result.slope - slope)).toBeLessThan(0.02);
              expect(result.said).toBe(slope);
            },
          ),
          { numRuns: 50 },
        );
        expect(seen).toBeGreaterThan(5);
      });

      test("and corrected in one angle alone gapes as little, at the slope that is said", () => {
        fc.assert(
          fc.property(
            fc.integer({ min: 4, max: 12 }),
            fc.constantFrom(20, 30, 50, -30),
            fc.constantFrom("bevel" as const, "miter" as const),
            flaws,
            (sides, slope, hold, flawed) => {
              // Propped, the miter does all the turning; there only the slope can be held.
              if (lay === "propped") return;
              const result = twice({ sides, slope }, flawed, hold);
              if (result === undefined) return;
              expect(result.after / result.before).toBeLessThan(0.01);
              expect(Math.abs(result.slope - result.said)).toBeLessThan(0.02);
            },
          ),
          { numRuns: 30 },
        );
      });
    });
  },
);

describe("pieces that were cut at graduations that are off", () => {
  /** An octagon of boards 6 x 3/4 in at 75 degrees, whose exact angles are 6.119 and 21.694. */
  const planter = planFrame({
    sides: 8,
    slope: 75,
    lay: "flat",
    profile: molding({ width: 6, thickness: 0.75 }),
    opening: { acrossFlats: 20 },
    unit: "in",
  });
  const atGraduations = { miter: 6.5, bevel: 21.5 };
  const piece = { length: 10, start: atGraduations, end: atGraduations };
  const ring = ringClosure({
    pieces: Array.from({ length: 8 }, () => piece),
    at: "outside",
    width: planter.assembly.jointWidth,
  });
  const gaping = { seenGap: ring.jointGap, open: ring.opens as "outside" };

  test("stand at the slope of the graduations, and lead back to the exact setting with nothing but the gap said", () => {
    expect(planter.sawing.graduations!.best).toMatchObject(atGraduations);
    expect(ring.slope.toFixed(2)).toBe("73.97");
    const { first, second, slope, cut } = correctFromGap(planter, gaping);
    for (const { miter, bevel } of [first, second]) {
      expect(Math.abs(miter.reading - 6.119)).toBeLessThan(0.01);
      expect(Math.abs(bevel.reading - 21.694)).toBeLessThan(0.01);
    }
    expect(slope).toBe(75);
    expect(Math.abs(cut.miter)).toBeCloseTo(6.5, 6);
    expect(Math.abs(cut.bevel)).toBeCloseTo(21.5, 6);
  });

  test("in every lay, with scales that read either way, as well as where it is said what they showed", () => {
    const down: Saw = miterSaw({
      miter: { ...WIDE, reads: "from-fence" },
      bevel: { ...WIDE, reads: "from-table" },
    });
    let seen = 0;
    for (const lay of ["flat", "propped", "sight-edge-down", "outer-edge-down", "face-down"] as const) {
      for (const saw of [FLIPS, SLIDES, down]) {
        for (const [sides, slope] of [
          [7, 20],
          [8, 50],
          [9, -35],
          [5, 70],
        ] as const) {
          const plan = planOf({ sides, slope, lay, saw });
          const result = plan.sawing.lay;
          if (result === null) continue;
          const best = plan.sawing.graduations!.best;
          if (best.jointGap < 1e-6) continue;
          const open = best.opens === "inside" ? "inside" : "outside";
          for (const shown of [undefined, { miter: best.miter, bevel: best.bevel }]) {
            const corrected = correctFromGap(plan, { seenGap: best.jointGap, open, shown });
            expect(corrected.first.miter.reading).toBeCloseTo(result.first.miter.reading, 6);
            expect(corrected.first.bevel.reading).toBeCloseTo(result.first.bevel.reading, 6);
            expect(corrected.slope).toBe(slope);
          }
          seen += 1;
        }
      }
    }
    expect(seen).toBeGreaterThan(20);
  });

  test("and do not gape are left as they are, with or without an end that is open", () => {
    const kept = correctFromGap(planter, { seenGap: 0 });
    expect(kept).toEqual(correctFromGap(planter, { seenGap: 0, open: "inside" }));
    expect([kept.angle, kept.perJoint, kept.correction]).toEqual([0, 0, { miter: 0, bevel: 0 }]);
    expect([kept.first.miter.reading, kept.first.bevel.reading]).toEqual([6.5, 21.5]);
    expect(kept.slope.toFixed(2)).toBe("73.97");
    expect(correctionLines(kept)).toEqual([
      "No gap: the inside angles of the corners are right.",
      "Miter: leave it.",
      "Bevel: leave it.",
      "The frame then closes at a slope of 73.966°.",
    ]);
    // Where the slope was looked at, it is brought back; where one is wanted, it is gone to.
    const back = correctFromGap(planter, { seenGap: 0, slope: 74 });
    expect(back.slope).toBe(75);
    expect(back.correction.miter).toBeLessThan(-0.3);
    expect(correctFromGap(planter, { seenGap: 0, hold: 75 }).slope).toBe(75);
    expect(correctSetting({ sides: 8, width: 6, seenGap: 0, slope: 75 })).toMatchObject({
      angle: 0,
      correction: { miter: 0, bevel: 0 },
      slope: 75,
    });
  });
});

describe("a correction", () => {
  const seen: SeenGap = { seenGap: 1.2, open: "outside" };

  test("of sticks that lie flat is that of correctSetting", () => {
    const plan = planOf({ slope: 30, lay: "flat" });
    const { correction, cut, slope } = correctFromGap(plan, { ...seen, slope: 29.5 });
    const plainly = correctSetting({ sides: 8, width: plan.assembly.jointWidth, ...seen, slope: 29.5, hold: 30 });
    expect([correction, cut, slope]).toEqual([plainly.correction, plainly.cut, 30]);
  });

  test("starts from what the scales showed", () => {
    const plan = planOf({ slope: 30, lay: "flat" });
    const { miter, bevel } = plan.sawing.graduations!.best;
    const usual = correctFromGap(plan, seen);
    const marked = correctFromGap(plan, { ...seen, shown: { miter, bevel } });
    const { first } = plan.sawing.lay!;
    // Nothing said, the scales stood at the best graduations; a slope that is said does not follow from them.
    expect(marked).toEqual(usual);
    const planned = { ...seen, slope: 30 };
    const exact = correctFromGap(plan, {
      ...planned,
      shown: { miter: first.miter.reading, bevel: first.bevel.reading },
    });
    const moved = correctFromGap(plan, planned);
    expect(moved.first.miter.reading - exact.first.miter.reading).toBeCloseTo(miter - first.miter.reading, 12);
    expect(moved.first.bevel.reading - exact.first.bevel.reading).toBeCloseTo(bevel - first.bevel.reading, 12);
  });

  test("is read on scales that run down from 90, with the direction in words", () => {
    const down = miterSaw({
      miter: { left: 60, right: 60, reads: "from-fence", step: 0.5 },
      bevel: { left: 45, right: 45, reads: "from-table", step: 0.5 },
    });
    const [up, reversed] = [miterSaw(), down].map((saw) =>
      correctFromGap(planOf({ slope: 30, saw, lay: "flat" }), seen),
    );
    expect(reversed!.first.miter.reading).toBeCloseTo(90 - up!.first.miter.reading, 12);
    expect(correctionLines(up!)).toEqual([
      "Open outside: the inside angles of the corners are too large, so the ring does not come round.",
      "Miter: 0.211° less, nearer to a square cut.",
      "Bevel: 0.558° more, the blade leaning further over.",
      "The miter scale then shows 19.789° instead of 20°.",
      "The bevel scale then shows 11.058° instead of 10.5°.",
    ]);
    expect(correctionLines(reversed!).slice(3)).toEqual([
      "The miter scale then shows 70.211° instead of 70°.",
      "The bevel scale then shows 78.942° instead of 79.5°.",
    ]);
    const shown = { miter: down.miter.step * 141, bevel: 79 };
    expect(
      correctionLines(correctFromGap(planOf({ slope: 30, saw: down, lay: "flat" }), { ...seen, shown }))[3],
    ).toMatch(/instead of 70.5°/);
  });

  test("may take the gauge through 0 to the other hand: a box that leans past upright, cut standing", () => {
    const plan = planOf({ sides: 4, slope: 0, lay: "outer-edge-down", saw: SLIDES });
    const corrected = correctFromGap(plan, { ...seen, slope: 1 });
    const { first } = corrected;
    expect(plan.sawing.lay!.first.miter.toward).toBe("none");
    expect(first.miter.degrees).toBeGreaterThan(0.5);
    expect(correctionLines(corrected).some((line) => line.startsWith("The miter scale then shows"))).toBe(true);
    const tilted = planOf({ sides: 4, slope: 0.5, lay: "outer-edge-down", saw: SLIDES });
    expect(tilted.sawing.lay!.first.miter.toward).toBe("right");
    expect(correctionLines(correctFromGap(tilted, { ...seen, slope: -2 }))).toContainEqual(
      expect.stringMatching(/^The miter scale then shows .*/),
    );
  });

  test("says what the saw cannot do", () => {
    const tight = tableSaw({ miter: { left: 22.5, right: 22.5, reads: "from-square", step: 0.5 } });
    const { first } = correctFromGap(planOf({ saw: tight }), seen);
    expect(first.obstacles.map(({ code }) => code)).toEqual(["miter-range-left"]);
  });

  test("scales, mirrors, survives JSON and writes to nothing", () => {
    const plan = planOf({ slope: 25, lay: "flat" });
    const result = correctFromGap(deepFreeze(plan), deepFreeze({ ...seen, slope: 24 }));
    expect(throughJson(result)).toEqual(result);
    expect(correctFromGap(throughJson(plan), { ...seen, slope: 24 })).toEqual(result);
    const large = planOf({
      slope: 25,
      lay: "flat",
      profile: molding({ width: 40 * 1024, thickness: 40 * 1024 }),
      opening: { side: 300 * 1024 },
    });
    expect(correctFromGap(large, { ...seen, seenGap: 1.2 * 1024, slope: 24 }).correction).toEqual(result.correction);
    const down = correctFromGap(planOf({ slope: -25, lay: "flat" }), { ...seen, slope: -24 });
    expect(down.correction.miter).toBeCloseTo(result.correction.miter, 12);
    expect(down.correction.bevel).toBeCloseTo(-result.correction.bevel, 12);
  });

  test.each<[string, Partial<ProfileBrief>, number]>([
    ["three sides", { sides: 3, opening: { side: 500 } }, 1],
    ["a thousand", { sides: 1000, opening: { acrossFlats: 1e5 } }, 0.2],
    ["upright", { slope: 90 }, 1],
    ["upright, the sight edge up", { slope: -90 }, 1],
    ["nearly upright", { slope: 89.9 }, 1],
    ["nearly upright, the sight edge up", { slope: -89.9 }, 1],
    ["tiny", { profile: molding({ width: 1e-90, thickness: 1e-90 }), opening: { side: 1e-89 } }, 1e-91],
    ["huge", { profile: molding({ width: 1e90, thickness: 1e90 }), opening: { side: 1e91 } }, 1e89],
  ])("of a frame with %s is finite and small", (_, brief, seenGap) => {
    const plan = planOf({ saw: SLIDES, ...brief });
    for (const open of ["inside", "outside"] as const) {
      const corrected = correctFromGap(plan, { seenGap, open });
      const { correction, first, second, slope } = corrected;
      for (const value of [correction.miter, correction.bevel, first.miter.reading, second.bevel.reading, slope]) {
        expect(Number.isFinite(value) && !Object.is(value, -0)).toBe(true);
      }
      expect(Math.hypot(correction.miter, correction.bevel)).toBeLessThan(1);
      expect(correctionLines(corrected).length).toBeGreaterThan(2);
    }
  });

  const given = planOf({ slope: 30 });
  const nothing = tableSaw({
    miter: { left: 1, right: 1, reads: "from-square", step: 0.5 },
    bevel: { left: 1, right: 0, reads: "from-vertical", step: 0.5 },
  });
  test.each<[unknown, unknown, string]>([
    [null, seen, "Expected `plan` to be an object, got null"],
    [{}, seen, "Expected `plan.geometry` to be an object, got undefined"],
    [{ ...given, sawing: {} }, seen, "Expected `plan.sawing.saw` to be an object, got undefined"],
    [planOf({ saw: nothing }), seen, "Expected `plan` to have a lay that its saw can cut, as no other has a setting"],
    [given, undefined, "Expected `seen` to be an object, got undefined"],
    [
      given,
      { ...seen, seenGap: -1 },
      "Expected `seenGap` to be zero or a positive length (up to 1e100), got -1 (number)",
    ],
    [given, { seenGap: 1 }, 'Expected `open` to be one of "inside", "outside", got undefined'],
    [
      given,
      { ...seen, seenGap: 60 },
      "Expected `seenGap` to be less than the joint is wide, 54.6410161514, got 60 (number)",
    ],
    [given, { ...seen, open: "up" }, 'Expected `open` to be one of "inside", "outside", got "up" (string)'],
    [given, { ...seen, slope: 200 }, "Expected `slope` to be degrees from -180 to 180, got 200 (number)"],
    [given, { ...seen, hold: 91 }, "Expected `hold` to be degrees from -90 to 90, got 91 (number)"],
    [given, { ...seen, hold: "it" }, 'Expected `hold` to be one of "bevel", "miter", got "it" (string)'],
    [
      planOf({ slope: 30, lay: "propped" }),
      { ...seen, hold: "miter" },
      'Expected `hold` to be a slope or "bevel", as in this lay only the miter can close the frame',
    ],
    [
      planOf({ slope: 0, lay: "outer-edge-down", saw: SLIDES }),
      { ...seen, hold: "bevel" },
      'Expected `hold` to be a slope or "miter", as in this lay only the bevel can close the frame',
    ],
    [
      planOf({ slope: 1 }),
      { seenGap: 1, open: "inside", slope: 1, hold: "miter" },
      "Expected `hold` to be a slope, as the miter alone already turns the ring further than it may",
    ],
    [given, { ...seen, shown: { miter: 20 } }, "Expected `shown.bevel` to be degrees from 0 to 90, got undefined"],
    [
      given,
      { ...seen, shown: { miter: 90, bevel: 11 } },
      "Expected `shown` to be readings from which the correction leads to less than 90 degrees, got an object",
    ],
  ])("is refused for %#", (plan, gap, message) => {
    expect(() => correctFromGap(plan as never, gap as never)).toThrow(message);
  });

  test("of a plain molding in its usual lay needs no more than the gap", () => {
    const { first, second } = correctFromGap(planOf({ profile: plain }), { seenGap: 1, open: "inside" });
    expect(first.miter.reading).toBe(second.miter.reading);
    expect(first.miter.reading).toBeLessThan(22.5);
    expect(SOUND.square).toBe(0);
  });
});
