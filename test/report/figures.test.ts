import fc from "fast-check";
import { drawFigure, type FigureBlock } from "miterwright/drawing";
import { planFrame } from "miterwright/frame";
import { describePlan, type Block, type Report } from "miterwright/report";
import { reportSheet, shopSheet } from "miterwright/sheet";
import { fitStock } from "miterwright/stock";
import { describe, expect, test } from "vitest";
import { anyBrief } from "../drawing/frames.js";
import { layoutFaults } from "../drawing/read-drawing.js";
import { loose } from "../formats.js";
import { throughJson } from "../frame/briefs.js";
import { readSheet } from "../sheet/read-sheet.js";
import { FORMATS, PLANS, TOLD } from "./reports.js";

/** The figures of a report, those of its steps among them. */
function figuresOf({ sections }: Report): readonly FigureBlock[] {
  return sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === "figure" ? [block] : block.kind === "steps" ? block.steps.flatMap(({ figures }) => figures) : [],
    ),
  );
}

/** The texts of a block, as a sheet has them. */
function blockTexts(block: Block): readonly string[] {
  switch (block.kind) {
    case "facts":
      return block.facts.map(({ name, value }) => `${name} ${value}`);
    case "table":
      return [block.caption, ...block.columns.map(({ label }) => label), ...block.cells.flat()];
    case "list":
      return block.items;
    case "hazards":
      return block.hazards.flatMap(({ title, sentence, behind }) => [`${title}.`, sentence, behind]);
    case "steps":
      return block.steps.flatMap(({ step, title, heed, lines }) => [`${step}. ${title}`, heed ?? "", ...lines]);
    case "figure":
      return [block.caption ?? ""];
  }
}

/** Every text of a report but the headings of its sections, which a sheet puts together. */
function textsOf({ title, sections }: Report): readonly string[] {
  return [title, ...sections.flatMap(({ blocks }) => blocks.flatMap(blockTexts))];
}

/** How often each figure stands in a report. */
function countsOf(report: Report): Readonly<Record<string, number>> {
  const names = figuresOf(report).map(({ name }) => name);
  return Object.fromEntries(names.map((name) => [name, names.filter((other) => other === name).length]));
}

describe.each(Object.entries(TOLD))("every figure of %s", (_, { told, describe: tell, drawnFrom }) => {
  const report = throughJson(tell(told));

  test("is drawn, from what came back from JSON too, and well laid out", () => {
    const source = drawnFrom(throughJson(told));
    for (const figure of figuresOf(report)) {
      const drawing = drawFigure(source, figure, { formats: FORMATS });
      expect([figure.name, layoutFaults(drawing)]).toEqual([figure.name, []]);
      expect(drawing.svg).toBe(drawFigure(drawnFrom(told), figure, { formats: FORMATS }).svg);
    }
  });

  test("stands on its sheet, with everything else that the report tells", () => {
    const source = drawnFrom(told);
    const html = reportSheet(report, {
      figure: (block, shape) => drawFigure(source, block, { formats: FORMATS, ...shape }),
    });
    expect(html.match(/<svg/g) ?? []).toHaveLength(figuresOf(report).length);
    const { text } = readSheet(html);
    expect(textsOf(report).filter((told) => !text.includes(loose(told)))).toEqual([]);
  });
});

test("a plan's report has the figures that the plan can give", () => {
  const counts = (name: string): Readonly<Record<string, number>> => countsOf(TOLD[name]!.describe(TOLD[name]!.told));
  const everything = { above: 1, section: 1, stock: 1, cut: 3, piece: 1, panel: 1, "panel-cut": 1 };
  expect(counts("a flat frame with everything")).toEqual(everything);
  expect(counts("a propped one")).toMatchObject({ cradle: 1, cut: 2, panel: 1 });
  // A pane alone is cut by a glazier.
  expect(counts("a propped one")).not.toHaveProperty("panel-cut");
  expect(counts("one that no lay can cut")).toEqual({ above: 1, section: 1, piece: 1 });
  expect(counts("a pane")).toEqual({ panel: 1 });
  expect(countsOf(describePlan(PLANS["a tray"]!))).not.toHaveProperty("stock");
});

test("every figure of any plan and its fit is drawn, on the sheet too", () => {
  fc.assert(
    fc.property(anyBrief, fc.integer({ min: 1, max: 4 }), fc.boolean(), (brief, pieces, isShort) => {
      const { longest, count } = planFrame(brief).geometry.pieces[0];
      const rough = (brief.rough?.method ?? "none") === "none" ? 0 : (brief.kerf ?? 0) * 5;
      const length = (longest.length + rough + (brief.kerf ?? 0) * 4) * (pieces + 1);
      const sticks = [{ id: "larch", length, ...(isShort ? { count: 1 } : { count: count + 1 }) }];
      const plan = planFrame({ ...brief, sticks });
      const fits = plan.stockJobs.map((job) => fitStock(job, { stepLimit: 1e4 }));
      const report = describePlan(plan, { fits });
      const [fit] = fits;
      for (const figure of figuresOf(report)) {
        const { svg } = drawFigure(fit === undefined ? plan : { ...plan, fit }, figure, { formats: FORMATS });
        expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      }
      expect(figuresOf(report).some(({ name }) => name === "stock")).toBe(true);
      expect(shopSheet(plan, { fits, formats: FORMATS })).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }),
    { numRuns: 60 },
  );
});
