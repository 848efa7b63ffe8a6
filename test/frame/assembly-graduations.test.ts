import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sawPlan, frameGeometry, planFrame, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw, type Saw } from "miterwright/saw";
import { settingCost } from "miterwright/closure";
import { plain, throughJson } from "./briefs.js";
import { sawnFrame, setTo } from "./sawn-frame.js";

const upright = molding({ width: 40, thickness: 40 });
const WIDE: Saw["bevel"] = { left: 60, right: 60, reads: "from-vertical", step: 0.5 };

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 7, profile: plain, opening: { side: 400 }, ...changes } as ProfileBrief);
}

const lays = fc.constantFrom<Partial<ProfileBrief>>(
  { lay: "flat" },
  { lay: "propped" },
  { lay: "sight-edge-down", profile: upright },
  { lay: "outer-edge-down", profile: upright },
  { lay: "face-down" },
);
const anyCase = fc.record({
  sides: fc.integer({ min: 4, max: 16 }),
  slope: fc.constantFrom(0, 10, 25, 40, 60, -15, -40),
  lay: lays,
  step: fc.constantFrom(0.1, 0.25, 0.5, 1),
});

/** The plan of a case, if its saw can cut it. */
function planCase({
  lay,
  step,
  ...brief
}: {
  lay: Partial<ProfileBrief>;
  step: number;
  sides: number;
  slope: number;
}): FramePlan {
  const miter: Saw["miter"] = { left: 60, right: 60, reads: "from-square", step };
  const plan = planOf({ ...brief, ...lay, saw: tableSaw({ miter, bevel: { ...WIDE, step } }) });
  fc.pre(plan.sawing.lay !== null);
  return plan;
}

