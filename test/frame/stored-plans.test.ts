import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPanelCut,
  drawPlanView,
  drawSection,
  drawPiece,
  drawStock,
} from "miterwright/drawing";
import { tabulateChecks, tabulateLays, tabulateLengths } from "miterwright/report";
import { isInputError } from "miterwright/errors";
import {
  correctFromGap,
  sawPlan,
  numberHazards,
  panelForOpening,
  planFrame,
  shopOrder,
  stockJob,
  type FrameBrief,
  type FrameGeometry,
  type FramePlan,
} from "miterwright/frame";
import {
  glueUpLines,
  hazardText,
  hangingLines,
  lastJointText,
  layLines,
  movementLines,
  operationText,
  sawFaultText,
  testCutsText,
} from "miterwright/words";
import { simulatePanel } from "miterwright/panel";
import { molding } from "miterwright/profile";
import { miterSaw } from "miterwright/saw";
import { shopSheet } from "miterwright/sheet";
import { fitStock, type StockFit } from "miterwright/stock";
import { formatters } from "miterwright/units";
import { describe, expect, test } from "vitest";
import { plain, rabbeted, throughJson } from "./briefs.js";

const tell = { formats: formatters({ unit: "mm", digits: 2 }) };

/** A plan as a program may have stored it, with what was made of its stock job. */
interface Stored {
  readonly plan: FramePlan;
  readonly fit?: StockFit;
}

function stored(brief: FrameBrief): Stored {
  const plan = planFrame(brief);
  return throughJson(plan.stockJobs[0] === undefined ? { plan } : { plan, fit: fitStock(plan.stockJobs[0]) });
}

const pane = { name: "pane", thickness: 2, material: "glass" } as const;
const STORED: Readonly<Record<string, Stored>> = {
  "a flat frame with everything": stored({
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
    sticks: [{ id: "pine", length: 2400, count: 3 }],
  }),
  "a propped one": stored({
    sides: 6,
    slope: 25,
    lay: "propped",
    profile: molding({ width: 60, thickness: 24, rabbet: { width: 12, depth: 10 } }),
    opening: { side: 240 },
    contents: [pane],
    saw: miterSaw(),
    hanging: { by: "two-hooks" },
  }),
  "a reverse one": stored({ sides: 8, slope: -40, profile: plain, opening: { acrossFlats: 400 } }),
  "one of level measures": stored({
    sides: 7,
    slope: 15,
    measured: { levelWidth: 40, lap: 8, depth: 9 },
    opening: { side: 200 },
  }),
  "one that no lay can cut": stored({
    sides: 3,
    slope: 60,
    profile: plain,
    opening: { side: 300 },
    saw: {
      ...miterSaw(),
      bevel: { left: 0, right: 0, reads: "from-vertical", step: 1 },
      miter: { left: 10, right: 10, reads: "from-square", step: 1 },
    },
  }),
};

/** What stands at a place of a value that may be damaged; nothing where the place is gone. */
function at(value: unknown, ...place: readonly Key[]): never {
  return place.reduce<unknown>(
    (holder, key) => (holder as Record<Key, unknown> | null | undefined)?.[key],
    value,
  ) as never;
}

/** All that takes a stored plan or a part of one. The sound plan says how many steps, hazards and sides there are. */
const CONSUMERS: Readonly<Record<string, (plan: FramePlan, fit: StockFit | undefined, sound: FramePlan) => unknown>> = {
  shopSheet: (plan, fit) => shopSheet(plan, fit === undefined ? tell : { ...tell, fits: [fit] }),
  drawPlanView: (plan) => drawPlanView(plan, tell),
  drawSection: (plan) => drawSection(plan, tell),
  drawPiece: (plan) => drawPiece(plan, tell),
  drawCut: (plan, _, { sawing }) => sawing.operations.map(({ step }) => drawCut(plan, { ...tell, step })),
  drawCradle: (plan) => drawCradle(plan, tell),
  drawPanel: (plan) => drawPanel(plan.panel!, tell),
  drawPanelCut: (plan, _, { panel }) => panel!.cuts.map(({ step }) => drawPanelCut(plan.panel!, { ...tell, step })),
  drawStock: (plan, fit) => drawStock(at(plan, "stockJobs", 0), fit!, tell),
  tabulateChecks: (plan) => tabulateChecks(plan, tell),
  tabulateLays: (plan) => tabulateLays(plan, tell),
  tabulateLengths: (plan) => tabulateLengths(plan, tell),
  operationText: (plan, _, { sawing }) =>
    sawing.operations.map((__, index) => operationText(at(plan, "sawing", "operations", index), tell)),
  layLines: (plan, _, { sawing }) => sawing.lays.map((__, index) => layLines(at(plan, "sawing", "lays", index), tell)),
  glueUpLines: (plan) => glueUpLines(at(plan, "assembly", "glueUp")),
  lastJointText: (plan) => lastJointText(at(plan, "assembly", "lastJoint")),
  sawFaultText: (plan, _, { assembly }) =>
    assembly.sawErrors!.faults.map((__, index) => sawFaultText(at(plan, "assembly", "sawErrors", "faults", index))),
  testCutsText: (plan) => testCutsText(at(plan, "sawing", "testCuts"), tell),
  movementLines: (plan) => movementLines(plan, tell),
  hangingLines: (plan) => hangingLines(plan, tell),
  hazardText: (plan, _, { hazards }) => hazards.map((__, index) => hazardText(at(plan, "hazards", index), tell)),
  numberHazards: (plan) => numberHazards(plan),
  correctFromGap: (plan) => correctFromGap(plan, { seenGap: 1, open: "outside" }),
  panelForOpening: (plan, _, { geometry: { sides, opening } }) =>
    panelForOpening(plan, { fromCenter: Array.from({ length: sides }, () => opening.apothem) }),
  shopOrder: (plan) => shopOrder([{ name: "frame", plan }]),
  sawPlan: (plan) => sawPlan(plan.geometry),
  stockJob: (plan) => stockJob(plan.geometry, { kerf: 3, sticks: [{ id: "pine", length: 5000 }] }),
  simulatePanel: (plan) => simulatePanel(plan.panel!),
};

