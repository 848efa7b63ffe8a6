import { correctSetting } from "miterwright/closure";
import type { DrawnPlan } from "miterwright/drawing";
import {
  correctFromGap,
  planFrame,
  shopOrder,
  type FrameBrief,
  type FramePlan,
  type ShopOrder,
} from "miterwright/frame";
import { planPanel } from "miterwright/panel";
import { regularPolygon } from "miterwright/polygon";
import { molding } from "miterwright/profile";
import {
  describeCorrection,
  describeFit,
  describePanel,
  describePlan,
  describeShopOrder,
  type Block,
  type Report,
} from "miterwright/report";
import { miterSaw, tableSaw } from "miterwright/saw";
import { fitStock, type StockFit, type StockJob } from "miterwright/stock";
import { formatters, type Formats } from "miterwright/units";
import { plain, rabbeted } from "../frame/briefs.js";

/** Formatters of millimeters. */
export const FORMATS: Formats = formatters({ unit: "mm", digits: 2 });

const pane = { name: "pane", thickness: 2, material: "glass" } as const;

/** A brief of every kind that is told of in another way. */
export const BRIEFS: Readonly<Record<string, FrameBrief>> = {
  "a flat frame with everything": {
    sides: 5,
    profile: rabbeted,
    opening: { contains: { width: 200, height: 150 } },
    contents: [pane, { name: "panel", thickness: 4, material: { species: "white ash" }, cost: 3 }],
    clearance: 1.5,
    species: "black cherry",
    moisture: { made: 8, seasons: [6, { temperature: 21, humidity: 65 }] },
    cost: { amount: 4, per: "meter" },
    hanging: { by: "wire", screwDepth: 10 },
    rough: { method: "square", allowance: 10 },
    sticks: [{ id: "pine", length: 2400, count: 3, cost: 7.5 }],
  },
  "a tray": {
    sides: 9,
    slope: 20,
    profile: rabbeted,
    opening: { acrossFlats: 300 },
    contents: [{ name: "acrylic", thickness: 2 }],
    sticks: [{ id: "larch", length: 800 }],
  },
  "a propped one": {
    sides: 6,
    slope: 25,
    lay: "propped",
    profile: molding({ width: 60, thickness: 24, rabbet: { width: 12, depth: 10 } }),
    opening: { side: 240 },
    contents: [pane],
    saw: miterSaw(),
    hanging: { by: "two-hooks" },
  },
  "a reverse one in inches": { sides: 8, slope: -40, profile: plain, opening: { acrossFlats: 400 }, unit: "in" },
  "one of level measures": {
    sides: 7,
    slope: 15,
    measured: { levelWidth: 40, lap: 8, depth: 9 },
    opening: { side: 200 },
    rough: { method: "mitered", allowance: 12 },
  },
  "one whose contents can't be held": {
    sides: 6,
    slope: 75,
    profile: rabbeted,
    opening: { side: 300 },
    contents: [pane],
  },
  "one whose rack runs short": {
    sides: 9,
    slope: 20,
    profile: plain,
    opening: { acrossFlats: 300 },
    sticks: [{ id: "larch", length: 900, count: 1 }],
  },
  "one that no lay can cut": {
    sides: 3,
    slope: 60,
    profile: plain,
    opening: { side: 300 },
    saw: tableSaw({ miter: { left: 5, right: 5, reads: "from-square", step: 1 } }),
  },
  "one of forty sides": { sides: 40, slope: 5, profile: rabbeted, opening: { acrossFlats: 900 }, contents: [pane] },
};

/** Their plans. */
export const PLANS: Readonly<Record<string, FramePlan>> = Object.fromEntries(
  Object.entries(BRIEFS).map(([name, brief]) => [name, planFrame(brief)]),
);

/** What is made of a plan's stock jobs. */
export function fitsOf({ stockJobs }: FramePlan): StockFit[] {
  return stockJobs.map((job) => fitStock(job, { stepLimit: 1e4 }));
}

/** A job of sticks of several kinds, some offcuts of which are kept. */
export const JOB: StockJob = {
  pieces: [
    { id: "rail", length: 410, count: 5 },
    { id: "stile", length: 655.5, count: 3 },
  ],
  sticks: [
    { id: "ash", length: 2400, cost: 9 },
    { id: "oak", length: 1200, count: 1 },
  ],
  kerf: 3,
  keep: 200,
};

/** The order of several frames, one of which no saw cuts. */
export const ORDER: ShopOrder = shopOrder(
  ["a tray", "a propped one", "one of level measures", "one that no lay can cut"].map((name) => ({
    name,
    plan: PLANS[name]!,
  })),
);

/** Something that is told, how it is told, and what its figures are drawn from. */
export interface Told<T = unknown> {
  readonly told: T;
  readonly describe: (told: T) => Report;
  readonly drawnFrom: (told: T) => DrawnPlan;
}

function told<T>(value: T, describe: (told: T) => Report, drawnFrom: (told: T) => DrawnPlan): Told {
  return { told: value, describe, drawnFrom } as Told;
}

const options = { formats: FORMATS };
const nothing = (): DrawnPlan => ({});
const tray = PLANS["a tray"]!;

/** Everything that a describer tells of. */
export const TOLD: Readonly<Record<string, Told>> = {
  ...Object.fromEntries(
    Object.entries(PLANS).map(([name, plan]) => [
      name,
      told(
        { frame: plan, fits: fitsOf(plan) },
        ({ frame, fits }) => describePlan(frame, { fits }),
        ({ frame, fits: [fit] }) => (fit === undefined ? frame : { ...frame, fit }),
      ),
    ]),
  ),
  "a fit": told(
    { job: JOB, fit: fitStock(JOB) },
    ({ job, fit }) => describeFit(job, fit, options),
    (drawn) => drawn,
  ),
  "a panel": told(
    planPanel({ polygon: regularPolygon({ sides: 7, side: 200 }) }),
    (panel) => describePanel(panel, options),
    (panel) => ({ panel }),
  ),
  "a pane": told(
    planPanel({ polygon: regularPolygon({ sides: 80, side: 20 }) }),
    (panel) => describePanel(panel, { ...options, work: "glass" }),
    (panel) => ({ panel }),
  ),
  "a correction": told(
    correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" }),
    (correction) => describeCorrection(correction, options),
    nothing,
  ),
  "a correction on the saw": told(
    correctFromGap(tray, { seenGap: 1, open: "inside" }),
    (correction) => describeCorrection(correction, options),
    nothing,
  ),
  "a shop order": told(ORDER, (order) => describeShopOrder(order, options), nothing),
};

/** The blocks of a section; none where it is missing. */
export function blocksOf({ sections }: Report, section: string): readonly Block[] {
  return sections.find(({ name }) => name === section)?.blocks ?? [];
}

/** A block of one kind by its section and name. */
export function blockOf<K extends Block["kind"]>(
  report: Report,
  kind: K,
  [section, name]: readonly [section: string, name: string],
): Extract<Block, { kind: K }> {
  const found = blocksOf(report, section).find((block) => block.name === name);
  if (found?.kind !== kind) throw new Error(`the report has no ${kind} ${section}.${name}`);
  return found as Extract<Block, { kind: K }>;
}
