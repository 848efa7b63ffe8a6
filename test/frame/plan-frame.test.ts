import { frameCheckText } from "miterwright/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFrame, stockJob, type FramePlan, type ProfileBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { verifyFit, fitStock } from "miterwright/stock";
import { briefs, deepFreeze, plain, rabbeted, throughJson } from "./briefs.js";

const glass = { name: "glass", thickness: 2 };
const board = { name: "backing board", thickness: 3 };

function planOf(changes: Partial<ProfileBrief>): FramePlan {
  return planFrame({ sides: 6, profile: rabbeted, opening: { side: 400 }, kerf: 3, ...changes } as ProfileBrief);
}

describe("contents", () => {
  test("a panel is the opening less the clearance at every side", () => {
    const { contents, geometry } = planOf({ clearance: 1.5, contents: [glass, board] });
    expect(contents.panel!.apothem).toBeCloseTo(geometry.opening.apothem - 1.5, 12);
    expect(contents.seating).toMatchObject({ possible: true, bearsOn: "ledge", depthUsed: 5 });
    expect(contents.hidden).toBeCloseTo(9 - 1.5, 12);
  });

  test("cut from a sheet, it has the size that the sheet gives, and the plan says what is cut away", () => {
    const { contents } = planOf({ opening: { cutFrom: { width: 500, height: 400 } }, clearance: 2 });
    expect(contents.panel!.acrossFlats).toBeCloseTo(400, 9);
    expect(contents.trimmedArea).toBeCloseTo(500 * 400 - contents.panel!.area, 6);
    expect(contents.sheet).toEqual({ width: 500, height: 400 });
  });

  test("its cuts are planned for the pose in which it hangs", () => {
    const plan = planOf({ clearance: 1.5, pose: "corner-down" });
    expect(plan.panel!.pose).toBe("corner-down");
    expect(plan.panel!.panel.apothem).toBeCloseTo(plan.contents.panel!.apothem, 12);
    expect(planOf({ profile: plain, opening: { side: 40 }, clearance: 40 }).panel).toBeNull();
  });

  test("what is seen of it is the polygon inside the lip", () => {
    const { contents, geometry } = planOf({ slope: 20 });
    expect(contents.visible.apothem).toBeCloseTo(geometry.polygons["sightFace"]!.apothem, 12);
  });

  test("are impossible where the clearance leaves nothing", () => {
    const { contents } = planOf({ profile: plain, opening: { side: 40 }, clearance: 40 });
    expect(contents).toMatchObject({
      possible: false,
      panel: null,
      hidden: 0,
      reason: "no-contents-left",
    });
  });

  test("without a rabbet nobody can tell", () => {
    expect(planOf({ profile: plain }).contents).toMatchObject({ possible: null, seating: null });
  });
});

describe("the stock job", () => {
  test("takes what a mitered cut takes of the stick", () => {
    const plan = planOf({ slope: 30, sticks: [{ id: "ash", length: 2400 }] });
    expect(plan.stockJobs[0]!.kerf).toBeCloseTo(3 / Math.cos(Math.PI / 6), 12);
    expect(plan.stockJobs[0]!.pieces).toEqual([
      { id: "side", length: plan.geometry.pieces[0].longest.length, count: 6 },
    ]);
    expect(plan.stockJobs[0]!.trim).toBe(plan.stockJobs[0]!.kerf);
  });

  test("is one that fitStock and verifyFit take", () => {
    const plan = planOf({ slope: 30, sticks: [{ id: "ash", length: 2400 }] });
    const fit = fitStock(plan.stockJobs[0]!);
    expect(fit.status).toBe("optimal");
    expect(verifyFit(plan.stockJobs[0]!, fit)).toEqual({ ok: true });
  });

  test("shares slanted cuts only where half a roll leaves the section unchanged and both faces are good", () => {
    const sticks = [{ id: "ash", length: 2400 }];
    const flat = planOf({ profile: plain }).geometry;
    expect(stockJob(flat, { kerf: 3, sticks, bothFacesGood: true }).pieces[0]!.share).toEqual({
      key: "side",
      saving: 40 * Math.tan(Math.PI / 6),
    });
    expect(stockJob(flat, { kerf: 3, sticks }).pieces[0]!.share).toBeUndefined();
    expect(stockJob(planOf({}).geometry, { kerf: 3, sticks, bothFacesGood: true }).pieces[0]!.share).toBeUndefined();
  });

  test("grows with the number of frames and carries what fitStock knows besides", () => {
    const sticks = [{ id: "ash", length: 2400, count: 3, cost: 9 }];
    const job = stockJob(planOf({}).geometry, {
      kerf: 3,
      sticks,
      frames: 4,
      trim: 20,
      keep: 300,
      credit: 0.5,
      resolution: 0.5,
    });
    expect(job).toMatchObject({ trim: 20, keep: 300, credit: 0.5, resolution: 0.5, sticks });
    expect(job.pieces[0]!.count).toBe(24);
  });

  test.each([
    [{ kerf: -1, sticks: [] }, "Expected `kerf` to be zero or a positive length (up to 1e100), got -1 (number)"],
    [{ kerf: 3, sticks: "ash" }, 'Expected `sticks` to be an array of one stick or more, got "ash" (string)'],
    [
      { kerf: 3, sticks: [{ id: "ash", length: 90 }], trim: -4 },
      "Expected `trim` to be zero or a positive length (up to 1e100), got -4 (number)",
    ],
    [
      { kerf: 3, sticks: [{ id: "ash", length: 90 }], frames: 0 },
      "Expected `frames` to be an integer from 1 to 1000000, got 0 (number)",
    ],
  ])("refuses %j", (options, message) => {
    expect(() => stockJob(planOf({}).geometry, options as never)).toThrow(message);
  });
});