/** Which part of a stored plan a consumer reads; the others are left out so that they are not damaged in vain. */
const READS: Readonly<Record<string, readonly (keyof FramePlan | "fit")[]>> = {
  drawPlanView: ["geometry", "contents"],
  drawSection: ["geometry"],
  drawPiece: ["geometry", "sawing"],
  drawCut: ["geometry", "sawing"],
  drawCradle: ["geometry", "sawing"],
  drawPanel: ["panel"],
  drawPanelCut: ["panel"],
  drawStock: ["stockJobs", "fit"],
  tabulateChecks: ["checks"],
  tabulateLays: ["geometry", "sawing"],
  tabulateLengths: ["geometry"],
  operationText: ["sawing"],
  layLines: ["sawing"],
  glueUpLines: ["assembly"],
  lastJointText: ["assembly"],
  sawFaultText: ["assembly"],
  testCutsText: ["sawing"],
  movementLines: ["brief", "movement", "contents"],
  hangingLines: ["hanging"],
  hazardText: ["hazards"],
  numberHazards: ["hazards", "sawing"],
  correctFromGap: ["geometry", "sawing"],
  panelForOpening: ["brief", "geometry", "checks"],
  shopOrder: ["sawing"],
  sawPlan: ["geometry"],
  stockJob: ["geometry"],
  simulatePanel: ["panel"],
};

const DAMAGES: readonly unknown[] = [NaN, "x", {}, null, undefined, -1e400, [], new Array(3), [NaN]];
/** The sheet reads the whole plan and takes longest: it is spared the rarer ones, which its parts' own readers get. */
const SHEET_DAMAGES: readonly unknown[] = DAMAGES.slice(0, 5);

type Key = string | number;

/** The places within a value: every field and item that holds something. Of long arrays the first and the last items. */
function placesOf(value: unknown, place: readonly Key[] = []): (readonly Key[])[] {
  if (typeof value !== "object" || value === null) return place.length > 0 ? [place] : [];
  const keys = Array.isArray(value)
    ? [...value.keys()].filter((k) => k < 1 || k === value.length - 1)
    : Object.keys(value);
  const inner = keys.flatMap((key) => placesOf((value as Record<Key, unknown>)[key], [...place, key]));
  return place.length > 0 ? [place, ...inner] : inner;
}

/** Runs with another value at a place, then puts the old one back. */
function damaged<T>(root: object, place: readonly Key[], damage: unknown, run: () => T): T {
  const last = place.at(-1)!;
  const holder = place
    .slice(0, -1)
    .reduce<Record<Key, unknown>>((at, key) => at[key] as Record<Key, unknown>, root as never);
  const before = holder[last];
  holder[last] = damage;
  try {
    return run();
  } finally {
    holder[last] = before;
  }
}

