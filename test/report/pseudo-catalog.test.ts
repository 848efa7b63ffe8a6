import { describe, expect, test } from "vitest";
import { drawFigure, type FigureBlock } from "miterwright/drawing";
import { correctFromGap, planFrame, shopOrder, type FrameBrief, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import {
  describeCorrection,
  describeFit,
  describePanel,
  describePlan,
  describeShopOrder,
  tabulateChecks,
  tabulateLays,
  tabulateLengths,
  tabulateMiters,
  tabulatePolygons,
  type Report,
} from "miterwright/report";
import { compoundMiterTable } from "miterwright/miter";
import { planPanel } from "miterwright/panel";
import { regularPolygon } from "miterwright/polygon";
import { miterSaw, tableSaw } from "miterwright/saw";
import { shopSheet } from "miterwright/sheet";
import { fitStock, type StockFit } from "miterwright/stock";
import { formatters, type Formats } from "miterwright/units";
import { english, type Words } from "miterwright/words";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { lettersOutside, outsideOf, pseudoOf } from "../words/pseudo-catalog.js";

const PSEUDO: Words = pseudoOf(english);
const FORMATS: Readonly<Record<string, Formats>> = {
  "millimeters with a point": formatters({ unit: "mm", denominator: 2 }),
  "millimeters with a comma": formatters({ unit: "mm", decimalMarker: "," }),
  "inches in fractions": formatters({ unit: "in", denominator: 32 }),
  "inches with a comma": formatters({ unit: "in", digits: 3, decimalMarker: "," }),
};

const tray = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
const NAMES = ["Tide pane", "Chart 7", "Backer", "LARCH", "OAK", "HARBOR", "QUAY", "molding"];
const contents = [
  { name: "Tide pane", thickness: 2, material: "glass" as const, cost: 9 },
  { name: "Chart 7", thickness: 0.5 },
  { name: "Backer", thickness: 3, material: { density: 600 } },
];
const sticks = [
  { id: "LARCH", length: 2400, cost: 12 },
  { id: "OAK", length: 700, count: 1 },
];

/** Briefs that between them raise every hazard and reach every part of a report. */
const BRIEFS: readonly FrameBrief[] = [
  {
    sides: 9,
    slope: 20,
    opening: { acrossFlats: 300 },
    profile: tray,
    contents,
    clearance: 1,
    sticks,
    hanging: { by: "wire" },
    species: "black cherry",
    cost: 5,
  },
  {
    sides: 6,
    slope: -30,
    pose: "corner-down",
    opening: { side: 400 },
    profile: tray,
    contents,
    hanging: { by: "two-hooks" },
    saw: miterSaw(),
  },
  {
    sides: 8,
    opening: { contains: { width: 300, height: 200 } },
    measured: { levelWidth: 40, lap: 6, depth: 9 },
    contents: [{ name: "Tide pane", thickness: 2, material: "glass" }],
    rough: { method: "square", allowance: 20 },
  },
  {
    sides: 4,
    slope: 60,
    opening: { side: 300 },
    profile: tray,
    lay: "propped",
    saw: tableSaw({ depth: 60 }),
    contents,
  },
  {
    sides: 5,
    slope: 70,
    opening: { cutFrom: { width: 600, height: 500 } },
    measured: { levelWidth: 30 },
    lay: "propped",
  },
  {
    sides: 12,
    slope: 35,
    opening: { side: 90 },
    profile: tray,
    saw: tableSaw({
      bevel: { left: 1, right: 0, reads: "from-vertical", step: 0.5 },
      miter: { left: 1, right: 1, reads: "from-fence", step: 0.5 },
    }),
  },
  { sides: 60, opening: { side: 30 }, profile: tray, contents, sticks: [{ id: "OAK", length: 500, count: 2 }] },
  ...Object.values(HAZARD_CASES).flatMap(({ raises }) => raises),
];

function namesOf({ hazards, brief }: FramePlan): string[] {
  return [
    ...NAMES,
    ...hazards.map(({ source }) => source),
    ...brief.contents.map(({ name }) => name),
    ...(brief.sticks ?? []).map(({ id }) => id),
    ...Object.keys(brief.profile?.arrises ?? {}).filter((arris) => !Object.hasOwn(english.labels.edges, arris)),
  ];
}

/** The letters of named edges stand in cells of their own. */
function textsOf(report: Report): string[] {
  const texts: string[] = [];
  const visit = (value: unknown, key: string, parent: unknown): void => {
    if (["kind", "signal", "marker", "figure"].includes(key)) return;
    // A fact's name is read; names of sections and blocks are codes.
    if (key === "name" && !("value" in (parent as object))) return;
    if (typeof value === "string") texts.push(value);
    else if (Array.isArray(value))
      value.forEach((part) => {
        visit(part, key, value);
      });
    else if (typeof value === "object" && value !== null)
      for (const [name, part] of Object.entries(value)) if (name !== "rows") visit(part, name, value);
  };
  visit(report, "", null);
  return texts;
}

/** One letter alone names an edge. */
function isEdgeLetter(word: string): boolean {
  return /^[a-z]$/.test(word);
}

function strays(texts: readonly string[], names: readonly string[]): string[] {
  return texts.flatMap((text) =>
    lettersOutside(text, names)
      .filter((word) => !isEdgeLetter(word))
      .map((word) => `${word}: ${text.slice(0, 300)}`),
  );
}

function fitOf(plan: FramePlan): StockFit[] {
  return plan.stockJobs.map((job) => fitStock(job, { stepLimit: 1e4 }));
}

/** Every figure of a report. */
function figuresOf({ sections }: Report): FigureBlock[] {
  return sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === "figure" ? [block] : block.kind === "steps" ? block.steps.flatMap(({ figures }) => figures) : [],
    ),
  );
}

