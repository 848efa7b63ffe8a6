import { cosDeg, sinDeg } from "../../core/degrees.js";
import type { LengthUnit, Point } from "../../core/geometry-types.js";
import type { RabbetSeating } from "../../profile/index.js";
import type { FilledBrief } from "../brief/brief.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { layerKind, type LayerKind } from "../materials/material-density.js";
import { convertLength } from "../../units/index.js";

/**
 * How much thicker or thinner than its name float glass may be, in millimeters: up to which nominal thickness, and by how much.
 *
 * The standard lists 2, 3, 4, 5 and 6 mm; 8, 10 and 12 mm; 15 mm; 19 and 25 mm. A thickness between two of them is taken by the thicker.
 */
const TOLERANCES: readonly (readonly [upTo: number, tolerance: number])[] = [
  [6, 0.2],
  [12, 0.3],
  [15, 0.5],
  [25, 1],
];
/** A thickness that was converted is still the one it was, to this share. */
const SAME: number = 1e-9;

/**
 * How much thicker or thinner than its name a pane of float glass may be. In the unit given; `null` for glass thicker than 25 mm, of which nothing is known
 * here.
 *
 * @see EN 572-2, float glass, nominal thickness tolerances (values from memory)
 */
function glassTolerance(thickness: number, unit: LengthUnit): number | null {
  const millimeters = convertLength(thickness, unit, "mm");
  const row = TOLERANCES.find(([upTo]) => millimeters <= upTo * (1 + SAME));
  return row === undefined ? null : convertLength(row[1], "mm", unit);
}

/** A layer of the contents in its place. */
export interface StackLayer {
  /** What it is, as the brief calls it. */
  readonly name: string;
  /** Its nominal thickness. */
  readonly thickness: number;
  /** What it is made of, in one word; `null` where the brief does not say. */
  readonly kind: LayerKind | null;
  /** How far its back lies behind the front of all contents. */
  readonly behind: number;
  /** Height of its back above the section's origin, as it stands; `null` where no section is known or it cannot be held. */
  readonly up: number | null;
  /** How much thicker or thinner than its name it may be; `null` where that is not known, which is for all but glass. */
  readonly tolerance: number | null;
}

/**
 * How the contents fill the rabbet: with room for what holds them (`roomy`), with room unless the glass is as thick as it may be (`tight`), with too little
 * room (`short`), or standing out of its back (`proud`).
 */
export type StackVerdict = "roomy" | "tight" | "short" | "proud";

/** The contents as a stack, held against the rabbet. Depths are plumb: square to the frame's plane. */
export interface ContentsStack {
  /** The layers from the front. */
  readonly layers: readonly StackLayer[];
  /** Their nominal thickness together. */
  readonly thickness: number;
  /** How much thicker or thinner they may be together, by the tolerances that are known. */
  readonly tolerance: number;
  /** Depth left behind them in the rabbet, below 0 where they stand proud of it; `null` where the rabbet is not known or cannot hold them. */
  readonly left: number | null;
  /** The same when all glass is as thick as it may be. */
  readonly leftAtLeast: number | null;
  /** How much of that is beyond the brief's `fastenerRoom`; below 0: so much is lacking. */
  readonly spare: number | null;
  /** The same in one word. */
  readonly verdict: StackVerdict | null;
}

/**
 * By how much rounding may move a depth, as a share of the depths that it is the difference of. Sums of thicknesses that a shop writes down are closer than
 * that.
 */
const ROUNDING: number = 1e-12;

/** Plumb depth behind the contents, and the depths whose difference it is. */
interface DepthLeft {
  readonly left: number;
  readonly wall: number;
}

function depthLeft(seating: RabbetSeating | null, geometry: FrameGeometry, thickness: number): DepthLeft | null {
  const { measured, profile, slope, arrises } = geometry;
  if (seating?.possible === true) {
    // Differences in the section, tilted afterward: those of places in the frame would lose what they have in common.
    const { wallLedge, wallMouth } = profile!.arrises as Record<string, Point>;
    const [x, y] = [wallMouth!.x - wallLedge!.x, wallMouth!.y - wallLedge!.y];
    const drop = -(x * sinDeg(slope) + y * cosDeg(slope));
    // Contents whose back lies above the corner of ledge and wall use none of the wall, and leave more depth than its own.
    if (seating.depthUsed === 0) return { left: seating.layers.at(-1)!.back - arrises["wallMouth"]!.up!, wall: drop };
    return { left: seating.depthLeft * (drop / Math.hypot(x, y)), wall: drop };
  }
  // Level measures of a sloping rabbet do not tell how much of its depth lies in front of the contents.
  const wall = slope === 0 ? measured?.depth : undefined;
  return wall === undefined ? null : { left: wall - thickness, wall };
}

/**
 * Holds the contents' stack against the rabbet as it stands at the slope.
 *
 * On the wall, from the ledge, contents use the depth that `rabbetSeating` gives; what is left of it counts plumb, by the wall's fall over its length. On a
 * ledge
 * that falls outward their back may lie above the corner: then it counts from there. Glass may be thicker than its name, layer by layer in the same direction.
 * `null` where the brief has no contents.
 */
export function stackContents(brief: FilledBrief, geometry: FrameGeometry): ContentsStack | null {
  const { contents, fastenerRoom, unit } = brief;
  if (contents.length === 0) return null;
  const { seating } = geometry;
  let thickness = 0;
  let tolerance = 0;
  const layers = contents.map((layer, index): StackLayer => {
    thickness += layer.thickness;
    const kind = layerKind(layer.material);
    const varies = kind === "glass" ? glassTolerance(layer.thickness, unit) : null;
    tolerance += varies ?? 0;
    return {
      name: layer.name,
      thickness: layer.thickness,
      kind,
      behind: thickness,
      up: seating?.possible === true ? seating.layers[index]!.back : null,
      tolerance: varies,
    };
  });
  const depth = depthLeft(seating, geometry, thickness);
  if (depth === null) {
    return { layers, thickness, tolerance, left: null, leftAtLeast: null, spare: null, verdict: null };
  }
  const { left, wall } = depth;
  const least = -ROUNDING * (wall + thickness + fastenerRoom);
  const leftAtLeast = left - tolerance;
  const spare = leftAtLeast - fastenerRoom;
  const verdict = left < least ? "proud" : left - fastenerRoom < least ? "short" : spare < least ? "tight" : "roomy";
  return { layers, thickness, tolerance, left, leftAtLeast, spare, verdict };
}
