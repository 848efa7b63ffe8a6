import { refuse } from "../core/check.js";
import type { Point } from "../core/geometry-types.js";
import { checkOutline } from "./parse-profile.js";
import type { Profile } from "./profile.js";
import { scaledOutline } from "./scaled-outline.js";

/**
 * Centroid of a molding's section: its center of gravity, in the section's own axes.
 *
 * The mean of the triangles that the corners make with the first one, weighted by their areas.
 *
 * @param profile - the molding's section
 * @returns the centroid, in the caller's length unit
 * @throws {InputError} when the profile has not the shape of one, or encloses no area
 * @example
 * ```ts
 * import { molding, sectionCentroid } from "miterwright/profile";
 *
 * sectionCentroid(molding({ width: 40, thickness: 20 })); //=> { x: 20, y: 10 }
 * ```
 */
export function sectionCentroid(profile: Pick<Profile, "outline">): Point {
  const outline = checkOutline(profile);
  const { points, unit } = scaledOutline(outline);
  let twice = 0;
  let total = 0;
  let momentX = 0;
  let momentY = 0;
  let last = points.at(-1)!;
  for (const point of points) {
    const cross = last.x * point.y - last.y * point.x;
    twice += cross;
    total += Math.abs(cross);
    momentX += (last.x + point.x) * cross;
    momentY += (last.y + point.y) * cross;
    last = point;
  }
  // An area no larger than its own rounding would put the centroid anywhere.
  if (Math.abs(twice) <= Number.EPSILON * total) {
    return refuse("impossible", "profile.outline", profile.outline, "an outline that encloses an area");
  }
  const origin = outline[0]!;
  return {
    x: origin.x + (momentX / (3 * twice)) * unit + 0,
    y: origin.y + (momentY / (3 * twice)) * unit + 0,
  };
}
