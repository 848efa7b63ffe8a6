import { describe, expect, test } from "vitest";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { formatAngle, formatLength } from "miterwright/units";
import { planJob } from "../../docs/bench/plan-job.js";
import { readyText } from "../../docs/bench/ready-text.js";
import { writersOf } from "../../docs/bench/writers.js";
import { jobOf } from "../bench-page/jobs.js";
import { readSheet } from "./read-sheet.js";

const words = {
  length: (value: number) => formatLength(value, "in", { denominator: 16 }),
  angle: (degrees: number) => formatAngle(degrees),
};
const FIELDS = {
  unit: "in",
  sides: "4",
  width: "16",
  height: "20",
  moldingWidth: "1 1/4",
  thickness: "3/4",
  rabbetWidth: "1/4",
  rabbetDepth: "3/8",
} as const;

function sheetText(contains: { readonly width: number; readonly height: number }): string {
  const profile = molding({ width: 1.25, thickness: 0.75, rabbet: { width: 0.25, depth: 0.375 } });
  const brief: FrameBrief = { sides: 4, unit: "in", profile, opening: { contains } };
  return readSheet(shopSheet(planFrame(brief), { ...words, title: "Tide chart" })).text;
}

function status(changes: Parameters<typeof jobOf>[0] = {}): string {
  const state = jobOf({ ...FIELDS, ...changes });
  return readyText(planJob(state).plan!, writersOf(state.values)).replaceAll("\u00a0", " ");
}

describe("contents that miss the lip come before all else", () => {
  test("on the sheet, below its title", () => {
    expect(sheetText({ width: 16, height: 20 })).toMatch(
      /^\s*Tide chart\s+Not ready to cut\. The frame is square.*miss the lip at the left and the right.*\(left and right 1 3\/4"\)/s,
    );
    expect(sheetText({ width: 20, height: 20 })).not.toContain("Not ready");
  });

  test("on the page, instead of saying that the plan is ready", () => {
    expect(status()).toMatch(
      /^Not ready yet\. The frame is square.*miss the lip at the left and the right.*\(left and right 1 3\/4"\)$/,
    );
    expect(status({ width: "20" })).toMatch(/^The plan is ready: 4 pieces/);
    expect(status({ sides: "6" })).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("and the page calls no plan ready whose rabbet cannot hold what goes in", () => {
    expect(status({ sides: "6", slope: "80" })).toMatch(
      /^Not ready yet\. The contents can't be held\. The rabbet is too/,
    );
  });
});
