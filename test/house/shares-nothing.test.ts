import { describe, expect, test } from "vitest";
import {
  correctFromGap,
  sawPlan,
  frameGeometry,
  panelForOpening,
  planFrame,
  shopOrder,
  stockJob,
  type FrameBrief,
} from "miterwright/frame";
import { closingPiece, measuredOpening, ringClosure } from "miterwright/closure";
import { joinCorner } from "miterwright/miter";
import { planPanel, simulatePanel } from "miterwright/panel";
import { offsetPolygon, polygonAround, polygonCorners, polygonExtent, polygonWithin } from "miterwright/polygon";
import { parseProfile, molding, profileFromPoints, rabbetSeating, sectionAt } from "miterwright/profile";
import { parseSaw, cradleFor, lieSection, placeCut, stopContact, tableSaw } from "miterwright/saw";
import { verifyFit, fitStock } from "miterwright/stock";
import { panelRoom } from "miterwright/wood";
import { deepFreeze } from "../frame/briefs.js";
import { objectsIn } from "./objects-in.js";

/** A value as a framework for user interfaces hands it out: every object in it behind a proxy, which cannot be cloned. */
function reactive<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  return new Proxy(value, { get: (target, key, self) => reactive(Reflect.get(target, key, self) as unknown) });
}

/** A brief that has an object wherever one may stand. */
const brief = {
  sides: 6,
  slope: 15,
  pose: "corner-down",
  opening: { contains: { width: 300, height: 200, allowance: 2 } },
  profile: molding({ width: 52, thickness: 19, rabbet: { width: 9, depth: 11 } }),
  contents: [
    { name: "pane", thickness: 2, material: "glass", cost: { amount: 8, per: "square-foot" } },
    { name: "mount", thickness: 2, material: { density: 700, expansion: 1e-5 } },
    {
      name: "panel",
      thickness: 3,
      material: {
        species: { radial: 4, tangential: 8, specificGravity: 0.5, coefficients: { radial: 0.001, tangential: 0.003 } },
      },
    },
  ],
  clearance: 1,
  saw: tableSaw({ depth: 75 }),
  rough: { method: "square", allowance: 10 },
  sticks: [{ id: "pine", length: 2400, cost: 5, defects: [{ start: 100, end: 120 }] }],
  species: { radial: 4, tangential: 8, specificGravity: 0.5 },
  moisture: { made: { temperature: 20, humidity: 40 }, seasons: [{ temperature: 21, humidity: 30 }, 12] },
  cost: { amount: 3, per: "meter" },
  hanging: { by: "wire", screwDepth: 5 },
} as const satisfies FrameBrief;
const sheetBrief = { ...brief, opening: { cutFrom: { width: 420, height: 297 } } } as const;
const level = { sides: 5, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6, depth: 9 } } as const;
const plan = planFrame(brief);
const { geometry } = plan;
const cut = geometry.pieces[0].end;
const job = plan.stockJobs[0]!;
const END = { miter: 29.9, bevel: 0 };
const PIECES = Array.from({ length: 6 }, () => ({ length: 200, start: END, end: END }));