describe("checks and materials", () => {
  test("give what can be measured on the dry frame", () => {
    const plan = planOf({ slope: 15 });
    const value = (code: string): number => plan.checks.find((check) => check.code === code)!.value;
    expect(value("miter-sum")).toBe(360);
    expect(value("corner-angle")).toBe(120);
    // The contents' front is level with the sight edge's back arris, 11 deep; on the wall, 9 farther out, that is 9 tan 15 less. A tape finds the wall's edge at the back.
    const beyond = (11 - 9 * Math.tan(Math.PI / 12)) * Math.sin(Math.PI / 12);
    expect(value("opening-across-flats")).toBeCloseTo(400 * Math.sqrt(3) + 2 * beyond, 9);
    expect(value("opening-across-corners")).toBeCloseTo(800 + (2 * beyond) / Math.cos(Math.PI / 6), 9);
    expect(value("level-width")).toBeCloseTo(plan.geometry.levelWidth - beyond, 9);
    expect(value("overall-across-flats")).toBeCloseTo(2 * plan.geometry.overall.polygon.apothem, 9);
    expect(value("slope")).toBe(15);
    expect(planOf({}).checks.map((check) => check.code)).not.toContain("slope");
  });

  test("name corner to side for odd frames and side to side for even ones", () => {
    const labels = (sides: number): string =>
      planOf({ sides })
        .checks.map((check) => frameCheckText(check, { sides }))
        .join("\n");
    expect(labels(7)).toMatch(/corner to opposite side/);
    expect(labels(8)).toMatch(/, side to opposite side/);
  });

  test("add up what the sticks must give", () => {
    const { materials, sawing } = planOf({});
    expect(materials.pieces).toBe(6);
    expect(materials.moldingLength).toBeCloseTo(6 * sawing.rough.pitch + sawing.rough.kerfAlong, 10);
    expect(materials.finishedLength).toBeCloseTo(6 * sawing.rough.length, 10);
  });
});

