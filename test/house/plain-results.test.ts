import { closingPiece, correctSetting, ringClosure } from "miterwright/closure";
import {
  correctFromGap,
  frameGeometry,
  panelForOpening,
  parsePlan,
  planFrame,
  shopOrder,
  stockJob,
  type FrameBrief,
  type FramePlan,
} from "miterwright/frame";
import { planPanel } from "miterwright/panel";
import { fitStock, verifyFit, type StockJob } from "miterwright/stock";
import { describe, expect, test } from "vitest";
import { throughJson } from "../frame/briefs.js";
import { BRIEFS, JOB } from "../report/reports.js";
import { objectsIn } from "./objects-in.js";
import { spoil } from "./spoil.js";

/** A calculation of plain data from plain data. */
type Calculation = readonly [given: unknown, calculate: (given: never) => unknown];

const tray = planFrame(BRIEFS["a tray"]!);
const END = { miter: 29.9, bevel: 0 };
const PIECES = Array.from({ length: 6 }, () => ({ length: 200, start: END, end: END }));
const seen = { seenGap: 1, open: "outside" } as const;

const CALCULATIONS: Readonly<Record<string, Calculation>> = {
  ...Object.fromEntries(
    Object.entries(BRIEFS).flatMap(([name, brief]): [string, Calculation][] => [
      [`the plan of ${name}`, [brief, (given: FrameBrief) => planFrame(given)]],
      [`the geometry of ${name}`, [brief, (given: FrameBrief) => frameGeometry(given)]],
      [`the stored plan of ${name}`, [planFrame(brief), (given: FramePlan) => parsePlan(given)]],
      ...(brief.sticks === undefined
        ? []
        : ([
            [
              `the fit of ${name}`,
              [planFrame(brief).stockJobs[0], (given: StockJob) => fitStock(given, { stepLimit: 1e4 })],
            ],
          ] satisfies [string, Calculation][])),
    ]),
  ),
  "a fit of two kinds of sticks": [JOB, (job: StockJob) => fitStock(job)],
  "the verdict on a fit": [{ job: JOB, fit: fitStock(JOB) }, ({ job, fit }: never) => verifyFit(job, fit)],
  "a stock job of several frames": [
    tray,
    ({ geometry }: FramePlan) => stockJob(geometry, { kerf: 3, sticks: [{ id: "pine", length: 5000 }], frames: 3 }),
  ],
  "a panel": [{ polygon: { sides: 7, apothem: 200 }, clearance: 1 }, (given: never) => planPanel(given)],
  "a panel for a measured opening": [
    tray,
    (plan: FramePlan) => panelForOpening(plan, { acrossFlats: Array.from({ length: 9 }, (_, k) => 300 + k / 10) }),
  ],
  "a correction of a setting": [{ sides: 8, slope: 20, width: 40, ...seen }, (given: never) => correctSetting(given)],
  "a correction on the saw": [tray, (plan: FramePlan) => correctFromGap(plan, seen)],
  "the order of several frames": [
    ["a tray", "a propped one", "one that no lay can cut"].map((name) => ({ name, plan: planFrame(BRIEFS[name]!) })),
    (given: never) => shopOrder(given),
  ],
  "the closure of measured pieces": [
    { pieces: PIECES, at: "outside", width: 40 },
    (given: never) => ringClosure(given),
  ],
  "a closing piece": [{ pieces: PIECES.slice(1), at: "outside", width: 40 }, (given: never) => closingPiece(given)],
};

describe.each(Object.entries(CALCULATIONS))("%s", (_, [given, calculate]) => {
  const run = calculate as (given: unknown) => unknown;
  const result = run(given);

  test("is plain data, which JSON and structuredClone leave as it is", () => {
    expect(throughJson(result)).toStrictEqual(result);
    expect(structuredClone(result)).toStrictEqual(result);
    for (const object of objectsIn(result))
      expect([Object.prototype, Array.prototype]).toContain(Object.getPrototypeOf(object));
  });

  test("is the same of what went through JSON", () => {
    expect(run(throughJson(given))).toStrictEqual(result);
  });

  test("stays as it is when what was given is changed afterwards", () => {
    const own = structuredClone(given);
    const made = run(own);
    spoil(own);
    expect(own).not.toEqual(given);
    expect(made).toStrictEqual(result);
  });

  test("leaves what was given, and the next result, as they are when it is changed itself", () => {
    const own = structuredClone(given);
    spoil(run(own));
    expect(own).toStrictEqual(given);
    expect(run(own)).toStrictEqual(result);
  });
});
