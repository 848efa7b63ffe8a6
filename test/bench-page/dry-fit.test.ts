import { describe, expect, test } from "vitest";
import { ringClosure } from "miterwright/closure";
import { sawSetting } from "miterwright/miter";
import { readDryFit } from "../../docs/bench/dry-fit.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { penOf } from "../../docs/bench/writers.js";
import { jobOf, TRAY } from "./jobs.js";

type Answers = Parameters<typeof jobOf>[0];

function ask(answers: Answers): ReturnType<typeof readDryFit> {
  const { values } = jobOf(answers);
  return readDryFit(values, planJob(jobOf({ ...answers, seenGap: "", seenSlope: "" })).plan!, penOf(values));
}

/** What a scale is to be set to, from what it stood at. */
function scales(lines: readonly string[], name: string): [from: number, to: number] {
  const found = new RegExp(`^The ${name} scale then shows (\\S+)° instead of (\\S+)°\\.$`, "m").exec(lines.join("\n"));
  return [Number(found?.[2]), Number(found?.[1])];
}

describe("the new setting undoes what the saw did wrong", () => {
  /*
   * The oracle cuts a whole ring with both angles off: it asks the library's closure what gap and slope such a ring shows, and the page, told only that, must lead back
   * to the planned setting.
   */
  test.each<[string, Answers]>([
    ["flat on the back", { ...TRAY }],
    ["flat on the back, few sides", { ...TRAY, sides: "4", slope: "50" }],
    ["a miter saw, an odd number of sides", { ...TRAY, saw: "miter", sides: "7" }],
    ["sloping the other way", { ...TRAY, slope: "-25" }],
    ["a scale that runs down from 90", { ...TRAY, miterReads: "from-fence", bevelReads: "from-table" }],
  ])("%s", (_, answers) => {
    const { geometry, sawing, assembly } = planJob(jobOf(answers)).plan!;
    const piece = geometry.pieces[0];
    const off = { miter: 0.13, bevel: -0.09 };
    const set = sawSetting(piece.end, "flat");
    const wrong = { miter: set.miter + off.miter, bevel: set.bevel + off.bevel * Math.sign(set.bevel) };
    const pieces = Array.from({ length: geometry.sides }, () => ({ length: 100, start: wrong, end: wrong }));
    const ring = ringClosure({ pieces, at: "outside", width: assembly.jointWidth });
    const told = {
      ...answers,
      seenGap: `${ring.jointGap} mm`,
      open: ring.opens,
      seenSlope: String(ring.slope),
      shownMiter: String(sawing.lay!.first.miter.reading),
      shownBevel: String(sawing.lay!.first.bevel.reading),
    };
    const { lines, issues } = ask(told);
    expect(issues).toEqual([]);
    const down = answers.miterReads === "from-fence" ? -1 : 1;
    const [miterFrom, miterTo] = scales(lines, "miter");
    const [bevelFrom, bevelTo] = scales(lines, "bevel");
    expect(miterFrom).toBeCloseTo(sawing.lay!.first.miter.reading, 3);
    expect(bevelFrom).toBeCloseTo(sawing.lay!.first.bevel.reading, 3);
    expect(down * (miterTo - miterFrom)).toBeCloseTo(-off.miter, 2.7);
    expect(down * (bevelTo - bevelFrom)).toBeCloseTo(-off.bevel, 2.7);
  });

  // A true saw that was set to the printed graduations: the exact setting is what closes the frame, and nothing but the gap is told.
  test.each<[string, Answers]>([
    ["a flat heptagon", { ...TRAY, sides: "7", slope: "0" }],
    ["a sloping hexagon", { ...TRAY, sides: "6", slope: "30" }],
    ["a sloping octagon, whose best graduations are not the nearest", { ...TRAY, sides: "8", slope: "30" }],
    ["a miter scale that runs down from 90", { ...TRAY, sides: "7", slope: "20", miterReads: "from-fence" }],
  ])("%s, cut at the graduations that the plan names", (_, answers) => {
    const { geometry, sawing, assembly } = planJob(jobOf(answers)).plan!;
    const { miter, bevel } = sawing.lay!.first;
    const { best } = sawing.graduations!;
    const cut = {
      miter: answers.miterReads === "from-fence" ? 90 - best.miter : best.miter,
      bevel: best.bevel,
    };
    const pieces = Array.from({ length: geometry.sides }, () => ({ length: 100, start: cut, end: cut }));
    const ring = ringClosure({ pieces, at: "outside", width: assembly.jointWidth });
    expect(ring.jointGap).toBeGreaterThan(0.05);
    const { lines, issues } = ask({
      ...answers,
      seenGap: `${ring.jointGap} mm`,
      open: ring.opens,
    });
    expect(issues).toEqual([]);
    expect(lines[0]).toMatch(/^It is taken that the pieces were cut at the best mark, [\d.]+° on the miter scale and/);
    const [from, to] = scales(lines, "miter");
    expect(from).toBeCloseTo(best.miter, 3);
    expect(to).toBeCloseTo(miter.reading, 2);
    if (bevel.degrees > 0) expect(scales(lines, "bevel")[1]).toBeCloseTo(bevel.reading, 2);
  });

  test("in the cradle, where the miter alone closes it", () => {
    const answers = { ...TRAY, lay: "propped", seenGap: "1.2 mm", open: "outside" };
    const { lines } = ask(answers);
    const { assembly } = planJob(jobOf({ ...answers, seenGap: "" })).plan!;
    // Open angle = gap / (width / cos h), shared by 12 cuts.
    const angle = ((1.2 / (assembly.jointWidth / Math.cos(Math.PI / 6))) * 180) / Math.PI;
    const [from, to] = scales(lines, "miter");
    expect(from).toBe(30);
    expect(to - from).toBeCloseTo(angle / 12, 3);
    expect(lines.some((line) => line.startsWith("The bevel scale"))).toBe(false);
  });
});

