import type { HazardCode } from "miterwright/errors";
import type { ContentsLayer, FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { plain, rabbeted } from "./briefs.js";

/** What raises a hazard and what does not. */
export interface HazardCase {
  /** A brief that raises it in each of its grades. */
  readonly raises: readonly FrameBrief[];
  /** A brief next to these that does not raise it; `null` where every plan carries it. */
  readonly quiet: FrameBrief | null;
}

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
const wired = { ...held, hanging: { by: "wire" } } as const;
/** A stick of which no more is known than how wide it is, taken level, and how wide its lip is. */
const measured = {
  sides: 4,
  opening: { side: 400 },
  measured: { levelWidth: 45, lap: 6 },
  rough: calm.rough,
} as const;
const tall = molding({ width: 90, thickness: 76 });
const narrowLip = molding({ width: 50, thickness: 20, rabbet: { width: 4, depth: 9 } });
/** A molding without a surface that could be screwed to: its back is an arris. */
const pointed = {
  outline: [
    { x: 10, y: 0 },
    { x: 20, y: 20 },
    { x: 0, y: 20 },
  ],
  arrises: {},
};

/** Every hazard: the compiler asks for a case when a code is added. */
export const HAZARD_CASES: Readonly<Record<HazardCode, HazardCase>> = {
  "short-piece": {
    raises: [
      { ...calm, opening: { side: 210 } },
      { ...calm, opening: { side: 60 } },
    ],
    quiet: { ...calm, opening: { side: 230 } },
  },
  "short-rest": {
    raises: [{ ...calm, sticks: [{ id: "pine", length: 1700 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 2000 }] },
  },
  "trapped-piece": {
    raises: [{ ...calm, rough: { method: "none" }, saw: miterSaw() }],
    quiet: { ...calm, rough: { method: "none" } },
  },
  "rip-fence": { raises: [calm], quiet: { ...calm, saw: miterSaw() } },
  "piece-under-bevel": {
    raises: [{ ...calm, slope: 20, lay: "flat" }],
    quiet: { ...calm, slope: 20, lay: "face-down" },
  },
  "offcut-under-bevel": {
    raises: [{ ...calm, slope: 20, lay: "face-down" }],
    quiet: { ...calm, slope: 20, lay: "flat" },
  },
  "depth-not-known": {
    raises: [{ ...calm, profile: tall }],
    quiet: { ...calm, profile: tall, saw: tableSaw({ depth: 90 }) },
  },
  "thrown-offcut": {
    raises: [{ ...calm, profile: molding({ width: 39, thickness: 20 }) }],
    quiet: { ...calm, profile: molding({ width: 41, thickness: 20 }) },
  },
  tip: {
    raises: [{ ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 60, lay: "propped" }],
    quiet: { ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 40, lay: "propped" },
  },
  "balance-not-known": {
    raises: [{ ...measured, slope: 30, lay: "propped" }],
    quiet: { ...measured, slope: 30, lay: "flat" },
  },
  fasteners: { raises: [{ ...calm, slope: 30, lay: "propped" }], quiet: { ...calm, slope: 30, lay: "flat" } },
  feather: { raises: [{ ...calm, lay: "face-down" }], quiet: { ...calm, lay: "flat" } },
  "flip-error": { raises: [calm], quiet: { ...calm, saw: miterSaw() } },
  capacity: {
    raises: [{ ...calm, saw: tableSaw({ depth: 10 }) }],
    quiet: { ...calm, saw: tableSaw({ depth: 60 }) },
  },
  "long-stick": {
    raises: [{ ...calm, sticks: [{ id: "pine", length: 3000 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 2990 }] },
  },
  "short-stick": {
    raises: [{ ...calm, sticks: [{ id: "pine", length: 500 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 520 }] },
  },
  "deep-panel": {
    raises: [{ ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 690 }) }],
    quiet: { ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 700 }) },
  },
  "short-panel-edge": {
    raises: [{ ...held, contents: [board], sides: 6, opening: { side: 90 } }],
    quiet: { ...held, contents: [pane], sides: 6, opening: { side: 90 } },
  },
  "narrow-rip": {
    raises: [{ ...calm, contents: [board], opening: { side: 149 } }],
    quiet: { ...calm, contents: [board], opening: { side: 151 } },
  },
  dust: { raises: [calm], quiet: null },
  reach: { raises: [{ ...calm, sides: 7 }], quiet: { ...calm, sides: 6 } },
  "end-grain": { raises: [{ ...calm, sides: 9 }], quiet: { ...calm, sides: 8 } },
  "missed-lip": {
    raises: [
      { ...held, opening: { contains: { width: 300, height: 400 } } },
      { ...held, opening: { contains: { width: 300, height: 400 } }, contents: [pane] },
    ],
    quiet: { ...held, opening: { contains: { width: 400, height: 400 } } },
  },
  "lip-not-known": {
    raises: [
      { ...measured, measured: { levelWidth: 45 }, opening: { contains: { width: 300, height: 400 } } },
      {
        ...measured,
        measured: { levelWidth: 45 },
        opening: { contains: { width: 300, height: 400 } },
        contents: [pane],
      },
    ],
    quiet: { ...measured, opening: { contains: { width: 300, height: 400 } } },
  },
  "unfilled-opening": {
    raises: [{ ...calm, opening: { contains: { width: 300, height: 400 } } }],
    quiet: { ...calm, opening: { contains: { width: 400, height: 400 } } },
  },
  "no-contents-left": {
    raises: [{ ...calm, opening: { side: 20 }, clearance: 20 }],
    quiet: { ...calm, opening: { side: 20 }, clearance: 5 },
  },
  "seat-impossible": {
    raises: [{ ...held, sides: 6, slope: 70, contents: [board] }],
    quiet: { ...held, sides: 6, slope: 20, contents: [board] },
  },
  "seat-not-known": {
    raises: [{ ...measured, slope: 20, contents: [board] }],
    quiet: { ...measured, slope: 0, contents: [board] },
  },
  "narrow-lip": {
    raises: [
      { ...held, profile: narrowLip, clearance: 2, contents: [board] },
      { ...held, profile: narrowLip, clearance: 2, contents: [pane] },
    ],
    quiet: { ...held, contents: [board] },
  },
  "shallow-rabbet": { raises: [{ ...held, contents: [{ name: "board", thickness: 10 }] }], quiet: held },
  "glass-tolerance": {
    raises: [{ ...held, contents: [pane, { ...board, thickness: 6 }] }],
    quiet: { ...held, contents: [acrylic, { ...board, thickness: 6 }] },
  },
  "glass-handling": { raises: [{ ...held, contents: [pane] }], quiet: { ...held, contents: [acrylic] } },
  "pane-on-arris": { raises: [{ ...held, slope: 10, contents: [pane] }], quiet: { ...held, contents: [pane] } },
  "large-pane": {
    raises: [{ ...held, opening: { acrossCorners: 810 }, contents: [pane] }],
    quiet: { ...held, opening: { acrossCorners: 800 }, contents: [pane] },
  },
  "art-on-glass": {
    raises: [{ ...held, contents: [pane, { name: "old print", thickness: 0.2 }] }],
    quiet: { ...held, contents: [pane, { name: "mat", thickness: 1.5 }, { name: "old print", thickness: 0.2 }] },
  },
  heavy: {
    raises: [
      { ...held, hanging: { by: "wire", extraMass: 15 } },
      { ...held, hanging: { by: "wire", extraMass: 26 } },
    ],
    quiet: { ...held, hanging: { by: "wire", extraMass: 1 } },
  },
  "long-screws": {
    raises: [{ ...held, hanging: { by: "wire", screwDepth: 18 } }],
    quiet: { ...held, hanging: { by: "wire", screwDepth: 16 } },
  },
  "narrow-hanger-seat": {
    raises: [{ ...wired, profile: molding({ width: 8, thickness: 20 }) }],
    quiet: { ...wired, profile: molding({ width: 12, thickness: 20 }) },
  },
  "leaning-hanger-seat": { raises: [{ ...wired, slope: 11 }], quiet: { ...wired, slope: 9 } },
  "no-hanger-seat": { raises: [{ ...wired, profile: pointed }], quiet: wired },
  "flat-wire": {
    raises: [{ ...held, hanging: { by: "wire", wireAngle: 20 } }],
    quiet: { ...held, hanging: { by: "wire", wireAngle: 35 } },
  },
  "hook-shows": {
    raises: [{ ...held, hanging: { by: "wire", wireAngle: 75 } }],
    quiet: { ...held, hanging: { by: "wire", wireAngle: 35 } },
  },
  "mass-not-known": { raises: [{ ...wired, contents: [board] }], quiet: { ...wired, contents: [pane] } },
  "season-gap": { raises: [{ ...calm, species: "American beech" }], quiet: { ...calm, species: still } },
  "panel-room": {
    raises: [
      { ...held, clearance: 0.5, contents: [solid] },
      { ...held, clearance: 0.01, contents: [pane] },
    ],
    quiet: { ...held, clearance: 0.5, contents: [{ ...solid, material: { species: still } }] },
  },
  "panel-lap": {
    raises: [{ ...held, clearance: 7.5, contents: [solid] }],
    quiet: { ...held, clearance: 7, contents: [solid] },
  },
};
