import type { Point } from "../core/geometry-types.js";
import type { EndCut } from "../miter/index.js";

/** A point of the section as it stands in the finished frame. */
export interface PlacedArris {
  /** Level distance outward from the section's origin, the corner of sight edge and back before any rabbet. */
  readonly out: number;
  /** Height above the section's origin; `null` where only level measures are known. */
  readonly up: number | null;
}

/** The length of a piece at one point of its section. */
export interface ExtremeLength extends PlacedArris {
  /** The name of the point, or `null` when it has none. */
  readonly arris: string | null;
  /** The piece's length there. */
  readonly length: number;
}

/** Equal pieces of a ring. */
export interface RingPiece<M extends string = string> {
  /** The first side that is made of such a piece, from 0. */
  readonly side: number;
  /** How many sides are. */
  readonly count: number;
  /** Length of the piece along each named arris. */
  readonly lengths: { readonly [K in M]: number };
  /** The longest line along the piece: what it takes from the stock, and what a tape can hook. */
  readonly longest: ExtremeLength;
  /** The shortest line along the piece. */
  readonly shortest: ExtremeLength;
  /** The cut where the piece starts, going counter-clockwise. */
  readonly start: EndCut;
  /** The cut where it ends. */
  readonly end: EndCut;
}

/** Equal corners of a ring. */
export interface RingCorner {
  /** How many corners are alike. */
  readonly count: number;
  /** Exterior angle in plan, in degrees. */
  readonly turn: number;
  /** Half the turn, in degrees. */
  readonly planMiter: number;
  /** Inside angle between the two neighboring faces, in degrees. */
  readonly dihedral: number;
}

/** A closed line of the ring seen from above, at one arris. */
export interface RingOutline {
  /** Height of the arris above the section's origin; `null` where only level measures are known. */
  readonly up: number | null;
  /** Its corners, counter-clockwise, from the start of side 0. */
  readonly corners: readonly Point[];
}

/** A closed ring of mitered pieces. */
export interface RingGeometry<M extends string = string> {
  /** The pieces, equal ones together. */
  readonly pieces: readonly RingPiece<M>[];
  /** The corners, equal ones together. */
  readonly corners: readonly RingCorner[];
  /** The ring's outline at every named arris. */
  readonly outline: { readonly [K in M]: RingOutline };
}
