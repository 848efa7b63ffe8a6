import { describe, expect, test } from "vitest";
import { planFrame, type FramePlan } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { formatters } from "miterwright/units";
import { issuesOf, throughJson } from "./briefs.js";
import { HARD_FRAMES } from "./hard-cases.js";

const tell = { formats: formatters({ unit: "mm", digits: 2 }) };

function planned(why: string): FramePlan {
  return planFrame(HARD_FRAMES.find((hard) => hard.why.startsWith(why))!.brief);
}

describe.each(HARD_FRAMES)("$why", ({ brief, refused }) => {
  test("is refused with a typed error, or planned whole", () => {
    const issues = issuesOf(brief);
    if (refused === true) {
      expect(issues.map((issue) => issue.code)).toEqual(["impossible"]);
      expect(() => planFrame(brief)).toThrow(issues[0]!.message);
      return;
    }
    expect(issues).toEqual([]);
    const plan = planFrame(brief);
    const { longest, shortest } = plan.geometry.pieces[0];
    expect(shortest.length).toBeGreaterThan(0);
    expect(longest.length).toBeGreaterThanOrEqual(shortest.length);
    expect(throughJson(plan)).toEqual(plan);
    const sheet = shopSheet(plan, tell);
    expect(sheet).not.toMatch(/NaN|Infinity|undefined/);
    expect(shopSheet(throughJson(plan), tell)).toBe(sheet);
  });
});

describe("in particular", () => {
  test("the rabbet's wall decides between 50.7 and 50.8 degrees", () => {
    expect(planned("the rabbet's wall just ends").contents.possible).toBe(false);
    expect(planned("the rabbet's wall just reaches").contents.possible).toBe(true);
  });

  test("bevels that no blade reaches are cut on edge", () => {
    expect(planned("bevels of 60 degrees").sawing.lay!.lay).not.toBe("flat");
  });

  test("a kerf longer than the stick leaves no job, and the plan says why", () => {
    const plan = planned("a kerf longer");
    expect(plan.stockJobs).toEqual([]);
    expect(plan.hazards.map((hazard) => hazard.code)).toContain("short-stick");
  });

  test("a lay in degrees that is the flat one is steady without a cradle", () => {
    const plan = planned("a lay in degrees");
    expect(plan.sawing.lay).toMatchObject({ lay: "flat", cradle: null, possible: true });
    expect(plan.sawing.operations[0]!.placement).toMatchObject({ down: "back", cradled: false });
  });
});
