import type { HazardSignal } from "../../core/hazard.js";
import type { Pose } from "../../core/geometry-types.js";
import type { LayName } from "../../miter/index.js";
import type { StickSurface } from "../../saw/index.js";

/** What things are called on paper. */
export interface LabelWords {
  /** Edges of the molding that have a name of ours. Edges that the caller named keep their names. */
  readonly edges: Readonly<Record<string, string>>;
  /** The longest line of a piece, where it runs along no named edge. */
  readonly longestLine: string;
  /** The shortest line of a piece, where it runs along no named edge. */
  readonly shortestLine: string;
  /** Surfaces of the stick. */
  readonly surfaces: Readonly<Record<StickSurface, string>>;
  /** How the stick lies, to go on after "the stick lies". */
  readonly lays: Readonly<Record<LayName, string>>;
  /** A stick that is rolled about its length, by an angle. */
  readonly rolled: (values: { readonly angle: string }) => string;
  /** A stick that lies so in a cradle. */
  readonly inCradle: (values: { readonly lay: string }) => string;
  /** Signal words of hazards. */
  readonly signals: Readonly<Record<HazardSignal, string>>;
  /** The numbers of hazards, by their names there. */
  readonly hazardNumbers: Readonly<Record<string, string>>;
  /** How the sides of a frame or a panel are numbered. */
  readonly numbering: Readonly<Record<Pose, string>>;
}

/** How sides are numbered, in English; by itself, since some drawings need no other label. */
export const englishNumbering: LabelWords["numbering"] = {
  "side-down": "Sides are numbered counter-clockwise from 1, the side at the bottom.",
  "corner-down": "Sides are numbered counter-clockwise from 1, the side to the right of the bottom corner.",
};

/** Edges of the molding, in English. These, surfaces and lays stand by themselves, so that whoever needs one of them bundles no other label. */
export const englishEdges: LabelWords["edges"] = {
  sightFace: "sight edge at the face",
  sightBack: "sight edge at the back",
  outerFace: "outer edge at the face",
  outerBack: "outer edge at the back",
  wallLedge: "rabbet wall at the ledge",
  wallMouth: "rabbet wall at the back",
  sightCut: "sight edge where its cut ends",
  outerCut: "outer edge where its cut ends",
  wall: "rabbet wall",
  outer: "outermost point",
  sight: "sight edge",
  opening: "edge of the opening",
};

/** The longest line of a piece, in English. */
export const LONGEST_LINE: string = "longest line of the piece";

/** Surfaces of the stick, in English. */
export const englishSurfaces: LabelWords["surfaces"] = {
  back: "back",
  face: "face",
  "sight-edge": "sight edge",
  "outer-edge": "outer edge",
};

/** How the stick lies, in English. */
export const englishLayNames: LabelWords["lays"] = {
  propped: "propped at its slope",
  flat: "flat on its back",
  "face-down": "face down",
  "sight-edge-down": "on its sight edge",
  "outer-edge-down": "on its outer edge",
};

/** A stick that is rolled, in English. */
export function englishRolled({ angle }: { readonly angle: string }): string {
  return `rolled by ${angle}`;
}

/** In English. */
export const englishLabels: LabelWords = {
  edges: englishEdges,
  longestLine: LONGEST_LINE,
  shortestLine: "shortest line of the piece",
  surfaces: englishSurfaces,
  lays: englishLayNames,
  rolled: englishRolled,
  inCradle: ({ lay }) => `${lay}, in a cradle`,
  signals: { danger: "Danger", warning: "Warning", caution: "Caution", notice: "Notice" },
  hazardNumbers: {
    above: "above the top",
    aboveAndBelow: "above and below",
    across: "across",
    angle: "angle",
    base: "base of the offcut",
    bearing: "edge at the gauge",
    bevel: "bevel",
    bevelGraduation: "bevel mark",
    bevelMiss: "bevel off by",
    clearance: "clearance",
    crosscut: "longest cut of the saw",
    deepest: "deepest screws",
    depth: "depth",
    height: "height",
    inside: "open inside",
    jointGap: "gap",
    lap: "lap",
    lapLeft: "lap left",
    lastStretch: "last stretch",
    leanAngle: "leaning by",
    // "left 2 mm" reads as a direction.
    left: "room behind the contents",
    leftAndRight: "left and right",
    length: "length",
    limit: "limit",
    line: "line of cut",
    longest: "longest",
    made: "moisture when fitted",
    mass: "mass",
    miter: "miter",
    miterGraduation: "miter mark",
    miterMiss: "miter off by",
    needed: "needed",
    outside: "open outside",
    overhang: "overhang",
    piece: "piece",
    planMiter: "plan miter",
    pull: "pull of each half, of the weight",
    pushStick: "push stick",
    rest: "rest",
    retreat: "drawn back by",
    rise: "rise",
    screw: "screws",
    slope: "slope",
    slopeOff: "slope off by",
    slopeSearched: "slopes tried within",
    usual: "usual depth",
    width: "width",
    wood: "wood",
  },
  numbering: englishNumbering,
};
