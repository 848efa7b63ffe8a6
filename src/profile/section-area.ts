import { checkOutline } from "./parse-profile.js";
import type { Profile } from "./profile.js";
import { scaledOutline } from "./scaled-outline.js";

/**
 * Area of a molding's section.
 *
 * Half the sum of the cross products of neighboring corners. Times a piece's length it is the wood's volume; a mitered piece counts with its length at the
 * section's centroid.
 *
 * @param profile - the molding's section
 * @returns the area in the square of the caller's length unit, zero or more
 * @throws {InputError} when the profile has not the shape of one
 * @example
 * ```ts
 * import { molding, sectionArea } from "miterwright/profile";
 *
 * sectionArea(molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } })); //=> 720
 * ```
 */
export function sectionArea(profile: Pick<Profile, "outline">): number {
  const { points, unit } = scaledOutline(checkOutline(profile));
  let twice = 0;
  let last = points.at(-1)!;
  for (const point of points) {
    twice += last.x * point.y - last.y * point.x;
    last = point;
  }
  return (Math.abs(twice) / 2) * unit * unit;
}
