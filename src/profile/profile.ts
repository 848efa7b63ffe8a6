import type { Point } from "../core/geometry-types.js";

/**
 * A molding's cross-section.
 *
 * It is plain data: one written by hand, or read back from JSON, is as good as one that {@link molding} or
 * {@link profileFromPoints} made. x points outward from the sight edge and y up from the back; only differences of
 * coordinates count, so the origin may be anywhere.
 *
 * @template M - the names of its arrises
 */
export interface Profile<M extends string = string> {
  /** The corners, counter-clockwise, in the caller's length unit; the last one joins the first and does not repeat it. */
  readonly outline: readonly Point[];
  /** The arrises that have a name, in the outline's coordinates. */
  readonly arrises: { readonly [K in M]: Point };
  /** The slope in degrees that its surfaces are milled for, -90 to 90. Absent: a molding for any slope. */
  readonly madeFor?: number;
}

/** The three arrises that a rabbet is known by: the ledge runs from `sightBack` to `wallLedge`, the wall from there to `wallMouth`. */
export type RabbetArris = "sightBack" | "wallLedge" | "wallMouth";

/** A point of a section as it stands in the finished frame. */
export interface SectionPoint {
  /** Level distance outward, away from the frame's center, in the caller's length unit; 0 at the profile's origin. */
  readonly out: number;
  /** Height, toward the viewer, in the caller's length unit; 0 at the profile's origin. */
  readonly up: number;
}

/**
 * A molding's cross-section as it stands in the finished frame.
 *
 * @template M - the names of its arrises
 */
export interface Section<M extends string = string> {
  /** The slope it stands at, in degrees, -90 to 90. */
  readonly slope: number;
  /** The outline, point by point as in the profile. */
  readonly outline: readonly SectionPoint[];
  /** The named arrises. */
  readonly arrises: { readonly [K in M]: SectionPoint };
}