/** What people see or hear of markup, as one text: a sentence may go on in the next element. */
function shown(markup: string): string {
  return markup
    .replace(/<style>.*?<\/style>/gs, "")
    .split(/<[^>]*>/)
    .map((text) =>
      text
        .replaceAll("&quot;", '"')
        .replaceAll("&#39;", "'")
        .replaceAll("&amp;", "&")
        .replaceAll("&lt;", "<")
        .replaceAll("&gt;", ">"),
    )
    .join(" ");
}

const PLANS = BRIEFS.map((brief) => planFrame(brief));

describe.each(Object.entries(FORMATS))(
  "with %s, every letter outside the catalog belongs to a number, a source or a name",
  (_, formats) => {
    const telling = { formats, words: PSEUDO };

    test("in reports of plans", () => {
      for (const plan of PLANS) {
        const report = describePlan(plan, { ...telling, fits: fitOf(plan) });
        expect(strays(textsOf(report), namesOf(plan))).toEqual([]);
      }
    });

    test("in figures", () => {
      for (const plan of PLANS) {
        const [fit] = fitOf(plan);
        const source = fit === undefined ? plan : { ...plan, fit };
        for (const block of figuresOf(describePlan(plan, { ...telling, fits: fitOf(plan) }))) {
          const { svg, title, description } = drawFigure(source, block, telling);
          expect(strays([shown(svg), title, description], namesOf(plan))).toEqual([]);
        }
      }
    });

    test("on sheets", () => {
      for (const plan of PLANS) {
        const html = shopSheet(plan, { ...telling, fits: fitOf(plan) });
        expect(strays([shown(html)], namesOf(plan))).toEqual([]);
      }
    });

    test("in the other reports and in tables", () => {
      const [plan] = PLANS;
      const [job] = plan!.stockJobs;
      const corrections = [0, 0.5].flatMap((seenGap) =>
        (["outside", "inside"] as const).map((open) => correctFromGap(plan!, { seenGap, open })),
      );
      const orders = PLANS.slice(0, 6).map((one) =>
        shopOrder([
          { name: "HARBOR", plan: one },
          { name: "QUAY", plan: plan! },
        ]),
      );
      const panels = [5, 6, 9].map((sides) => planPanel({ polygon: { sides, apothem: 200 } }));
      const reports = [
        describeFit(job!, fitStock(job!), telling),
        ...corrections.map((correction) => describeCorrection(correction, telling)),
        ...orders.map((order) => describeShopOrder(order, telling)),
        ...panels.flatMap((panel) =>
          (["sawn", "glass"] as const).map((work) => describePanel(panel, { ...telling, work })),
        ),
      ];
      for (const report of reports) expect(strays(textsOf(report), NAMES)).toEqual([]);
      const tables = [
        tabulateChecks(plan!, telling),
        tabulateLays(plan!, telling),
        tabulateLengths(plan!, telling),
        tabulateMiters(compoundMiterTable({ sides: [4, 6], slopes: [30, 45] }), telling),
        tabulatePolygons([regularPolygon({ sides: 5, side: 10 })], telling),
      ];
      for (const { caption, columns, cells } of tables) {
        const texts = [caption, ...columns.map(({ label }) => label), ...cells.flat()];
        expect(strays(texts, NAMES)).toEqual([]);
      }
    });
  },
);

test("what did not come from the catalog is found", () => {
  expect(lettersOutside(outsideOf("⟦The stick lies ⟧face down⟦.⟧"))).toEqual(["face", "down"]);
  expect(lettersOutside('⟦Cut ⟧5 7/16"⟦ and ⟧12.5\u00a0mm⟦.⟧')).toEqual([]);
  const told = describePlan(PLANS[0]!, { words: { ...PSEUDO, steps: english.steps } });
  expect(strays(textsOf(told), namesOf(PLANS[0]!)).length).toBeGreaterThan(10);
});
