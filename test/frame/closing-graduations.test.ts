import { describe, expect, test } from "vitest";
import { ringClosure } from "miterwright/closure";
import { planFrame, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { tableSaw } from "miterwright/saw";

/** What is planned: an ordinary frame that is cut lying flat on a saw whose scales have graduations at every step. */
interface SetUp {
  readonly sides: number;
  readonly slope: number;
  readonly step: number;
  readonly width: number;
  readonly gap?: number;
  readonly reach?: number;
}

function planOf({ sides, slope, step, width, gap: acceptedGap = 0.25, reach = 60 }: SetUp): FramePlan {
  const saw = tableSaw({
    miter: { left: reach, right: reach, reads: "from-square", step },
    bevel: { left: 60, right: 0, reads: "from-vertical", step },
  });
  const profile = molding({ width, thickness: 20 });
  return planFrame({ sides, slope, lay: "flat", profile, opening: { acrossFlats: 400 }, acceptedGap, saw });
}

const RADIAN = Math.PI / 180;

/** The truest slope of all graduations that close, and the least cost of all graduations, by trying every pair within so many degrees of the exact setting. */
function tryAll(plan: FramePlan, window: number): { slopeOff: number; cost: number } {
  const { brief, sawing, geometry, assembly } = plan;
  const { step } = sawing.saw.miter;
  const { miter, bevel } = sawing.lay!.first;
  const { sides, slope } = geometry;
  const line = assembly.jointWidth / Math.cos(Math.PI / sides);
  let [slopeOff, cost] = [Infinity, Infinity];
  const graduations = (angle: number, end: number): number[] => {
    const first = Math.max(0, Math.ceil((angle - window) / step));
    const last = Math.floor(Math.min(angle + window, end + 1e-9) / step);
    return Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  };
  for (const m of graduations(miter.degrees, sawing.saw.miter.left)) {
    for (const b of graduations(bevel.degrees, 60)) {
      const turn = 2 * Math.acos(Math.cos(m * RADIAN) * Math.cos(b * RADIAN));
      const gap = Math.abs(2 * Math.PI - sides * turn) * line;
      const stands = Math.atan2(Math.sin(b * RADIAN), Math.sin(m * RADIAN) * Math.cos(b * RADIAN)) / RADIAN;
      const off = m === 0 && b === 0 ? 0 : Math.abs(stands - Math.abs(slope));
      // Half a millionth of a unit is left to rounding.
      if (gap < brief.acceptedGap - 5e-7 && off <= 2) slopeOff = Math.min(slopeOff, off);
      cost = Math.min(cost, gap + assembly.jointWidth * off * RADIAN);
    }
  }
  return { slopeOff, cost };
}

/** The best graduations of a plan against all of them: whether they close the ring. */
function compare(plan: FramePlan, window: number): boolean {
  const { best } = plan.sawing.graduations!;
  const { slopeOff, cost } = tryAll(plan, window);
  const closes = best.jointGap <= plan.brief.acceptedGap;
  expect(plan.hazards.some(({ code }) => code === "reach")).toBe(!closes);
  if (slopeOff < Infinity) {
    expect(closes).toBe(true);
    expect(Math.abs(best.slopeOff)).toBeLessThanOrEqual(slopeOff + 1e-6);
  } else if (!closes) {
    expect(best.jointGap + plan.assembly.jointWidth * Math.abs(best.slopeOff) * RADIAN).toBeLessThanOrEqual(
      cost + 1e-6,
    );
  }
  return closes;
}

describe("the best graduations, against every pair of graduations", () => {
  test("of ten sides at a slope of 10, with steps of a tenth: 17.7 and 3.3 close the ring", () => {
    const plan = planOf({ sides: 10, slope: 10, step: 0.1, width: 45 });
    const { best } = plan.sawing.graduations!;
    expect([best.miter, best.bevel]).toEqual([17.7, 3.3]);
    const cut = { miter: 17.7, bevel: 3.3 };
    const ring = ringClosure({
      pieces: Array.from({ length: 10 }, () => ({ length: 130, start: cut, end: cut })),
      at: 0,
      width: plan.assembly.jointWidth,
      slope: 10,
    });
    expect(best.jointGap).toBeCloseTo(ring.jointGap, 8);
    expect(ring.jointGap).toBeLessThan(0.25);
    expect(compare(plan, 20)).toBe(true);
  });

  test("of hundreds of ordinary set-ups close what can be closed within 2 degrees of the slope, and no others are better", () => {
    let [closed, open] = [0, 0];
    for (const sides of [4, 5, 6, 7, 8, 9, 10, 12, 16]) {
      for (const slope of [5, 10, 22, 30, 45, 60, -35]) {
        for (const [step, window] of [
          [0.1, 8],
          [0.25, 12],
          [0.5, 15],
          [1, 20],
        ] as const) {
          for (const width of [20, 45]) {
            const plan = planOf({ sides, slope, step, width });
            if (plan.sawing.graduations === null) continue;
            if (compare(plan, window)) closed += 1;
            else open += 1;
          }
        }
      }
    }
    expect([closed > 200, open > 50]).toEqual([true, true]);
  });

  test("within what the saw reaches, and for other accepted gaps", () => {
    for (const sides of [5, 8, 12]) {
      for (const slope of [12, 40]) {
        const exact = planOf({ sides, slope, step: 0.25, width: 45 }).sawing.lay!.first.miter.degrees;
        for (const gap of [0.02, 0.25, 3])
          compare(planOf({ sides, slope, step: 0.25, width: 45, gap, reach: exact + 0.3 }), 12);
      }
    }
  });
});

describe("how far graduations are looked for", () => {
  const searched = (changes: Partial<SetUp>): number =>
    planOf({ sides: 8, slope: 30, step: 0.5, width: 45, ...changes }).sawing.graduations!.slopeRange;

  test("is 2 degrees of slope, less on a scale too fine to be gone through, and none where an angle is 0", () => {
    expect([searched({}), searched({ step: 0.01, gap: 1e-9 })]).toEqual([2, 2]);
    expect(searched({ step: 1e-4, gap: 1e-9 })).toBeGreaterThan(0.2);
    expect(searched({ step: 1e-4, gap: 1e-9 })).toBeLessThan(1);
    expect([searched({ slope: 0 }), searched({ slope: 90 })]).toEqual([0, 0]);
  });

  test("is a number of the hazard where slopes are tried at all", () => {
    const searchedBy = (changes: Partial<SetUp>): number | undefined => {
      const { hazards } = planOf({ sides: 7, slope: 30, step: 1, width: 45, gap: 1e-3, ...changes });
      return hazards.find(({ code }) => code === "reach")!.numbers["slopeSearched"];
    };
    expect(searchedBy({})).toBe(2);
    expect(searchedBy({ slope: 0 })).toBeUndefined();
  });
});
