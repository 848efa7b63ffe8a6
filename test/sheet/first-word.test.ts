import { describe, expect, test } from "vitest";
import { planFrame, type FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { shopSheet } from "miterwright/sheet";
import { formatAngle, formatLength } from "miterwright/units";
import { planJob } from "../../docs/bench/plan-job.js";
import { fitStock, type StockFit, type StockStick } from "miterwright/stock";
import { readyText, type Rack } from "../../docs/bench/ready-text.js";
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

/** The sheet and the page's status of six pieces and a rack. */
function rackTexts(sticks: StockStick[]): { readonly sheet: string; readonly page: string; readonly fit: StockFit } {
  const rows = sticks.map(({ length, count, cost, id }) => ({
    name: id,
    length: String(length),
    ...(count === undefined ? {} : { count: String(count) }),
    ...(cost === undefined ? {} : { cost: String(cost) }),
  }));
  const state = jobOf({ ...FIELDS, sides: "6" }, { sticks: rows });
  const plan = planJob(state).plan!;
  const fit = fitStock(plan.stockJobs[0]!);
  return {
    fit,
    sheet: readSheet(shopSheet(plan, { ...words, fit, title: "Tide chart" })).text,
    page: readyText(plan, writersOf(state.values), { kind: "fit", fit }),
  };
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

describe("sticks that do not give all pieces come before all else", () => {
  test("where the rack runs short", () => {
    const { fit, sheet, page } = rackTexts([{ id: "poplar", length: 40, count: 2 }]);
    const missing = fit.unplaced[0]!.count;
    expect([fit.status, fit.shortage, missing > 1]).toEqual(["short", "proven", true]);
    expect(sheet).toMatch(
      new RegExp(
        `^\\s*Tide chart\\s+Not ready to cut\\. The sticks can't give all pieces: still missing ${missing} × side`,
      ),
    );
    expect(page).toBe(`Not ready yet. The rack is too small: however it is cut up, ${missing} pieces are missing.`);
    const enough = rackTexts([{ id: "poplar", length: 40 }]);
    expect(enough.fit.status).toBe("optimal");
    expect(enough.sheet).not.toContain("Not ready");
    expect(enough.page).toMatch(/^The plan is ready: 6 pieces/);
  });

  test("where no stick is long enough, and before it is known", () => {
    const state = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "8" }] });
    const { plan } = planJob(state);
    const said = (rack: Rack): string => readyText(plan!, writersOf(state.values), rack);
    expect(said({ kind: "pending" })).toMatch(/^Not ready yet\. No stick on offer is long enough for a piece/);
    const long = jobOf({ ...FIELDS, sides: "6" }, { sticks: [{ length: "96" }] });
    const saidOf = (rack: Rack): string => readyText(planJob(long).plan!, writersOf(long.values), rack);
    expect(saidOf({ kind: "pending" })).toMatch(/^The sticks are still being fitted: 6 pieces/);
    expect(saidOf({ kind: "refused", why: "they are odd." })).toBe(
      "Not ready yet. The sticks don't suit: they are odd.",
    );
    expect(saidOf({ kind: "none" })).toMatch(/^The plan is ready: 6 pieces/);
  });
});

describe("what the sticks cost in all", () => {
  test("is said on the sheet, the sum of the costs that were typed", () => {
    const { fit, sheet } = rackTexts([{ id: "poplar", length: 40, cost: 7.35 }]);
    const count = fit.sticks[0]!.count;
    expect(count).toBeGreaterThan(1);
    expect(fit.cost).toBeCloseTo(count * 7.35, 10);
    expect(sheet).toContain(`Take ${count} × poplar. They cost ${(count * 7.35).toFixed(2)} in all.`);
  });

  test("names the sticks whose cost was not typed, and says nothing where none was", () => {
    const mixed = rackTexts([
      { id: "rack", length: 60, count: 1, cost: 0.5 },
      { id: "poplar", length: 60 },
    ]);
    expect(mixed.fit.sticks.map(({ stick }) => stick)).toEqual(["rack", "poplar"]);
    expect(mixed.sheet).toContain("They cost 0.50, and poplar without a cost.");
    expect(rackTexts([{ id: "poplar", length: 40 }]).sheet).not.toContain("They cost");
  });
});