describe("the dry fit", () => {
  test("says nothing while no gap is typed", () => {
    expect(ask(TRAY)).toEqual({ lines: [], issues: [] });
  });

  test("finds a gap of 0 good", () => {
    const { lines, issues } = ask({ ...TRAY, seenGap: "0" });
    expect(issues).toEqual([]);
    expect(lines).toContain("No gap: the inside angles of the corners are right.");
    expect(lines.at(-1)).toBe("The setting is good: cut and glue with it.");
  });

  test("lets the slope go where one angle stays, and says where", () => {
    const { lines } = ask({ ...TRAY, seenGap: "1", hold: "bevel" });
    expect(lines.join(" ")).toMatch(/Bevel: leave it\. .*The frame then closes at a slope of \d/);
  });

  test("says beside its field what is wrong", () => {
    const wrong = (answers: Answers): Record<string, string> =>
      Object.fromEntries(ask({ ...TRAY, ...answers }).issues.map(({ field, words }) => [field, words]));
    expect(wrong({ seenGap: "wide" })).toEqual({ seenGap: "This can't be read as a length: a number is missing." });
    expect(wrong({ seenGap: "-1" })).toEqual({ seenGap: "This can't be less than zero." });
    expect(wrong({ seenGap: "900" })).toEqual({ seenGap: "The gap can't be as wide as the molding." });
    expect(wrong({ seenGap: "1", seenSlope: "up" })).toEqual({
      seenSlope: "This can't be read as an angle: a number is missing.",
    });
    expect(wrong({ seenGap: "1", seenSlope: "95" })).toEqual({ seenSlope: "This has to be degrees from -90 to 90." });
    expect(wrong({ seenGap: "1", shownMiter: "95" })).toEqual({ shownMiter: "This has to be degrees from 0 to 90." });
    expect(wrong({ seenGap: "1", shownBevel: "steep" })).toEqual({
      shownBevel: "This can't be read as an angle: a number is missing.",
    });
    expect(wrong({ seenGap: "1", open: "outside", shownBevel: "90" })).toEqual({
      shownBevel: "From there no setting of this saw closes the frame.",
    });
    expect(wrong({ seenGap: "1", shownMiter: "90" })).toEqual({
      shownMiter: "From there no setting of this saw closes the frame.",
    });
    expect(wrong({ seenGap: "1", slope: "0", hold: "miter" })).toEqual({
      hold: "What is held alone can't close this frame: hold the slope.",
    });
  });
});
