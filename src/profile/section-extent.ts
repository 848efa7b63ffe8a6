import { checkDegrees } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Box } from "../core/geometry-types.js";
import { checkOutline } from "./parse-profile.js";
import { farthest, outOf, upOf } from "./tilt.js";
import type { Profile } from "./profile.js";

/** The upright rectangle round a tilted section, in the caller's length unit. `width` and `height` are its size. */
export interface SectionExtent extends Box {
  /** How far outward its innermost point stands, from the profile's origin. */
  readonly inner: number;
  /** How far outward its outermost point stands. */
  readonly outer: number;
  /** How high its lowest point stands, from the profile's origin. */
  readonly bottom: number;
  /** How high its highest point stands. */
  readonly top: number;
}

/**
 * How much room a molding's section takes in a tilt.
 *
 * The extremes of out = x cos f - y sin f and up = x sin f + y cos f over the corners.
 *
 * @param profile - the molding's section
 * @param tilt - angle of the section to lying on its back, in degrees, -360 to 360: the slope as it stands in the frame, slope minus the lay on the saw
 * @returns the upright rectangle round it, from the profile's origin
 * @throws {InputError} when the tilt is out of range, or the profile has not the shape of one
 * @example
 * ```ts
 * import { molding, sectionExtent } from "miterwright/profile";
 *
 * sectionExtent(molding({ width: 40, thickness: 20 }), 90);
 * //=> { width: 20, height: 40, inner: -20, outer: 0, bottom: 0, top: 40 }
 * ```
 */
export function sectionExtent(profile: Pick<Profile, "outline">, tilt: number): SectionExtent {
  const outline = checkOutline(profile);
  const angle = checkDegrees(tilt, "tilt", -360, 360);
  const cos = cosDeg(angle);
  const sin = sinDeg(angle);
  const inner = farthest(outline, -cos, -sin);
  const outer = farthest(outline, cos, sin);
  // Heights are distances outward in a tilt that is a quarter turn further back.
  const top = farthest(outline, sin, -cos);
  const bottom = farthest(outline, -sin, cos);
  return {
    width: outOf(outer.x - inner.x, outer.y - inner.y, cos, sin),
    height: upOf(top.x - bottom.x, top.y - bottom.y, cos, sin),
    inner: outOf(inner.x, inner.y, cos, sin),
    outer: outOf(outer.x, outer.y, cos, sin),
    bottom: upOf(bottom.x, bottom.y, cos, sin),
    top: upOf(top.x, top.y, cos, sin),
  };
}
