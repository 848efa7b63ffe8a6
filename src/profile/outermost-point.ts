import { checkSlope } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import { arrisesOf, checkOutline, checkPoint } from "./parse-profile.js";
import { farthest, outOf, upOf } from "./tilt.js";
import type { Profile, SectionPoint } from "./profile.js";

/**
 * A corner of a section as it stands in the finished frame, with its name.
 *
 * @template M - the names of the profile's arrises
 */
export interface NamedSectionPoint<M extends string = string> extends SectionPoint {
  /** The arris that it is; absent when it has no name. */
  readonly arris?: M;
}

/** The corner farthest in the direction of (cos, sin), with its place at the slope and its name. */
function named<M extends string>(
  profile: Pick<Profile<M>, "outline" | "arrises">,
  slope: number,
  direction: 1 | -1,
): NamedSectionPoint<M> {
  const angle = checkSlope(slope);
  const cos = cosDeg(angle);
  const sin = sinDeg(angle);
  const { x, y } = farthest(checkOutline(profile), direction * cos, direction * sin);
  const out = outOf(x, y, cos, sin);
  const up = upOf(x, y, cos, sin);
  for (const [name, value] of Object.entries(arrisesOf(profile))) {
    const arris = checkPoint(value, `profile.arrises.${name}`);
    if (arris.x === x && arris.y === y) return { out, up, arris: name as M };
  }
  return { out, up };
}

/**
 * The corner of a molding that stands farthest out in the finished frame: the one a tape across the flats would touch.
 *
 * The greatest x cos s - y sin s of the outline. Where a plumb edge stands there, either of its ends is returned.
 *
 * @param profile - the molding's section
 * @param slope - angle of the face to the bench plane in degrees, -90 to 90
 * @returns where it stands, and which arris it is
 * @throws {InputError} when the slope is out of range, or the profile has not the shape of one
 * @example
 * ```ts
 * import { molding, outermostPoint } from "miterwright/profile";
 *
 * outermostPoint(molding({ width: 40, thickness: 20 }), 30).arris; //=> "outerBack"
 * outermostPoint(molding({ width: 40, thickness: 20 }), -30).arris; //=> "outerFace"
 * ```
 */
export function outermostPoint<M extends string>(
  profile: Pick<Profile<M>, "outline" | "arrises">,
  slope: number,
): NamedSectionPoint<M> {
  return named(profile, slope, 1);
}

/**
 * The corner of a molding that stands farthest in: the one that bounds what is seen through the frame from straight above.
 *
 * The least x cos s - y sin s of the outline. Where a plumb edge stands there, either of its ends is returned.
 *
 * @param profile - the molding's section
 * @param slope - angle of the face to the bench plane in degrees, -90 to 90
 * @returns where it stands, and which arris it is
 * @throws {InputError} when the slope is out of range, or the profile has not the shape of one
 * @example
 * ```ts
 * import { innermostPoint, molding } from "miterwright/profile";
 *
 * innermostPoint(molding({ width: 40, thickness: 20 }), 30); //=> { out: -10, up: 17.320508075688775, arris: "sightFace" }
 * ```
 */
export function innermostPoint<M extends string>(
  profile: Pick<Profile<M>, "outline" | "arrises">,
  slope: number,
): NamedSectionPoint<M> {
  return named(profile, slope, -1);
}
