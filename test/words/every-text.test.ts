import { expect, test } from "vitest";
import { correctSetting, ringChecks } from "miterwright/closure";
import { drawFigure, drawPanelCut, drawPlanView, drawStock } from "miterwright/drawing";
import { correctFromGap, planFrame, shopOrder, type FrameBrief } from "miterwright/frame";
import { compoundMiterTable } from "miterwright/miter";
import { planPanel } from "miterwright/panel";
import { regularPolygon } from "miterwright/polygon";
import { molding } from "miterwright/profile";
import {
  describeCorrection,
  describeFit,
  describePanel,
  describePlan,
  describeShopOrder,
  tabulateMiters,
  tabulatePolygons,
  type Report,
} from "miterwright/report";
import { miterSaw, tableSaw, type ObstacleCode } from "miterwright/saw";
import { reportSheet } from "miterwright/sheet";
import { fitStock, type StockJob } from "miterwright/stock";
import { formatters } from "miterwright/units";
import {
  arrisLabel,
  english,
  frameCheckText,
  obstacleText,
  reasonText,
  ringCheckText,
  sawMoveText,
  stackText,
  type Reason,
} from "miterwright/words";
import { HAZARD_CASES } from "../frame/hazard-cases.js";
import { watch } from "./pseudo-catalog.js";

const tray = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
const pane = { name: "pane", thickness: 2, material: "glass", cost: 9 } as const;
const narrow = { left: 20, right: 20, reads: "from-square", step: 0.5 } as const;
const upright = { left: 5, right: 5, reads: "from-vertical", step: 0.5 } as const;

/** Frames that between them need every text of a plan. */
const BRIEFS: readonly FrameBrief[] = [
  ...Object.values(HAZARD_CASES).flatMap(({ raises }) => raises),
  {
    sides: 9,
    slope: 20,
    opening: { acrossFlats: 300 },
    profile: tray,
    contents: [pane],
    clearance: 1,
    sticks: [
      { id: "ash", length: 2400, cost: 4 },
      { id: "elm", length: 900 },
    ],
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
    contents: [pane],
    hanging: { by: "two-hooks" },
    saw: miterSaw(),
  },
  {
    sides: 8,
    opening: { contains: { width: 300, height: 200 } },
    measured: { levelWidth: 40, lap: 6, depth: 9 },
    contents: [pane],
    rough: { method: "square", allowance: 20 },
    species: "white ash",
  },
  {
    sides: 8,
    opening: { side: 300 },
    measured: { levelWidth: 40 },
    species: "white ash",
    rough: { method: "mitered", allowance: 20 },
  },
  { sides: 4, slope: 60, opening: { side: 300 }, profile: tray, lay: "propped" },
  {
    sides: 5,
    slope: 70,
    opening: { cutFrom: { width: 600, height: 500 } },
    measured: { levelWidth: 30 },
    lay: "propped",
  },
  {
    sides: 60,
    opening: { side: 30 },
    profile: tray,
    contents: [{ name: "board", thickness: 3 }],
    sticks: [{ id: "elm", length: 500, count: 2 }],
  },
  { sides: 140, opening: { side: 30 }, profile: tray, contents: [{ name: "board", thickness: 3 }] },
  { sides: 6, opening: { side: 200 }, profile: tray, lay: 12.5 },
  {
    sides: 6,
    slope: 20,
    opening: { side: 200 },
    profile: tray,
    acceptedGap: 1e-5,
    saw: tableSaw({
      miter: { left: 60, right: 60, reads: "from-fence", step: 0.5 },
      bevel: { left: 45, right: 45, reads: "from-table", step: 0.5 },
    }),
  },
  { sides: 4, slope: 60, opening: { side: 300 }, profile: tray, saw: tableSaw({ depth: 30, crosscut: 60 }) },
  { sides: 4, slope: 80, opening: { side: 300 }, profile: tray, saw: tableSaw({ miter: narrow }) },
  { sides: 4, slope: 10, opening: { side: 300 }, profile: tray, saw: tableSaw({ bevel: upright }) },
  { sides: 6, opening: { side: 300 }, profile: molding({ width: 20, thickness: 60 }), saw: tableSaw({ crosscut: 40 }) },
  { sides: 6, opening: { side: 300 }, profile: tray, hanging: { by: "wire" } },
  { sides: 4, opening: { contains: { width: 300, height: 200 } }, profile: tray, contents: [pane] },
  {
    sides: 4,
    pose: "corner-down",
    opening: { contains: { width: 200, height: 300 } },
    profile: tray,
    contents: [pane],
  },
  { sides: 4, opening: { contains: { width: 200, height: 300 } }, profile: tray, contents: [pane] },
  { sides: 4, opening: { side: 300 }, profile: tray, saw: tableSaw({ crosscut: 10 }) },
  { sides: 6, slope: 0.3, opening: { side: 300 }, profile: tray },
  { sides: 300, opening: { side: 30 }, profile: tray },
  { sides: 6, slope: 20, opening: { side: 300 }, measured: { levelWidth: 40, lap: 5 }, species: "white ash" },
];

