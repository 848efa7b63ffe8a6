import { checkNumber, checkObject, reject } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { EndCut } from "../miter/index.js";
import type { Profile } from "../profile/index.js";
import { CONTACT_TOLERANCE, lieSection, type LieSectionOptions } from "./lie-section.js";

/** Where a stop touches the finished end of a stick. */
export interface StopContact {
  /** The name of the arris that touches, or `null` when the farthest point of the end has no name. */
  readonly arris: string | null;
  /** Lowest height above the table at which the end touches the stop. */
  readonly from: number;
  /** Highest height at which it touches; the same as `from` when only an arris touches. */
  readonly to: number;
  /** How far the end leans back over the stick's height: what a stop that touches too high would make the piece too long. */
  readonly leanLength: number;
  /** Least distance of what touches from the edge of the stick that is nearer to you when its counter-clockwise direction points right. */
  readonly across: number;
  /** The greatest such distance of anything that touches; more than `across` where an end touches over a width, as that of a cut without miter does. */
  readonly acrossTo: number;
}

/**
 * Finds the arris with which a finished end touches a stop that stands square to the fence.
 *
 * A stop that does not reach down (or up) to that arris makes the piece longer than it should be, by `leanLength` at the most: a sloping end leans
 * t sin s tan h along the stick over its thickness t.
 *
 * @param cut - the finished end
 * @param profile - the molding's section
 * @param options - the frame's slope and the lay in which the end meets the stop
 * @returns the arris and the heights at which it touches
 * @throws {InputError} when the cut, the profile, the slope or the lay is not sound
 * @example
 * ```ts
 * import { joinCorner } from "miterwright/miter";
 * import { molding } from "miterwright/profile";
 * import { stopContact } from "miterwright/saw";
 *
 * const board = { slope: 30, thickness: 20 };
 * const { first } = joinCorner({ turn: 60, first: board, second: board });
 * const contact = stopContact(first, molding({ width: 40, thickness: 20 }), { slope: 30, lay: "flat" });
 * contact.arris; //=> "outerBack"
 * contact.to; //=> 0
 * contact.leanLength; //=> 5.773502691896
 * ```
 */
export function stopContact(cut: EndCut, profile: Profile, options: LieSectionOptions): StopContact {
  const plane = checkObject(checkObject(cut, "cut")["plane"], "cut.plane");
  const [along, across, through] = (["along", "across", "through"] as const).map((axis) =>
    checkNumber(plane[axis], `cut.plane.${axis}`, -1, 1),
  ) as [number, number, number];
  if (along === 0) {
    const path = "cut.plane.along";
    return reject("range", path, along, `Expected \`${path}\` not to be 0: such a plane never crosses the stick`);
  }
  const lying = lieSection(profile, options);
  // The upward part of the cut plane's normal, as the stick lies.
  const rise = across * sinDeg(lying.tilt) + through * cosDeg(lying.tilt);
  const reach = profile.outline.map((point) => -(across * point.x + through * point.y) / Math.abs(along));
  const farthest = Math.max(...reach);
  const tolerance = (lying.width + lying.height) * CONTACT_TOLERANCE;
  const touching = reach.flatMap((value, index) => (farthest - value <= tolerance ? [index] : []));
  const ups = touching.map((index) => lying.outline[index]!.up);
  const lowest = touching[ups.indexOf(Math.min(...ups))]!;
  const point = profile.outline[lowest]!;
  const named = Object.entries(profile.arrises).find(([, arris]) => arris.x === point.x && arris.y === point.y);
  const near = Math.max(...lying.outline.map((lyingPoint) => lyingPoint.across));
  const distances = touching.map((index) => near - lying.outline[index]!.across);
  return {
    arris: named?.[0] ?? null,
    from: Math.min(...ups),
    to: Math.max(...ups),
    leanLength: (Math.abs(rise) / Math.abs(along)) * lying.height,
    across: Math.min(...distances),
    acrossTo: Math.max(...distances),
  };
}
