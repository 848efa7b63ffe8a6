import { describe, expect, test } from "vitest";
import { planFrame, type FrameBrief, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { shopSheet } from "miterwright/sheet";
import { fitStock, type StockFit, type StockStick } from "miterwright/stock";
import { formatters } from "miterwright/units";
import { readSheet } from "./read-sheet.js";

const formats = formatters({ unit: "in", denominator: 16 });
const profile = molding({ width: 1.25, thickness: 0.75, rabbet: { width: 0.25, depth: 0.375 } });
const BRIEF: FrameBrief = { sides: 6, unit: "in", profile, opening: { contains: { width: 16, height: 20 } } };

function sheetText(plan: FramePlan, fit?: StockFit): string {
  const fits = fit === undefined ? [] : [fit];
  return readSheet(shopSheet(plan, { formats, fits, title: "Tide chart" })).text;
}

/** The sheet of six pieces and a rack. */
function rackText(sticks: StockStick[]): { readonly text: string; readonly fit: StockFit } {
  const plan = planFrame({ ...BRIEF, sticks });
  const fit = fitStock(plan.stockJobs[0]!);
  return { fit, text: sheetText(plan, fit) };
}

describe("what has to be mended comes before all else, below the title", () => {
  test("contents that miss the lip", () => {
    expect(sheetText(planFrame({ ...BRIEF, sides: 4 }))).toMatch(
      /^\s*Tide chart\s+Not ready to cut\. The frame is square.*miss the lip at the left and the right.*\(left and right 1 3\/4"\)/s,
    );
    const square = planFrame({ ...BRIEF, sides: 4, opening: { contains: { width: 20, height: 20 } } });
    expect(sheetText(square)).not.toContain("Not ready");
  });

  test("contents that can't be held", () => {
    expect(sheetText(planFrame({ ...BRIEF, slope: 80 }))).toMatch(
      /^\s*Tide chart\s+Not ready to cut\. The contents can't be held\. The rabbet is too/,
    );
  });

  test("a saw on which no lay suits", () => {
    expect(sheetText(planFrame({ ...BRIEF, sides: 3, saw: miterSaw() }))).toMatch(
      /^\s*Tide chart\s+Not ready to cut\. No way to lay the stick suits this saw; the table says why\. /,
    );
  });

  test("a rack that runs short", () => {
    const { fit, text } = rackText([{ id: "poplar", length: 40, count: 2 }]);
    const missing = fit.unplaced[0]!.count;
    expect([fit.status, fit.shortage, missing > 1]).toEqual(["short", "proven", true]);
    expect(text).toMatch(
      new RegExp(
        `^\\s*Tide chart\\s+Not ready to cut\\. The sticks can't give all pieces: still missing ${missing} × side`,
      ),
    );
    const enough = rackText([{ id: "poplar", length: 40 }]);
    expect(enough.fit.status).toBe("optimal");
    expect(enough.text).not.toContain("Not ready");
  });

  test("no stick that is long enough, also before the rack was fitted", () => {
    const plan = planFrame({ ...BRIEF, sticks: [{ id: "poplar", length: 8 }] });
    expect(sheetText(plan)).toMatch(/^\s*Tide chart\s+Not ready to cut\. No stick on offer is long enough for a piece/);
  });
});

describe("what the sticks cost in all", () => {
  test("is said on the sheet, the sum of the costs that were given", () => {
    const { fit, text } = rackText([{ id: "poplar", length: 40, cost: 7.35 }]);
    const count = fit.sticks[0]!.count;
    expect(count).toBeGreaterThan(1);
    expect(fit.cost).toBeCloseTo(count * 7.35, 10);
    expect(text).toContain(`Take ${count} × poplar. They cost ${(count * 7.35).toFixed(2)} in all.`);
  });

  test("names the sticks whose cost was not given, and says nothing where none was", () => {
    const mixed = rackText([
      { id: "rack", length: 60, count: 1, cost: 0.5 },
      { id: "poplar", length: 60 },
    ]);
    expect(mixed.fit.sticks.map(({ stick }) => stick)).toEqual(["rack", "poplar"]);
    expect(mixed.text).toContain("They cost 0.50, and poplar without a cost.");
    expect(rackText([{ id: "poplar", length: 40 }]).text).not.toContain("They cost");
  });
});
