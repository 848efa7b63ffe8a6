import { cosDeg, sinDeg, tanDeg } from "../../core/degrees.js";
import { sectionArea, sectionCentroid, sectionExtent, type Profile } from "../../profile/index.js";
import type { FrameGeometry } from "../frame-geometry.js";

/** The lumber that a molding is milled from. */
export interface MoldingLumber {
  /** Width of the upright box round the section as it is milled, lying on its back. */
  readonly width: number;
  /** Thickness of that box. */
  readonly thickness: number;
  /** Length that all pieces use up of one stick, cuts included. */
  readonly length: number;
  /** The same as a quantity of lumber, in board feet. */
  readonly boardFeet: number;
  /** In cubic meters. */
  readonly cubicMeters: number;
}

/**
 * Volume of all finished pieces together.
 *
 * Both end cuts are planes, so a piece's length is linear in the place on its section, and its volume is the section's area times the length at the section's
 * centroid: L + 2 (out(centroid) - out(longest)) tan h with L the length of the longest arris. All pieces together are area times the way round the polygon on
 * which the centroid runs.
 *
 * @see Pappus of Alexandria, Collection, book VII: a ring's volume is the area times the way of its centroid (value from memory)
 */
export function moldingVolume(geometry: FrameGeometry, profile: Profile): number {
  const { count, longest } = geometry.pieces[0];
  const { x, y } = sectionCentroid(profile);
  const out = x * cosDeg(geometry.slope) - y * sinDeg(geometry.slope);
  const length = longest.length + 2 * (out - longest.out) * tanDeg(geometry.corners[0].planMiter);
  return sectionArea(profile) * length * count;
}

/** The upright box round a section as it is milled. */
export function lumberSection(profile: Profile): Pick<MoldingLumber, "width" | "thickness"> {
  const { width, height } = sectionExtent(profile, 0);
  return { width, thickness: height };
}
