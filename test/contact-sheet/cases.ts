import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPanelCut,
  drawPlanView,
  drawSection,
  drawPiece,
  drawStock,
  type Drawing,
  type DrawingOptions,
} from "miterwright/drawing";
import { planFrame, type FrameBrief, type FramePlan } from "miterwright/frame";
import { molding, type Profile } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { fitStock, type StockJob } from "miterwright/stock";
import { formatLength, formatters } from "miterwright/units";

/** What kinds of drawings there are. */
export type Kind = "plan" | "section" | "piece" | "cut" | "cradle" | "panel" | "panel-cut" | "stock";

/** A drawing, and what it is a case of. */
export interface Case {
  readonly kind: Kind;
  readonly name: string;
  readonly drawing: Drawing;
}

/** Formatters of the contact sheet: decimals, with powers of ten for sizes that no shop knows. */
export const WRITTEN: DrawingOptions = {
  formats: {
    ...formatters({ unit: "mm" }),
    length: (value) =>
      Math.abs(value) < 1e5 && (Math.abs(value) > 0.01 || value === 0)
        ? formatLength(value, "mm", { digits: 1 })
        : `${value.toExponential(3)} mm`,
  },
};

/** The molding of the tide-pool tray, in a size: 42 mm wide where the size is 1. */
export function trayMolding(size = 1): Profile {
  return molding({
    width: 42 * size,
    thickness: 18 * size,
    rabbet: { width: 8 * size, depth: 9 * size },
    face: [{ cut: "chamfer", at: "sightFace", width: 3 * size, angle: 45 }],
  });
}

/** What lies in the tray: invented, for the invented Saltmarsh Observatory. */
function contents(size: number): { name: string; thickness: number }[] {
  return [
    { name: "acrylic", thickness: 2 * size },
    { name: "tide chart", thickness: 0.4 * size },
    { name: "backing", thickness: 3 * size },
  ];
}

/** A tray of the contact sheet. */
export function tray(brief: Partial<FrameBrief> & { readonly sides: number }, size = 1): FramePlan {
  return planFrame({
    opening: { acrossFlats: 300 * size },
    profile: trayMolding(size),
    contents: contents(size),
    clearance: size,
    ...brief,
  } as FrameBrief);
}

const SIDES: readonly number[] = [3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const SLOPES: readonly number[] = [-60, -45, -30, -15, -5, 0, 5, 15, 20, 30, 45, 60, 75, 85];
const SIZES: readonly number[] = [1e-6, 1e-3, 1, 1e3, 1e6];

function framesOf(): { readonly name: string; readonly plan: FramePlan }[] {
  const bySides = SIDES.flatMap((sides) =>
    (["side-down", "corner-down"] as const).map((pose) => ({
      name: `${sides} sides, ${pose}`,
      plan: tray({ sides, pose, opening: { contains: { width: 240, height: 160, allowance: 2 } } }),
    })),
  );
  const bySlope = SLOPES.map((slope, index) => ({
    name: `slope ${slope}`,
    plan: tray({ sides: SIDES[index % SIDES.length]!, slope }),
  }));
  const bySize = SIZES.map((size) => ({ name: `size ${size}`, plan: tray({ sides: 9, slope: 20 }, size) }));
  const odd: [string, FramePlan][] = [
    ["panel cut from a sheet", tray({ sides: 5, opening: { cutFrom: { width: 420, height: 297 } } })],
    ["panel cut from a long sheet", tray({ sides: 6, opening: { cutFrom: { width: 1420, height: 297 } } })],
    [
      "level measures alone",
      planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, measured: { levelWidth: 40, lap: 6, depth: 9 } }),
    ],
    ["one level measure", planFrame({ sides: 4, slope: -30, opening: { side: 200 }, measured: { levelWidth: 40 } })],
    ["a tight opening", planFrame({ sides: 3, opening: { side: 12 }, profile: molding({ width: 42, thickness: 18 }) })],
    ["a wide opening", tray({ sides: 8, slope: 30, opening: { acrossFlats: 30000 } })],
    ["a miter saw", tray({ sides: 8, slope: 30, saw: miterSaw(), rough: { method: "square", allowance: 15 } })],
    [
      "a miter saw, reverse section",
      tray({ sides: 6, slope: -25, saw: miterSaw(), rough: { method: "mitered", allowance: 15 } }),
    ],
    ["forty sides", tray({ sides: 40, slope: 10 })],
    ["a thousand sides", tray({ sides: 1000, slope: 10, opening: { acrossFlats: 3e5 } })],
    ["propped", tray({ sides: 6, slope: 25, lay: "propped" })],
    ["propped, steep", tray({ sides: 6, slope: 70, lay: "propped", contents: [] })],
    ["propped, reverse section", tray({ sides: 6, slope: -35, lay: "propped" })],
    ["on its sight edge", tray({ sides: 5, slope: 35, lay: "sight-edge-down" })],
    ["on its outer edge", tray({ sides: 5, slope: 35, lay: "outer-edge-down" })],
    ["face down", tray({ sides: 5, slope: 35, lay: "face-down" })],
  ];
  return [...bySides, ...bySlope, ...bySize, ...odd.map(([name, plan]) => ({ name, plan }))];
}

function jobs(): { readonly name: string; readonly job: StockJob }[] {
  const sticks = [
    { id: "larch", length: 2400 },
    { id: "larch offcut", length: 900, count: 2 },
  ];
  return [
    { name: "one frame", job: { pieces: [{ id: "side", length: 246.2, count: 9 }], sticks, kerf: 3.4, trim: 4 } },
    {
      name: "a lid too",
      job: {
        pieces: [
          { id: "tray side", length: 246.2, count: 9 },
          { id: "lid side", length: 171.3, count: 9 },
          { id: "dowel", length: 22, count: 40 },
        ],
        sticks,
        kerf: 3.4,
        trim: 4,
        keep: 80,
      },
    },
    {
      name: "shared cuts",
      job: {
        pieces: [{ id: "side", length: 246.2, count: 9, share: { key: "side", saving: 25 } }],
        sticks,
        kerf: 3.4,
        keep: 80,
      },
    },
    { name: "many pieces", job: { pieces: [{ id: "pin", length: 9, count: 400 }], sticks, kerf: 2 } },
  ];
}

/** Every drawing of the contact sheet. */
export function listCases(): Case[] {
  const cases: Case[] = [];
  for (const { name, plan } of framesOf()) {
    cases.push({ kind: "plan", name, drawing: drawPlanView(plan, WRITTEN) });
    cases.push({ kind: "section", name, drawing: drawSection(plan, WRITTEN) });
    cases.push({ kind: "piece", name, drawing: drawPiece(plan, WRITTEN) });
    if (plan.panel !== null) cases.push({ kind: "panel", name, drawing: drawPanel(plan.panel, WRITTEN) });
    if (plan.panel !== null && plan.panel.cuts.length > 0) {
      cases.push({ kind: "panel-cut", name, drawing: drawPanelCut(plan.panel, { step: 1, ...WRITTEN }) });
    }
    if (plan.sawing.cradle !== null) cases.push({ kind: "cradle", name, drawing: drawCradle(plan, WRITTEN) });
    for (const { step } of plan.sawing.operations)
      cases.push({ kind: "cut", name: `${name}, step ${step}`, drawing: drawCut(plan, { step, ...WRITTEN }) });
  }
  for (const { name, job } of jobs())
    cases.push({ kind: "stock", name, drawing: drawStock(job, fitStock(job, { stepLimit: 1e5 }), WRITTEN) });
  return cases;
}
