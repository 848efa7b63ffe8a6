import { checkObject, checkSlope, refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { arrisesOf, checkArris, checkOutline } from "./parse-profile.js";
import { farthest, outOf } from "./tilt.js";
import type { Profile } from "./profile.js";
import { checkRabbet, wallPoint, wallTouch } from "./wall-touch.js";

/** Options of {@link levelWidth}. */
export interface LevelWidthOptions<M extends string = string> {
  /** The frame's slope in degrees, -90 to 90. */
  readonly slope: number;
  /**
   * The arris to measure from. Default: the rabbet's wall at the point that decides the contents' size (`opening` of
   * {@link rabbetSeating}; the wall's mouth where nothing can be held); the innermost point of the outline when the profile has no rabbet.
   */
  readonly from?: M | undefined;
  /** The arris to measure to. Default: the outermost point of the outline. */
  readonly to?: M | undefined;
}

/** The point of a named arris; the error lists the names there are. */
function namedArris(arrises: Readonly<Record<string, unknown>>, name: unknown, path: string): Point {
  if (typeof name === "string" && Object.hasOwn(arrises, name)) return checkArris(arrises, name);
  const names = Object.keys(arrises).map((known) => `"${known}"`);
  const expected = names.length === 0 ? "left out, since the profile has no arrises" : `one of ${names.join(", ")}`;
  return refuse(typeof name === "string" ? "unknown" : "type", path, name, expected);
}

/** The point of the rabbet's wall that decides the contents' size, or undefined without a rabbet. */
function decidingPoint(arrises: Readonly<Record<string, unknown>>, cos: number, sin: number): Point | undefined {
  if (!["sightBack", "wallLedge", "wallMouth"].every((name) => Object.hasOwn(arrises, name))) return undefined;
  const rabbet = checkRabbet(arrises);
  return wallPoint(rabbet, wallTouch(rabbet, cos, sin));
}

/**
 * The molding's width across the flats, measured level as it stands in the finished frame.
 *
 * A width (dx, dy) of the section measures dx cos s - dy sin s, so it must be taken in the finished tilt, never on the flat
 * molding. A regular polygon that the contents' edges would fill grows by twice this width across the flats.
 *
 * @param profile - the molding's section
 * @param options - the slope, and between which arrises if not from the rabbet's wall to the outermost point
 * @returns the level distance in the caller's unit; negative when `to` stands nearer to the frame's center than `from`
 * @throws {InputError} when the slope is out of range, an arris does not exist, or the profile has not the shape of one
 * @example
 * ```ts
 * import { levelWidth, molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * levelWidth(profile, { slope: 0 }); //=> 32
 * levelWidth(profile, { slope: 90, from: "outerFace", to: "outerBack" }); //=> 20
 * ```
 */
export function levelWidth<M extends string>(
  profile: Pick<Profile<M>, "outline" | "arrises">,
  options: LevelWidthOptions<NoInfer<M>>,
): number {
  const given = checkObject(options);
  const slope = checkSlope(given["slope"]);
  const arrises = arrisesOf(profile);
  const outline = checkOutline(profile);
  const cos = cosDeg(slope);
  const sin = sinDeg(slope);
  const from =
    given["from"] === undefined
      ? (decidingPoint(arrises, cos, sin) ?? farthest(outline, -cos, -sin))
      : namedArris(arrises, given["from"], "from");
  const to = given["to"] === undefined ? farthest(outline, cos, sin) : namedArris(arrises, given["to"], "to");
  return outOf(to.x - from.x, to.y - from.y, cos, sin);
}
