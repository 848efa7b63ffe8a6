import { describe, expect, test } from "vitest";
import type { Hazard } from "miterwright/errors";
import { checkBrief, planFrame, type ContentsLayer, type FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { readProjectFile } from "../house/project.js";
import { plain, rabbeted } from "./briefs.js";

/** The codes that the guide on hazards lists. */
const codes = [
  ...new Set([...readProjectFile("docs/guides/hazards.md").matchAll(/^\| `([a-z-]+)`/gm)].map(([, code]) => code!)),
];

/** A frame that gives little to say: large, flat, four-sided, cut from roughs of plain stock. */
const calm: FrameBrief = {
  sides: 4,
  profile: plain,
  opening: { side: 400 },
  rough: { method: "square", allowance: 10 },
};
const pane: ContentsLayer = { name: "pane", thickness: 2, material: "glass" };
const board: ContentsLayer = { name: "board", thickness: 3 };
const acrylic: ContentsLayer = { name: "sheet", thickness: 2, material: "acrylic" };
/** A panel whose grain is as wide as it can be, from dry to damp. */
const solid: ContentsLayer = { name: "panel", thickness: 6, material: { species: "American beech" } };
/** Wood that does not move. */
const still = { radial: 0, tangential: 0, specificGravity: 0.6 };
const held = { ...calm, profile: rabbeted, species: still, clearance: 3 } as const;

/** For every code a brief that raises it, and one next to it that does not; none where every plan carries it. */
const CASES: Readonly<Record<string, { raises: FrameBrief; quiet: FrameBrief | null }>> = {
  "short-piece": { raises: { ...calm, opening: { side: 210 } }, quiet: { ...calm, opening: { side: 230 } } },
  "trapped-piece": {
    raises: { ...calm, rough: { method: "none" }, saw: miterSaw() },
    quiet: { ...calm, rough: { method: "none" } },
  },
  "trapped-under-bevel": { raises: { ...calm, slope: 10 }, quiet: calm },
  "depth-not-known": {
    raises: { ...calm, profile: molding({ width: 90, thickness: 76 }) },
    quiet: { ...calm, profile: molding({ width: 90, thickness: 76 }), saw: tableSaw({ depth: 90 }) },
  },
  "thrown-offcut": {
    raises: { ...calm, profile: molding({ width: 39, thickness: 20 }) },
    quiet: { ...calm, profile: molding({ width: 41, thickness: 20 }) },
  },
  tip: {
    raises: { ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 60, lay: "propped" },
    quiet: { ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 40, lay: "propped" },
  },
  fasteners: { raises: { ...calm, slope: 30, lay: "propped" }, quiet: { ...calm, slope: 30, lay: "flat" } },
  feather: { raises: { ...calm, lay: "face-down" }, quiet: { ...calm, lay: "flat" } },
  "flip-error": { raises: calm, quiet: { ...calm, saw: miterSaw() } },
  capacity: {
    raises: { ...calm, saw: tableSaw({ depth: 10 }) },
    quiet: { ...calm, saw: tableSaw({ depth: 60 }) },
  },
  "panel-gauge": {
    raises: { ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 690 }) },
    quiet: { ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 700 }) },
  },
  "narrow-rip": {
    raises: { ...calm, contents: [board], opening: { side: 149 } },
    quiet: { ...calm, contents: [board], opening: { side: 151 } },
  },
  "long-stick": {
    raises: { ...calm, sticks: [{ id: "pine", length: 3000 }] },
    quiet: { ...calm, sticks: [{ id: "pine", length: 2990 }] },
  },
  "short-stick": {
    raises: { ...calm, sticks: [{ id: "pine", length: 500 }] },
    quiet: { ...calm, sticks: [{ id: "pine", length: 520 }] },
  },
  dust: { raises: calm, quiet: null },
  "rip-fence": { raises: calm, quiet: { ...calm, saw: miterSaw() } },
  reach: { raises: { ...calm, sides: 7 }, quiet: { ...calm, sides: 6 } },
  "end-grain": { raises: { ...calm, sides: 9 }, quiet: { ...calm, sides: 8 } },
  "missed-lip": {
    raises: { ...held, opening: { contains: { width: 300, height: 400 } } },
    quiet: { ...held, opening: { contains: { width: 400, height: 400 } } },
  },
  seat: { raises: { ...held, contents: [{ name: "board", thickness: 10 }] }, quiet: held },
  glass: { raises: { ...held, contents: [pane] }, quiet: { ...held, contents: [acrylic] } },
  "art-on-glass": {
    raises: { ...held, contents: [pane, { name: "old print", thickness: 0.2 }] },
    quiet: { ...held, contents: [pane, { name: "mat", thickness: 1.5 }, { name: "old print", thickness: 0.2 }] },
  },
  heavy: {
    raises: { ...held, hanging: { by: "wire", extraMass: 15 } },
    quiet: { ...held, hanging: { by: "wire", extraMass: 1 } },
  },
  hanging: {
    raises: { ...held, hanging: { by: "wire", wireAngle: 20 } },
    quiet: { ...held, hanging: { by: "wire", wireAngle: 35 } },
  },
  "season-gap": { raises: { ...calm, species: "American beech" }, quiet: { ...calm, species: still } },
  "panel-room": {
    raises: { ...held, clearance: 0.5, contents: [solid] },
    quiet: { ...held, clearance: 0.5, contents: [{ ...solid, material: { species: still } }] },
  },
  "panel-lap": {
    raises: { ...held, clearance: 7.5, contents: [solid] },
    quiet: { ...held, clearance: 7, contents: [solid] },
  },
};