describe("hazards", () => {
  const codes = (changes: Partial<ProfileBrief>): string[] => planOf(changes).hazards.map((hazard) => hazard.code);
  const square = { method: "square", allowance: 20 } as const;

  test.each<[string, Partial<ProfileBrief>, Partial<ProfileBrief>]>([
    ["short-piece", { opening: { side: 200 } }, { opening: { side: 400 } }],
    ["trapped-piece", { saw: miterSaw() }, {}],
    ["offcut-under-bevel", { slope: 30 }, { slope: 0 }],
    ["thrown-offcut", { sides: 12 }, { sides: 4 }],
    [
      "tip",
      { slope: 80, lay: "propped", profile: molding({ width: 30, thickness: 30 }) },
      { slope: 30, lay: "propped" },
    ],
    ["fasteners", { slope: 30, lay: "propped" }, { slope: 30 }],
    ["capacity", { sides: 3, slope: 60, lay: "flat" }, { slope: 30 }],
    ["feather", { sides: 4, lay: "face-down" }, { sides: 4, lay: "flat" }],
    ["long-stick", { sticks: [{ id: "ash", length: 3000 }] }, { sticks: [{ id: "ash", length: 2000 }] }],
    ["short-stick", { sticks: [{ id: "rest", length: 300 }] }, { sticks: [{ id: "ash", length: 2000 }] }],
    ["flip-error", {}, { slope: 60, sides: 3, lay: "flat" }],
    ["end-grain", { sides: 9 }, { sides: 8 }],
    ["seating-impossible", { slope: 70 }, { contents: [glass] }],
    ["shallow-rabbet", { contents: [{ name: "panel", thickness: 12 }] }, { contents: [glass] }],
    ["narrow-lip", { profile: molding({ width: 40, thickness: 20, rabbet: { width: 2, depth: 10 } }) }, {}],
    ["reach", { sides: 7 }, { sides: 6 }],
  ])("%s is raised by %j and not by %j", (code, raising, quiet) => {
    expect(codes(raising)).toContain(code);
    expect(codes(quiet)).not.toContain(code);
  });

  test("have limits that are round in inches too", () => {
    const inches = planFrame({
      sides: 6,
      unit: "in",
      profile: molding({ width: 2, thickness: 0.75 }),
      opening: { side: 11 },
    });
    const short = inches.hazards.find((hazard) => hazard.code === "short-piece");
    expect(short).toBeUndefined();
    expect(inches.brief.kerf).toBe(0.125);
    const tiny = planFrame({
      sides: 6,
      unit: "in",
      profile: molding({ width: 1, thickness: 0.75 }),
      opening: { side: 3 },
    });
    expect(tiny.hazards[0]).toMatchObject({ code: "short-piece", signal: "danger", source: "common practice" });
    expect(tiny.hazards[0]!.numbers["limit"]).toBe(6);
  });

  test("say how long what falls off is, by the way pieces are parted", () => {
    // The level width of the flat stock is 40, half a wedge so 40 tan 30.
    const half = 40 * Math.tan(Math.PI / 6);
    const bases = (["none", "square", "mitered"] as const).map((method) => {
      const rough = method === "none" ? { method } : { method, allowance: 2 };
      const { hazards } = planFrame({ sides: 6, profile: plain, opening: { side: 400 }, rough });
      return hazards.find(({ code }) => code === "thrown-offcut")?.numbers["base"];
    });
    expect(bases).toEqual([2 * half, 2 + half, 2 + 2 * half].map((base) => expect.closeTo(base, 9) as unknown));
  });

  test("tell the shortest rest that a stick can leave beyond the blade at its last cut", () => {
    // A piece is 400 + 2 * 40 + 2 * 10 long and takes 503 of a stick, whose start is trimmed by 3.
    const shortRests = (
      ...sticks: { id: string; length: number; count?: number; defects?: { start: number; end: number }[] }[]
    ) =>
      planFrame({
        sides: 4,
        profile: plain,
        opening: { side: 400 },
        kerf: 3,
        rough: { method: "square", allowance: 10 },
        sticks,
      }).hazards.filter(({ code }) => code === "short-rest");
    expect(shortRests({ id: "three pieces", length: 1700 })).toMatchObject([
      { signal: "warning", numbers: { rest: 1700 - 3 - 3 * 503, limit: 300 }, source: "common practice" },
    ]);
    expect(shortRests({ id: "three pieces", length: 1700 }, { id: "four", length: 2100 })).toMatchObject([
      { numbers: { rest: 2100 - 3 - 4 * 503 } },
    ]);
    // A stick of which there is none is not cut.
    expect(shortRests({ id: "none left", length: 1700, count: 0 }, { id: "three pieces", length: 2000 })).toEqual([]);
    // A knot does not make the rest longer.
    expect(shortRests({ id: "knotty", length: 1700, defects: [{ start: 1690, end: 1700 }] })).toHaveLength(1);
    // A long rest; a frame's four pieces and much more; just as long as can be.
    expect(shortRests({ id: "three pieces", length: 2000 })).toEqual([]);
    expect(shortRests({ id: "six pieces", length: 3100 })).toEqual([]);
    expect(shortRests({ id: "all used", length: 3 + 3 * 503 })).toEqual([]);
  });

  test("say how far an unreadable setting can open the last joint", () => {
    const reach = planOf({ sides: 7 }).hazards.find((hazard) => hazard.code === "reach")!;
    const miss = 180 / 7 - 25.5;
    // The joint is as long as the molding is wide, lip and all.
    const gap = (52 / Math.cos(Math.PI / 7)) * ((14 * miss * Math.PI) / 180);
    expect(reach.numbers["jointGap"]).toBeCloseTo(gap, 10);
  });

  test("are tied to the steps on which they bear", () => {
    const plan = planOf({ slope: 30 });
    expect(plan.sawing.operations[1]!.hazards).toEqual(expect.arrayContaining(["offcut-under-bevel", "flip-error"]));
    expect(plan.sawing.operations[0]!.hazards).not.toContain("flip-error");
    const fixed = (rough: ProfileBrief["rough"]): boolean[] =>
      planOf({ saw: miterSaw(), rough }).sawing.operations.map(({ hazards }) => hazards.includes("trapped-piece"));
    expect(fixed({ method: "none" })).toEqual([false, true]);
    expect(fixed(square)).toEqual([true, false, false]);
  });
});

describe("a plan", () => {
  test("survives JSON, leaves its brief alone, and planned again from its own brief is the same", () => {
    fc.assert(
      fc.property(briefs, (brief) => {
        const plan = planFrame(deepFreeze(brief));
        const copy = throughJson(plan);
        expect(copy).toEqual(plan);
        expect(planFrame(copy.brief)).toEqual(plan);
      }),
      { numRuns: 60 },
    );
  });

  test("has no NaN, Infinity or -0 anywhere", () => {
    const visit = (value: unknown, path: string): void => {
      if (typeof value === "number" && (!Number.isFinite(value) || Object.is(value, -0)))
        throw new Error(`${path}: ${value}`);
      if (typeof value === "object" && value !== null) {
        for (const [key, inner] of Object.entries(value)) visit(inner, `${path}.${key}`);
      }
    };
    fc.assert(
      fc.property(briefs, (brief) => {
        visit(planFrame(brief), "plan");
      }),
    );
  });
});