/** The pictures that belong to reports of several plans. */
const JOB: StockJob = {
  pieces: Array.from({ length: 30 }, (_, index) => ({ id: `P${index}`, length: 20 + index, count: 1 })),
  sticks: [{ id: "ash", length: 2400 }],
  kerf: 3,
  keep: 100,
};

test("every text of the catalog is told by something", () => {
  const { words, unused } = watch(english);
  const telling = { formats: formatters({ unit: "mm" }), words };
  const draw = (source: Parameters<typeof drawFigure>[0], { sections }: Report): void => {
    for (const block of sections.flatMap(({ blocks }) => blocks)) {
      const figures =
        block.kind === "figure" ? [block] : block.kind === "steps" ? block.steps.flatMap(({ figures }) => figures) : [];
      for (const figure of figures) drawFigure(source, figure, telling);
    }
  };
  for (const brief of BRIEFS) {
    const plan = planFrame(brief);
    const fits = plan.stockJobs.map((job) => fitStock(job, { stepLimit: 1e4 }));
    draw(fits[0] === undefined ? plan : { ...plan, fit: fits[0] }, describePlan(plan, { ...telling, fits }));
    describeShopOrder(shopOrder([{ name: "harbor", plan }]), telling);
    for (const check of plan.checks) frameCheckText(check, { sides: brief.sides, words });
    for (const cut of plan.panel?.cuts.slice(0, 8) ?? []) drawPanelCut(plan.panel!, { ...telling, step: cut.step });
  }
  const plans = BRIEFS.slice(-24).map((brief) => planFrame(brief));
  for (const plan of plans) {
    if (plan.sawing.graduations === null) continue;
    for (const open of ["inside", "outside"] as const)
      for (const seenGap of [0, 0.5, 3]) describeCorrection(correctFromGap(plan, { seenGap, open }), telling);
  }
  // What few frames need is told of results with the code in them.
  const correction = correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" });
  for (const change of ["leave", "more", "less", "through-zero"] as const)
    describeCorrection({ ...correction, changes: { miter: change, bevel: change } }, telling);
  const tall = planFrame({ sides: 6, opening: { side: 300 }, profile: tray });
  const lays = tall.sawing.lays.map((lay, index) =>
    index === 0 ? lay : { ...lay, possible: false, obstacles: [{ code: "rocks" as const }] },
  );
  describePlan({ ...tall, sawing: { ...tall.sawing, lays, lay: lays[0]! } }, telling);
  draw({ job: JOB, fit: fitStock(JOB) }, describeFit(JOB, fitStock(JOB), telling));
  drawStock(JOB, { layouts: [] }, telling);
  const small: StockJob = {
    pieces: [{ id: "peg", length: 2, count: 400 }],
    sticks: [{ id: "ash", length: 2400 }],
    kerf: 1,
  };
  drawStock(small, fitStock(small), telling);
  const one = { stick: "ash", times: 1, pieces: [{ piece: "P0", start: 0, end: 20, count: 1 }], offcut: 0, kept: [] };
  drawStock(JOB, { layouts: Array.from({ length: 201 }, () => one) }, telling);
  for (const work of ["sawn", "glass"] as const)
    describePanel(planPanel({ polygon: { sides: 140, apothem: 600 } }), { ...telling, work });
  drawPlanView(planFrame({ sides: 900, opening: { side: 2 }, profile: tray }), telling);
  for (const show of ["miter", "bevel", "dihedral", undefined] as const)
    tabulateMiters(compoundMiterTable({ sides: [4, 6], slopes: [30] }), { ...telling, show });
  const polygon = regularPolygon({ sides: 5, side: 10 });
  tabulatePolygons([polygon], { ...telling, show: Object.keys(english.tables.polygons.quantities) as never });
  for (const edge of Object.keys(english.labels.edges)) arrisLabel(edge, { words });
  for (const reason of Object.keys(english.reasons) as Reason[]) reasonText(reason, { words });
  for (const code of Object.keys(english.obstacles) as ObstacleCode[]) obstacleText({ code }, { words });
  for (const verdict of ["roomy", "tight", "short", "proud"] as const) stackText(verdict, { words });
  for (const move of ["flip-end-for-end", "slide-past-the-blade"] as const) sawMoveText(move, { words });
  for (const [sides, slope] of [
    [5, 20],
    [6, 0],
  ] as const) {
    const checks = ringChecks({ sides, slope, width: 40, thickness: 20, acceptedGap: 0.25, apothem: 150 });
    for (const check of checks) ringCheckText(check, { words });
  }
  reportSheet(describePlan(planFrame(BRIEFS[0]!), telling), {
    figure: (block) => drawFigure(planFrame(BRIEFS[0]!), block, telling),
    words,
  });
  // What is checked again on the glued frame stands in the row of the dry one.
  expect(unused()).toEqual(["closing.checks.when.glued"]);
});