describe("the graduations of a lay", () => {
  test("open the last joint as is said when a ring is cut at them and put together in space, in every lay", () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const plan = planCase(given);
        const lay = plan.sawing.lay!;
        for (const graduations of [plan.sawing.graduations!.nearest, plan.sawing.graduations!.best]) {
          const { miter, bevel } = graduations;
          if (miter === 0 && bevel === 0) continue;
          const ring = sawnFrame(plan, {
            first: setTo(lay.first, miter, bevel),
            second: setTo(lay.second, miter, bevel),
          });
          // The wedge is as wide as the joint is long; a joint cut a little off is a little longer or shorter.
          expect(Math.abs(ring.gap - graduations.jointGap)).toBeLessThan(0.02 * graduations.jointGap + 1e-9);
          if (graduations.opens !== "nowhere") expect(ring.angle > 0 ? "outside" : "inside").toBe(graduations.opens);
          expect(ring.slope - plan.geometry.slope).toBeCloseTo(graduations.slopeOff, 6);
        }
      }),
      { numRuns: 60 },
    );
  });

  test("are on the scale and in its range, and no others within two graduations are better", () => {
    fc.assert(
      fc.property(anyCase, (given) => {
        const plan = planCase(given);
        const { saw, lay, graduations } = plan.sawing;
        const limit = plan.brief.acceptedGap;
        const { step } = saw.miter;
        const { best, nearest } = graduations!;
        const { miter, bevel } = lay!.first;
        const around = (size: number): number[] => {
          const graduation = Math.round(size / step);
          if (Math.abs(size / step - graduation) < 1e-9) return [graduation * step];
          return [-1, 0, 1, 2].map((by) => (Math.floor(size / step) + by) * step).filter((one) => one >= 0);
        };
        const rivals = around(miter.degrees)
          .filter((one) => one <= 60)
          .flatMap((m) => around(bevel.degrees).map((b) => ({ m, b })))
          .filter(({ m, b }) => (m > 0 || b > 0) && b <= 60)
          .map(({ m, b }) => sawnFrame(plan, { first: setTo(lay!.first, m, b), second: setTo(lay!.second, m, b) }));
        expect(Math.abs(best.miter / step - Math.round(best.miter / step))).toBeLessThan(1e-9);
        expect(best.miterMiss).toBeCloseTo(Math.abs(best.miter - miter.degrees), 12);
        expect(best.bevelMiss).toBeCloseTo(Math.abs(best.bevel - bevel.degrees), 12);
        expect(nearest.miterMiss).toBeCloseTo(miter.miss, 9);
        expect(nearest.bevelMiss).toBeCloseTo(bevel.miss, 9);
        const good = rivals.filter(({ gap }) => gap <= limit * 0.98);
        // What the slope puts the outer edge off by counts like the gap where no graduation keeps within the accepted one.
        const { jointWidth } = plan.assembly;
        const cost = (gap: number, slopeOff: number): number => gap + jointWidth * Math.abs(slopeOff) * (Math.PI / 180);
        const least = cost(best.jointGap, best.slopeOff);
        for (const { gap, slope } of rivals) {
          if (best.jointGap > limit)
            expect(cost(gap, slope - plan.geometry.slope)).toBeGreaterThan(least * 0.98 - 1e-9);
        }
        for (const { slope } of good) {
          expect(Math.abs(best.slopeOff)).toBeLessThan(Math.abs(slope - plan.geometry.slope) + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("of a stick lying flat are those of settingCost", () => {
    const { graduations } = planOf({ sides: 8, slope: 30, acceptedGap: 1e-6 }).sawing;
    const cost = settingCost({
      sides: 8,
      width: planOf({ sides: 8, slope: 30 }).assembly.jointWidth,
      slope: 30,
      step: 0.5,
    });
    expect([graduations!.best.miter, graduations!.best.bevel, graduations!.best.jointGap]).toEqual([
      cost.best.miter,
      cost.best.bevel,
      cost.best.jointGap,
    ]);
    expect([graduations!.nearest.miter, graduations!.nearest.bevel]).toEqual([cost.nearest.miter, cost.nearest.bevel]);
  });

  test("stay within a scale that ends just beyond the exact angle, and on the hand of the exact angle", () => {
    let [short, low] = [0, 0];
    for (let sides = 5; sides <= 16; sides += 1) {
      for (const slope of [1, 12, 25, 40]) {
        for (const name of ["miter", "bevel"] as const) {
          const wide = planOf({ sides, slope, lay: "flat" }).sawing;
          const end = wide.lay!.first[name].degrees + 0.01;
          const usual = tableSaw();
          const saw = { ...usual, [name]: { ...usual[name], left: end, right: name === "miter" ? end : 0 } };
          const { best } = planOf({ sides, slope, lay: "flat", saw }).sawing.graduations!;
          expect(best[name]).toBeLessThanOrEqual(end);
          expect(Math.min(best.miter, best.bevel)).toBeGreaterThanOrEqual(0);
          if (wide.graduations!.best[name] > end) short += 1;
          if (wide.lay!.first.bevel.degrees < 1) low += 1;
        }
      }
    }
    // So often the graduations that would be best lie beyond, and the bevel so near 0 that a graduation on its other side is near.
    expect([short > 10, low > 10]).toEqual([true, true]);
  });

  test("are read from a scale that runs down from 90", () => {
    const down = miterSaw({
      miter: { left: 60, right: 60, reads: "from-fence", step: 0.5 },
      bevel: { left: 45, right: 45, reads: "from-table", step: 0.5 },
    });
    const [plainly, reversed] = [miterSaw(), down].map(
      (saw) => planOf({ sides: 9, slope: 25, saw }).sawing.graduations!.best,
    );
    expect([reversed!.miter, reversed!.bevel]).toEqual([90 - plainly!.miter, 90 - plainly!.bevel]);
    expect(reversed!.jointGap).toBe(plainly!.jointGap);
  });

  test("swap sides with the slope, and survive JSON", () => {
    const [up, down] = [25, -25].map((slope) => planOf({ sides: 9, slope }).sawing.graduations!);
    expect(down!.best).toEqual({ ...up!.best, slopeOff: -up!.best.slopeOff });
    expect(throughJson(up)).toEqual(up);
    const low = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 0.5 },
      bevel: { left: 1, right: 0, reads: "from-vertical", step: 0.5 },
    });
    expect(planOf({ saw: low }).sawing.graduations).toBeNull();
  });
});

test("no slope is given up for a gap that is hardly smaller", () => {
  const { sawing, assembly } = planOf({ sides: 6, slope: 30 });
  const { nearest, best } = sawing.graduations!;
  const cheapest = settingCost({ sides: 6, width: assembly.jointWidth, slope: 30, step: 0.5 }).best;
  // Two degrees of slope would gain a tenth of the gap.
  expect(Math.abs(cheapest.slopeOff)).toBeGreaterThan(2);
  expect(cheapest.jointGap).toBeGreaterThan(0.8 * nearest.jointGap);
  expect(best).toEqual(nearest);
  expect(Math.abs(best.slopeOff)).toBeLessThan(0.2);
});

describe("the hazard on reach", () => {
  const reach = (changes: Partial<ProfileBrief>): FramePlan["hazards"][number] | undefined =>
    planOf(changes).hazards.find(({ code }) => code === "reach");

  test("is raised where the cheapest graduations open more than the accepted gap, with what they miss", () => {
    const raised = reach({ sides: 7 })!;
    const { best } = planOf({ sides: 7 }).sawing.graduations!;
    expect(raised.numbers).toEqual({
      jointGap: best.jointGap,
      limit: 0.25,
      miterMiss: best.miterMiss,
      bevelMiss: 0,
      miterGraduation: 25.5,
      bevelGraduation: 0,
      slopeOff: 0,
    });
    expect(raised.kinds).toMatchObject({ jointGap: "length", limit: "length", miterGraduation: "angle" });
  });

  test("is not raised where two graduations that are both off close the ring, though the nearest do not", () => {
    const plan = planOf({ sides: 8, slope: 30 });
    const { nearest, best } = plan.sawing.graduations!;
    expect(nearest.jointGap).toBeGreaterThan(2);
    expect(best.jointGap).toBeLessThan(0.25);
    expect(reach({ sides: 8, slope: 30 })).toBeUndefined();
  });

  test("follows the accepted gap, and never a setting that is on its graduations", () => {
    expect(reach({ sides: 7, acceptedGap: 5 })).toBeUndefined();
    expect(reach({ sides: 7, acceptedGap: 2 })).toBeDefined();
    expect(reach({ sides: 6, acceptedGap: 1e-100 })).toBeUndefined();
    expect(reach({ sides: 8, slope: 90, acceptedGap: 1e-100 })).toBeUndefined();
  });

  test("depends on the lay: propped, a frame of eight needs a plain miter of 22.5, which is a graduation", () => {
    const given = { sides: 8, slope: 33, acceptedGap: 0.01 };
    expect(reach({ ...given, lay: "flat" })).toBeDefined();
    expect(reach({ ...given, lay: "propped" })).toBeUndefined();
  });

  test("comes with a saw plan alone, whose geometry must say how wide the joint is", () => {
    const geometry = frameGeometry({ sides: 7, profile: plain, opening: { side: 400 } });
    expect(sawPlan(geometry).hazards.map(({ code }) => code)).toContain("reach");
    const piece = { ...geometry.pieces[0], longest: { ...geometry.pieces[0].longest, out: undefined } };
    expect(() => sawPlan({ ...geometry, pieces: [piece] } as never)).toThrow(
      "Expected `geometry.pieces[0].longest.out` to be a finite number, got undefined",
    );
  });
});
