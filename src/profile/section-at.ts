import { checkSlope } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { checkArris, checkOutline, arrisesOf } from "./parse-profile.js";
import type { Profile, Section, SectionPoint } from "./profile.js";
import { outOf, upOf } from "./tilt.js";

/**
 * Where every point of a molding stands in the finished frame.
 *
 * At slope s the point (x, y) of the section stands at out = x cos s - y sin s and up = x sin s + y cos s: the section is
 * rotated about its origin.
 *
 * @param profile - the molding's section
 * @param slope - angle of the face to the bench plane in degrees, -90 to 90; positive when the outer edge is the higher
 * @returns the section's outline and arrises, each point with its level distance outward and its height
 * @throws {InputError} when the slope is out of range, or the profile has not the shape of one
 * @example
 * ```ts
 * import { molding, sectionAt } from "miterwright/profile";
 *
 * const section = sectionAt(molding({ width: 40, thickness: 20 }), 90);
 * section.arrises.outerFace; //=> { out: -20, up: 40 }
 * ```
 */
export function sectionAt<M extends string>(
  profile: Pick<Profile<M>, "outline" | "arrises">,
  slope: number,
): Section<M> {
  const s = checkSlope(slope);
  const cos = cosDeg(s);
  const sin = sinDeg(s);
  const stand = ({ x, y }: Point): SectionPoint => ({ out: outOf(x, y, cos, sin), up: upOf(x, y, cos, sin) });
  const given = arrisesOf(profile);
  const arrises = Object.fromEntries(Object.keys(given).map((name) => [name, stand(checkArris(given, name))]));
  return { slope: s, outline: checkOutline(profile).map(stand), arrises: arrises as Section<M>["arrises"] };
}