const hazardsOf = (brief: FrameBrief): readonly Hazard[] => planFrame(brief).hazards;

test("every code that the guide lists has a brief that raises it and one that does not", () => {
  expect(Object.keys(CASES).sort()).toEqual([...codes].sort());
});

describe.each(codes)("the hazard %s", (code) => {
  const { raises, quiet } = CASES[code] ?? { raises: calm, quiet: calm };

  test("is raised by a sound brief, with a kind for every number, a sentence and a source", () => {
    expect(checkBrief(raises)).toEqual([]);
    const raised = hazardsOf(raises).filter((hazard) => hazard.code === code);
    expect(raised).not.toEqual([]);
    for (const hazard of raised) {
      expect(["note", "care", "danger"]).toContain(hazard.signal);
      expect(hazard.sentence).toMatch(/^[A-Z].*\.$/s);
      expect(Object.keys(hazard.kinds)).toEqual(Object.keys(hazard.numbers));
      expect(hazard.source).not.toBe("");
    }
  });

  test("is not raised by the brief beside it", () => {
    if (quiet === null) {
      for (const { raises: other } of Object.values(CASES))
        expect(hazardsOf(other).map((one) => one.code)).toContain(code);
      return;
    }
    expect(checkBrief(quiet)).toEqual([]);
    expect(hazardsOf(quiet).map((hazard) => hazard.code)).not.toContain(code);
  });
});

test("the steps name only hazards that the plan carries", () => {
  for (const { raises } of Object.values(CASES)) {
    const { sawing } = planFrame(raises);
    const carried = sawing.hazards.map(({ code }) => code);
    for (const { hazards } of sawing.operations) for (const code of hazards) expect(carried).toContain(code);
  }
});

test("a printed source is named where the rule has one", () => {
  const [narrow] = hazardsOf(CASES["narrow-rip"]!.raises).filter(({ code }) => code === "narrow-rip");
  // HSE, Woodworking Information Sheet 16, as a contractor's safety standard restates it: a push stick of 450 mm or more feeds the last 300 mm.
  expect(narrow).toMatchObject({
    signal: "danger",
    numbers: { width: 149, limit: 150, lastStretch: 300, pushStick: 450 },
    source:
      "HSE, Woodworking Information Sheet 16, Circular saw benches, as a contractor's safety standard restates it; the narrowest width is common practice",
  });
});