/** Public functions that take objects and give objects back, each with arguments. */
const CALLS: readonly (readonly [string, (...given: never[]) => unknown, readonly unknown[]])[] = [
  ["planFrame", planFrame, [brief]],
  ["planFrame of a sheet", planFrame, [sheetBrief]],
  ["planFrame of level measures", planFrame, [level]],
  ["frameGeometry", frameGeometry, [brief]],
  ["frameGeometry of level measures", frameGeometry, [level]],
  ["sawPlan", sawPlan, [geometry, { saw: brief.saw, rough: brief.rough }]],
  ["stockJob", stockJob, [geometry, { kerf: 3, rough: brief.rough, sticks: brief.sticks }]],
  ["shopOrder", shopOrder, [[{ name: "tray", plan }]]],
  ["correctFromGap", correctFromGap, [plan, { seenGap: 1, open: "outside", shown: { miter: 29, bevel: 14 } }]],
  ["panelForOpening", panelForOpening, [plan, { acrossFlats: [300, 300.1, 300.2] }]],
  ["planPanel", planPanel, [{ polygon: geometry.opening, clearance: 1 }]],
  ["simulatePanel", simulatePanel, [plan.panel]],
  ["fitStock", fitStock, [job, { stepLimit: 1e4 }]],
  ["verifyFit", verifyFit, [job, fitStock(job, { stepLimit: 1e4 })]],
  ["molding", molding, [{ width: 52, thickness: 19, rabbet: { width: 9, depth: 11 }, madeFor: { slope: 20 } }]],
  ["profileFromPoints", profileFromPoints, [{ outline: brief.profile.outline, arrises: brief.profile.arrises }]],
  ["parseProfile", parseProfile, [{ ...brief.profile, madeFor: 20 }]],
  ["sectionAt", sectionAt, [brief.profile, 20]],
  ["rabbetSeating", rabbetSeating, [brief.profile, { slope: 10, contents: [{ name: "pane", thickness: 2 }] }]],
  ["parseSaw", parseSaw, [brief.saw]],
  ["tableSaw", tableSaw, [{ miter: brief.saw.miter }]],
  ["placeCut", placeCut, [cut, { lay: "flat", saw: brief.saw, kept: "left" }]],
  ["lieSection", lieSection, [brief.profile, { slope: 10, lay: "flat" }]],
  ["stopContact", stopContact, [cut, brief.profile, { slope: 10, lay: "flat" }]],
  ["cradleFor", cradleFor, [brief.profile, 10]],
  ["joinCorner", joinCorner, [{ turn: 60, first: { slope: 10, thickness: 20 }, second: { slope: 20, thickness: 20 } }]],
  ["offsetPolygon", offsetPolygon, [geometry.opening, 2]],
  ["polygonAround", polygonAround, [{ sides: 6, width: 300, height: 200 }]],
  ["polygonWithin", polygonWithin, [{ sides: 6, width: 300, height: 200 }]],
  ["polygonCorners", polygonCorners, [geometry.opening]],
  ["polygonExtent", polygonExtent, [geometry.opening]],
  ["ringClosure", ringClosure, [{ pieces: PIECES, at: "outside", width: 40 }]],
  ["closingPiece", closingPiece, [{ pieces: PIECES.slice(1), at: "outside", width: 40 }]],
  ["measuredOpening", measuredOpening, [{ sides: 6, acrossFlats: [300, 300.1, 300.2] }]],
  [
    "panelRoom",
    panelRoom,
    [
      {
        grain: "flat-sawn",
        grainDirection: 0,
        polygon: geometry.opening,
        species: brief.species,
        from: 8,
        seasons: [{ temperature: 21, humidity: 30 }, 12],
      },
    ],
  ],
];

describe.each(CALLS)("%s", (_, call, given) => {
  const run = (args: readonly unknown[]): unknown => (call as (...args: readonly unknown[]) => unknown)(...args);

  test("shares no object with what it was given", () => {
    // Frozen, what is changed on the way throws.
    const frozen = deepFreeze(structuredClone(given));
    const own = objectsIn(frozen);
    const shared = [...objectsIn(run(frozen))].filter((object) => own.has(object));
    expect(shared).toEqual([]);
  });

  test("takes a reactive object, and gives back one that can be cloned and is the same", () => {
    const plainly = run(given);
    expect(structuredClone(run(given.map(reactive)))).toEqual(plainly);
  });
});

test("a brief that is changed afterwards leaves its plan as it was", () => {
  const own = structuredClone(brief) as unknown as { profile: { outline: { x: number }[] }; saw: { depth: number } };
  const made = planFrame(own as unknown as FrameBrief);
  const before = JSON.stringify(made);
  own.profile.outline[0]!.x = -5;
  own.saw.depth = 1;
  expect(JSON.stringify(made)).toBe(before);
});
