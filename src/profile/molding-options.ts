import type { OneOf } from "../core/geometry-types.js";

/** Size of a rabbet. */
export interface RabbetSize {
  /** How far its lip laps, from the sight edge to the wall, in the caller's length unit; positive. */
  readonly width: number;
  /** Depth of its wall, from the ledge to the back, in the caller's length unit; positive. */
  readonly depth: number;
}

/** An arris of the face that a cut can take off. */
export type FaceArris = "sightFace" | "outerFace";

/**
 * A chamfer: the arris of the face is cut off by one plane, given by two of width, depth and angle.
 */
export type Chamfer = {
  /** The kind of cut. */
  readonly cut: "chamfer";
  /** The arris that it takes off. */
  readonly at: FaceArris;
  /** How much of the face it takes, from the arris, in the caller's length unit; positive. */
  readonly width: number;
} & OneOf<{
  /** How far it goes down the edge, from the arris, in the caller's length unit; positive. */
  readonly depth: number;
  /** Its angle to the face in degrees, between 0 and 90: 45 takes as much of a square edge as of the face. */
  readonly angle: number;
}>;

/** A cut that shapes the face of a molding. `cut` tells the kinds apart; so far there is one. */
export type FaceCut = Chamfer;

/** The slope that a molding's surfaces are milled for, and which of them are. */
export interface MadeFor {
  /** The slope in degrees, between -90 and 90, both excluded. */
  readonly slope: number;
  /** Whether the outer edge then stands plumb; else it is square to the face. Default: true. */
  readonly outer?: boolean | undefined;
  /** Whether the sight edge then stands plumb; else it is square to the face. Default: false. */
  readonly inner?: boolean | undefined;
  /** Whether the rabbet's wall then stands plumb and its ledge lies level; else it is square-cut. Default: true. */
  readonly rabbet?: boolean | undefined;
  /** Whether the back then lies level; else it is parallel to the face. Default: false. */
  readonly back?: boolean | undefined;
}

/** Options of {@link molding}. Lengths are in the caller's unit. */
export interface MoldingOptions {
  /**
   * Width from the sight edge to the outer edge; positive. With `madeFor` it is the level distance, at that slope, from the sight
   * edge's back arris to the outermost point. Always before any face cut.
   */
  readonly width: number;
  /** Thickness from the lowest point of the back to the face; positive. */
  readonly thickness: number;
  /** The rabbet. Its width and depth are level and plumb if it is made for a slope. Default: none. */
  readonly rabbet?: RabbetSize | undefined;
  /** Cuts that shape the face, at most one at an arris. Default: none. */
  readonly face?: readonly FaceCut[] | undefined;
  /** The slope that its surfaces are milled for. Default: every surface is square or parallel to the face. */
  readonly madeFor?: MadeFor | undefined;
}

/** The arrises that every {@link molding} has: the ends of its sight edge and of its outer edge, at the face and at the back. */
export type EdgeArris = "sightFace" | "sightBack" | "outerFace" | "outerBack";

/** Whether a list of cuts surely has one at an arris. */
type HasCutAt<F, A extends FaceArris> = F extends readonly [infer First, ...infer Rest]
  ? [First] extends [{ readonly at: A }]
    ? true
    : HasCutAt<Rest, A>
  : false;

/**
 * The arrises of a molding, from the type of its options; an option that may be absent adds none.
 *
 * `sightBack` is the sight edge's back arris, with a rabbet the lower corner of the lip. `wallLedge` and `wallMouth` are the
 * ends of the rabbet's wall. After a cut at an arris of the face `sightFace` (or `outerFace`) is where the face then ends, and
 * `sightCut` (or `outerCut`) where the cut runs out on the edge.
 *
 * @template O - type of the options
 */
export type ArrisesOf<O> =
  | EdgeArris
  | ([O] extends [{ readonly rabbet: RabbetSize }] ? "wallLedge" | "wallMouth" : never)
  | ([O] extends [{ readonly face: infer F }]
      ? | (HasCutAt<F, "sightFace"> extends true ? "sightCut" : never)
        | (HasCutAt<F, "outerFace"> extends true ? "outerCut" : never)
      : never);
