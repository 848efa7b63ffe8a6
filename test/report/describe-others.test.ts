import { correctSetting } from "miterwright/closure";
import { correctFromGap, planFrame, shopOrder } from "miterwright/frame";
import { planPanel } from "miterwright/panel";
import { describeCorrection, describeFit, describePanel, describePlan, describeShopOrder } from "miterwright/report";
import { fitStock } from "miterwright/stock";
import { arrisLabel, correctionLines, english, obstacleText } from "miterwright/words";
import { describe, expect, test } from "vitest";
import { plain } from "../frame/briefs.js";
import { EXACT, loose } from "../formats.js";
import { JOB, ORDER, PLANS, blockOf, blocksOf, fitsOf } from "./reports.js";

const tell = { formats: EXACT };

describe("the report of a fit", () => {
  const fit = fitStock(JOB);
  const report = describeFit(JOB, fit, tell);

  test("tells the sums of the fit", () => {
    const { items } = blockOf(report, "list", ["stock", "fit"]);
    expect(items).toHaveLength(1);
    for (const { stick, count } of fit.sticks) expect(items[0]).toContain(`${count} × ${stick}`);
    expect(items[0]).toContain(
      `Of L${fit.sticksLength} of sticks, L${fit.piecesLength} become pieces, L${fit.keptLength} are offcuts to keep and L${fit.wasteLength} are saw cuts and waste.`,
    );
    expect(items[0]).toContain("No cheaper way to cut the sticks up exists: this is proven.");
  });

  test("lists every layout, whose pieces add up to the job", () => {
    const { rows, cells } = loose(blockOf(report, "table", ["stock", "cut-list"]));
    expect(rows).toHaveLength(fit.layouts.length);
    const lengths = Object.fromEntries(JOB.sticks.map(({ id, length }) => [id, length]));
    expect(rows.map((row) => row[1])).toEqual(fit.layouts.map(({ stick }) => lengths[stick]));
    const made = (id: string): number =>
      cells.reduce((sum, [sticks, , pieces]) => {
        const times = Number(/^\d+/.exec(sticks!)![0]);
        return sum + times * Number(new RegExp(`(\\d+) × ${id}`).exec(pieces!)?.[1] ?? 0);
      }, 0);
    for (const { id, count } of JOB.pieces) expect([id, made(id)]).toEqual([id, count]);
  });

  test("has the layouts as pictures of six, up to thirty", () => {
    const pieces = Array.from({ length: 34 }, (_, k) => ({ id: `rung ${k + 1}`, length: 300 + 11 * k, count: 1 }));
    const job = { pieces, sticks: [{ id: "ash", length: 700 }], kerf: 3 };
    const many = fitStock(job, { stepLimit: 1e4 });
    const figures = blocksOf(describeFit(job, many, tell), "stock").filter(({ kind }) => kind === "figure");
    const drawn = Math.min(30, many.layouts.length);
    expect(drawn).toBeGreaterThan(12);
    const ends = figures.map((figure) => (figure.kind === "figure" ? figure.layouts : null));
    expect(ends.flat()).toEqual(
      Array.from({ length: Math.ceil(drawn / 6) }, (_, k) => [6 * k, Math.min(6 * k + 6, drawn)]).flat(),
    );
  });

  test("is the section of sticks of a plan's report", () => {
    const plan = PLANS["a tray"]!;
    const [own] = fitsOf(plan);
    const { sections } = describePlan(plan, { ...tell, fits: fitsOf(plan) });
    expect(describeFit(plan.stockJobs[0]!, own!, tell).sections).toEqual(
      sections.filter(({ name }) => name === "stock"),
    );
    expect(describePlan(plan, tell).sections.map(({ name }) => name)).not.toContain("stock");
  });
});