/** What must not be written: a number that is none, or a value that is no text. */
const TRACES: RegExp = /\bNaN\b|\bundefined\b|\[object |\bInfinity\b/;

function unfit(value: unknown): boolean {
  if (typeof value === "number") return !Number.isFinite(value);
  if (typeof value === "string") return TRACES.test(value);
  if (typeof value !== "object" || value === null) return false;
  return Object.values(value).some(unfit);
}

/** Whether a consumer reads a part of a plan. */
function isRead(name: string, part: Key | undefined): boolean {
  return (READS[name] as readonly unknown[] | undefined)?.includes(part) ?? true;
}

/** What a consumer that takes a part of a plan calls that part. */
const OWN_NAMES: Readonly<Record<string, string>> = {
  operationText: "operation",
  layLines: "lay",
  glueUpLines: "glueUp",
  lastJointText: "lastJoint",
  sawFaultText: "fault",
  testCutsText: "testCuts",
  hazardText: "hazard",
  simulatePanel: "plan",
};

/** What is wrong with how a consumer takes damage at a place: it must refuse it by a path in the same part of the plan, or write sound text. */
function faultOf(name: string, place: readonly Key[], run: () => unknown): string | null {
  try {
    return unfit(run()) ? "wrote what is no number or text" : null;
  } catch (error) {
    if (!isInputError(error)) return `threw ${String(error).slice(0, 120)}`;
    const own = OWN_NAMES[name];
    const path =
      own === undefined
        ? error.path
            .replace(/^plans\[0\]\.plan\.|^plan\./, "")
            .replace(/^job\b/, "stockJobs")
            .replace(/^fits\[0\]/, "fit")
        : error.path;
    const [first] = path.split(/[.[]/);
    if (first === (own ?? place[0])) return null;
    // Where two parts disagree, either may be the damaged one.
    const disagree = error.code === "conflict" || error.code === "unknown";
    return disagree && isRead(name, first) ? null : `refused ${error.message}`;
  }
}

/** Whether a plan has what a consumer takes. */
function hasWhatIsTaken(name: string, { plan, fit }: Stored): boolean {
  if (name === "drawCradle") return plan.sawing.cradle !== null;
  if (["testCutsText", "sawFaultText", "correctFromGap"].includes(name)) return plan.sawing.lay !== null;
  return name !== "drawStock" || fit !== undefined;
}

describe.each(Object.entries(STORED))("of %s", (_, kind) => {
  const { plan } = kind;
  // A copy: what is damaged is not the plan that says how many steps there are.
  const root: FramePlan & { fit?: StockFit } = throughJson(kind.fit === undefined ? plan : { ...plan, fit: kind.fit });

  test.each(Object.keys(CONSUMERS).filter((name) => hasWhatIsTaken(name, kind)))(
    "%s takes it, and refuses it damaged",
    (name) => {
      const consume = (): unknown => CONSUMERS[name]!(root, root.fit, plan);
      expect(unfit(consume())).toBe(false);
      const faults = placesOf(root)
        .filter(([part]) => isRead(name, part))
        .flatMap((place) =>
          (name === "shopSheet" ? SHEET_DAMAGES : DAMAGES).flatMap((damage) => {
            const fault = damaged(root, place, damage, () => faultOf(name, place, consume));
            return fault === null ? [] : [`${place.join(".")} = ${JSON.stringify(damage)}: ${fault}`];
          }),
        );
      expect(faults).toEqual([]);
    },
  );
});

describe("the costs of a stored plan", () => {
  const rate = { amount: 20, per: "square-meter" } as const;
  const costly = planFrame({
    sides: 4,
    profile: plain,
    opening: { side: 200 },
    contents: [
      { ...pane, cost: rate },
      { name: "board", thickness: 3, cost: 2.5 },
    ],
    cost: 1.75,
  });

  test("are numbers or amounts per unit, and read back alike", () => {
    const read = throughJson(costly);
    expect(read.brief.cost).toBe(1.75);
    expect(read.brief.contents.map(({ cost }) => cost)).toEqual([rate, 2.5]);
    const [wood, glass, back] = read.materials.parts.map(({ cost }) => cost!);
    expect([wood, back]).toEqual([
      { quantity: 4, total: 7 },
      { quantity: 1, total: 2.5 },
    ]);
    expect(glass!.quantity).toBeCloseTo(0.04, 12);
    expect(glass!.total).toBeCloseTo(0.8, 12);
    expect(shopSheet(read, tell)).toBe(shopSheet(costly, tell));
  });

  test.each([
    [
      ["brief", "cost"],
      "dear",
      'be an amount from 0 to 1e12 or an object with `amount` and `per`, got "dear" (string)',
    ],
    [["brief", "cost"], null, "be an amount from 0 to 1e12 or an object with `amount` and `per`, got null"],
    [["brief", "cost"], NaN, "be an amount from 0 to 1e12, got NaN (number)"],
    [["brief", "contents", 0, "cost", "amount"], "20", 'be an amount from 0 to 1e12, got "20" (string)'],
    [["brief", "contents", 0, "cost", "per"], "piece", 'be one of "square-meter", "square-foot", got "piece" (string)'],
    [["materials", "parts", 0, "cost"], 7, "be an object, got 7 (number)"],
    [["materials", "parts", 0, "cost", "quantity"], "4", 'be a finite number, got "4" (string)'],
    [["materials", "parts", 0, "cost", "total"], undefined, "be a finite number, got undefined"],
  ] as const)("are refused where %j is %j", (place, damage, expected) => {
    const root = throughJson(costly);
    const name = place.reduce(
      (path: string, key) => (typeof key === "number" ? `${path}[${key}]` : `${path}.${key}`),
      "",
    );
    damaged(root, place, damage, () => {
      expect(() => shopSheet(root, tell)).toThrow(`Expected \`${name.slice(1)}\` to ${expected}`);
    });
  });
});

test("a regular frame with two kinds of pieces or corners is refused", () => {
  const { geometry } = STORED["a propped one"]!.plan;
  for (const part of ["pieces", "corners"] as const) {
    const twice = { ...geometry, [part]: [geometry[part][0], geometry[part][0]] } as unknown as FrameGeometry;
    expect(() => drawSection(twice, tell)).toThrow(
      `Expected \`geometry.${part}\` to be an array of one, got an array of 2`,
    );
  }
});
