import type { HazardCode, HazardSignal } from "miterwright/errors";
import type { ContentsLayer, FrameBrief } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { miterSaw, tableSaw } from "miterwright/saw";
import { plain, rabbeted } from "./briefs.js";

/** What raises a hazard and what does not. */
export interface HazardCase {
  /** The signals that it has, the gravest last. */
  readonly signals: readonly HazardSignal[];
  /** A brief that raises it with each of these signals. */
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
/** A molding of which no more is known than how wide it is, taken level, and how wide its lip is. */
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
    signals: ["warning", "danger"],
    raises: [
      { ...calm, opening: { side: 210 } },
      { ...calm, opening: { side: 60 } },
    ],
    quiet: { ...calm, opening: { side: 230 } },
  },
  "short-rest": {
    signals: ["warning"],
    raises: [{ ...calm, sticks: [{ id: "pine", length: 1700 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 2000 }] },
  },
  "trapped-piece": {
    signals: ["warning"],
    raises: [{ ...calm, rough: { method: "none" }, saw: miterSaw() }],
    quiet: { ...calm, rough: { method: "none" } },
  },
  "rip-fence": {
    signals: ["warning"],
    raises: [calm],
    quiet: { ...calm, saw: miterSaw() },
  },
  "piece-under-bevel": {
    signals: ["warning"],
    raises: [{ ...calm, slope: 20, lay: "flat" }],
    quiet: { ...calm, slope: 20, lay: "face-down" },
  },
  "offcut-under-bevel": {
    signals: ["warning"],
    raises: [{ ...calm, slope: 20, lay: "face-down" }],
    quiet: { ...calm, slope: 20, lay: "flat" },
  },
  "depth-not-known": {
    signals: ["caution"],
    raises: [{ ...calm, profile: tall }],
    quiet: { ...calm, profile: tall, saw: tableSaw({ depth: 90 }) },
  },
  "thrown-offcut": {
    signals: ["warning"],
    raises: [{ ...calm, profile: molding({ width: 39, thickness: 20 }) }],
    quiet: { ...calm, profile: molding({ width: 41, thickness: 20 }) },
  },
  tip: {
    signals: ["warning"],
    raises: [{ ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 60, lay: "propped" }],
    quiet: { ...calm, profile: molding({ width: 30, thickness: 30 }), slope: 40, lay: "propped" },
  },
  "balance-not-known": {
    signals: ["warning"],
    raises: [{ ...measured, slope: 30, lay: "propped" }],
    quiet: { ...measured, slope: 30, lay: "flat" },
  },
  fasteners: {
    signals: ["warning"],
    raises: [{ ...calm, slope: 30, lay: "propped" }],
    quiet: { ...calm, slope: 30, lay: "flat" },
  },
  feather: {
    signals: ["notice"],
    raises: [{ ...calm, lay: "face-down" }],
    quiet: { ...calm, lay: "flat" },
  },
  "flip-error": {
    signals: ["notice"],
    raises: [calm],
    quiet: { ...calm, saw: miterSaw() },
  },
  capacity: {
    signals: ["warning"],
    raises: [{ ...calm, saw: tableSaw({ depth: 10 }) }],
    quiet: { ...calm, saw: tableSaw({ depth: 60 }) },
  },
  "long-stick": {
    signals: ["warning"],
    raises: [{ ...calm, sticks: [{ id: "pine", length: 3000 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 2990 }] },
  },
  "short-stick": {
    signals: ["notice"],
    raises: [{ ...calm, sticks: [{ id: "pine", length: 500 }] }],
    quiet: { ...calm, sticks: [{ id: "pine", length: 520 }] },
  },
  "deep-panel": {
    signals: ["warning"],
    raises: [{ ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 690 }) }],
    quiet: { ...calm, contents: [board], sides: 6, saw: tableSaw({ gaugeReach: 700 }) },
  },
  "short-panel-edge": {
    signals: ["danger"],
    raises: [{ ...held, contents: [board], sides: 6, opening: { side: 90 } }],
    quiet: { ...held, contents: [pane], sides: 6, opening: { side: 90 } },
  },
  "narrow-rip": {
    signals: ["danger"],
    raises: [{ ...calm, contents: [board], opening: { side: 149 } }],
    quiet: { ...calm, contents: [board], opening: { side: 151 } },
  },
  dust: {
    signals: ["warning"],
    raises: [calm],
    quiet: null,
  },
  reach: {
    signals: ["notice"],
    raises: [{ ...calm, sides: 7 }],
    quiet: { ...calm, sides: 6 },
  },
  "end-grain": {
    signals: ["notice"],
    raises: [{ ...calm, sides: 9 }],
    quiet: { ...calm, sides: 8 },
  },
  "missed-lip": {
    signals: ["notice", "warning"],
    raises: [
      { ...held, opening: { contains: { width: 300, height: 400 } } },
      { ...held, opening: { contains: { width: 300, height: 400 } }, contents: [pane] },
    ],
    quiet: { ...held, opening: { contains: { width: 400, height: 400 } } },
  },
  "lip-not-known": {
    signals: ["notice", "warning"],
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
    signals: ["notice"],
    raises: [{ ...calm, opening: { contains: { width: 300, height: 400 } } }],
    quiet: { ...calm, opening: { contains: { width: 400, height: 400 } } },
  },
  "no-contents-left": {
    signals: ["notice"],
    raises: [{ ...calm, opening: { side: 20 }, clearance: 20 }],
    quiet: { ...calm, opening: { side: 20 }, clearance: 5 },
  },
  "seating-impossible": {
    signals: ["notice"],
    raises: [{ ...held, sides: 6, slope: 70, contents: [board] }],
    quiet: { ...held, sides: 6, slope: 20, contents: [board] },
  },
  "seating-not-known": {
    signals: ["notice"],
    raises: [{ ...measured, slope: 20, contents: [board] }],
    quiet: { ...measured, slope: 0, contents: [board] },
  },
  "narrow-lip": {
    signals: ["caution", "warning"],
    raises: [
      { ...held, profile: narrowLip, clearance: 2, contents: [board] },
      { ...held, profile: narrowLip, clearance: 2, contents: [pane] },
    ],
    quiet: { ...held, contents: [board] },
  },
  "shallow-rabbet": {
    signals: ["notice"],
    raises: [{ ...held, contents: [{ name: "board", thickness: 10 }] }],
    quiet: held,
  },
  "glass-tolerance": {
    signals: ["notice"],
    raises: [{ ...held, contents: [pane, { ...board, thickness: 6 }] }],
    quiet: { ...held, contents: [acrylic, { ...board, thickness: 6 }] },
  },
  "glass-handling": {
    signals: ["warning"],
    raises: [{ ...held, contents: [pane] }],
    quiet: { ...held, contents: [acrylic] },
  },
  "pane-on-arris": {
    signals: ["caution"],
    raises: [{ ...held, slope: 10, contents: [pane] }],
    quiet: { ...held, contents: [pane] },
  },
  "large-pane": {
    signals: ["warning"],
    raises: [{ ...held, opening: { acrossCorners: 810 }, contents: [pane] }],
    quiet: { ...held, opening: { acrossCorners: 800 }, contents: [pane] },
  },
  "art-on-glass": {
    signals: ["notice"],
    raises: [{ ...held, contents: [pane, { name: "old print", thickness: 0.2 }] }],
    quiet: { ...held, contents: [pane, { name: "mat", thickness: 1.5 }, { name: "old print", thickness: 0.2 }] },
  },
  heavy: {
    signals: ["warning", "danger"],
    raises: [
      { ...held, hanging: { by: "wire", extraMass: 15 } },
      { ...held, hanging: { by: "wire", extraMass: 26 } },
    ],
    quiet: { ...held, hanging: { by: "wire", extraMass: 1 } },
  },
  "long-screws": {
    signals: ["caution"],
    raises: [{ ...held, hanging: { by: "wire", screwDepth: 18 } }],
    quiet: { ...held, hanging: { by: "wire", screwDepth: 16 } },
  },
  "narrow-hanger-seat": {
    signals: ["caution"],
    raises: [{ ...wired, profile: molding({ width: 8, thickness: 20 }) }],
    quiet: { ...wired, profile: molding({ width: 12, thickness: 20 }) },
  },
  "leaning-hanger-seat": {
    signals: ["caution"],
    raises: [{ ...wired, slope: 11 }],
    quiet: { ...wired, slope: 9 },
  },
  "no-hanger-seat": {
    signals: ["notice"],
    raises: [{ ...wired, profile: pointed }],
    quiet: wired,
  },
  "flat-wire": {
    signals: ["caution"],
    raises: [{ ...held, hanging: { by: "wire", wireAngle: 20 } }],
    quiet: { ...held, hanging: { by: "wire", wireAngle: 35 } },
  },
  "hook-shows": {
    signals: ["notice"],
    raises: [{ ...held, hanging: { by: "wire", wireAngle: 75 } }],
    quiet: { ...held, hanging: { by: "wire", wireAngle: 35 } },
  },
  "mass-not-known": {
    signals: ["caution"],
    raises: [{ ...wired, contents: [board] }],
    quiet: { ...wired, contents: [pane] },
  },
  "season-gap": {
    signals: ["notice"],
    raises: [{ ...calm, species: "American beech" }],
    quiet: { ...calm, species: still },
  },
  "panel-room": {
    signals: ["notice", "caution"],
    raises: [
      { ...held, clearance: 0.5, contents: [solid] },
      { ...held, opening: { side: 4000 }, clearance: 0, contents: [pane] },
    ],
    quiet: { ...held, clearance: 0.5, contents: [{ ...solid, material: { species: still } }] },
  },
  "panel-lap": {
    signals: ["caution", "warning"],
    raises: [
      { ...held, clearance: 7.5, contents: [solid] },
      { ...held, species: "American beech", profile: narrowLip, clearance: 3.9, contents: [pane] },
    ],
    quiet: { ...held, clearance: 7, contents: [solid] },
  },
};