describe("the report of a panel", () => {
  const panel = planPanel({ polygon: { sides: 9, apothem: 150 } });

  test("has the blank and every cut", () => {
    const report = describePanel(panel, tell);
    const { items } = blockOf(report, "list", ["panel", "blank"]);
    expect(items[0]).toContain(`L${panel.blank.width} × L${panel.blank.height}`);
    const { cells, caption } = blockOf(report, "table", ["panel", "cuts"]);
    expect(caption).toContain(`A${panel.setting}`);
    expect(cells.map((row) => row.slice(0, 4))).toEqual(
      panel.cuts.map(({ step, side, against, up }) => [String(step), String(side + 1), String(against + 1), up]),
    );
    cells.forEach(([, , , , middle], index) => {
      const { fromSide, fromBase } = panel.cuts[index]!.middle;
      expect(middle).toBe(
        `L${fromSide.distance} from the ${fromSide.edge}, L${fromBase.distance} from the ${fromBase.edge}`,
      );
    });
  });

  test("of a pane tells the glazier its sizes, and no cut", () => {
    const report = describePanel(panel, { ...tell, work: "glass" });
    expect(report.sections.map(({ name }) => name)).toEqual(["pane"]);
    const [text] = blockOf(report, "list", ["pane", "pane"]).items;
    const { side, interiorAngle, acrossFlats, acrossCorners } = panel.panel;
    for (const part of [`L${side}`, `A${interiorAngle}`, `L${acrossFlats}`, `L${acrossCorners}`])
      expect(text).toContain(part);
    expect(JSON.stringify(report)).not.toContain("miter gauge");
  });

  test("lists sixty cuts and corners, and says how many follow", () => {
    const many = planPanel({ polygon: { sides: 100, apothem: 900 } });
    const report = describePanel(many, tell);
    expect(blockOf(report, "table", ["panel", "cuts"]).cells).toHaveLength(60);
    expect(blockOf(report, "list", ["panel", "more-cuts"]).items).toEqual([
      `${many.cuts.length - 60} more cuts follow in the same way.`,
    ]);
  });
});

describe("the report of a correction", () => {
  test("has the lines of the correction, finely written", () => {
    const setting = correctSetting({ sides: 8, slope: 20, width: 40, seenGap: 1.2, open: "outside" });
    const onSaw = correctFromGap(PLANS["a tray"]!, { seenGap: 1, open: "inside" });
    for (const correction of [setting, onSaw]) {
      const { items } = blockOf(describeCorrection(correction, tell), "list", ["correction", "correction"]);
      expect(items).toEqual(correctionLines(correction, tell));
      expect(items.join(" ")).toContain(`A${Math.abs(correction.correction.miter)}`);
    }
  });
});

describe("the report of a shop order", () => {
  const report = describeShopOrder(ORDER, tell);
  const blocks = blocksOf(report, "rounds");
  const itemsOf = (ending: string): readonly string[] =>
    blocks.flatMap((block) => (block.kind === "list" && block.name.endsWith(ending) ? block.items : []));

  test("has every setting with its readings, and every cut in order", () => {
    const groups = ORDER.rounds.flatMap((round) => round.groups);
    const settings = itemsOf("-setting");
    expect(settings).toHaveLength(groups.length);
    groups.forEach(({ miter, bevel, saw }, index) => {
      expect(settings[index]).toContain(`Saw ${saw + 1}`);
      expect(settings[index]).toContain(`miter scale to A${miter.reading}`);
      expect(settings[index]).toContain(`bevel scale to A${bevel.reading}`);
      if (miter.toward !== "none") expect(settings[index]).toContain(`A${miter.reading} to the ${miter.toward}`);
    });
    const cuts = groups.flatMap((group) => group.cuts);
    const lines = itemsOf("-cuts");
    expect(lines).toHaveLength(cuts.length);
    cuts.forEach(({ name, step, times, length, arris, kept }, index) => {
      expect(lines[index]).toMatch(new RegExp(`^${name}, step ${step}: .*, ${times} times`));
      expect(lines[index]).toContain(`keep the part to the ${kept}.`);
      if (length !== null) expect(lines[index]).toContain(`L${length} along the ${arrisLabel(arris)}`);
    });
  });

  test("says first which frames are left out, and why, and last how often things are set anew", () => {
    const [first] = blocks;
    const [left] = ORDER.left;
    expect(first).toMatchObject({ name: "left", isStrong: true });
    const reasons = left!.obstacles.map((obstacle) => obstacleText(obstacle, tell)).join(" ");
    expect(itemsOf("left")).toEqual([`${left!.name} is left out: ${reasons}`]);
    expect(itemsOf("sum")).toEqual([english.shop.sum(ORDER.changes)]);
    expect(blocks.at(-1)!.name).toBe("sum");
  });

  test("isolates names that run from right to left", () => {
    const plan = planFrame({ sides: 4, profile: plain, opening: { side: 200 } });
    const named = describeShopOrder(shopOrder([{ name: "بركة", plan }]), tell);
    expect(JSON.stringify(named)).toContain("\u2068بركة\u2069, step 1");
  });
});
