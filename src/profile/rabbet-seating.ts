import { checkArray, checkLength, checkLengthOrZero, checkObject, checkSlope, checkText } from "../core/check.js";
import { arrisesOf } from "./parse-profile.js";
import type { Profile, RabbetArris } from "./profile.js";
import type { RabbetContent, RabbetSeating, RabbetSeatingOptions, RabbetLayer } from "./rabbet-seating-types.js";
import { seatContents } from "./seat-contents.js";
import { checkRabbet } from "./wall-touch.js";

/** Checks the contents and gives them with their total thickness. */
function readContents(value: unknown): { contents: RabbetContent[]; thickness: number } {
  const contents = checkArray(value, "contents", "an array of contents").map((item, index) => {
    const path = `contents[${index}]`;
    const content = checkObject(item, path);
    return {
      name: checkText(content["name"], `${path}.name`),
      thickness: checkLength(content["thickness"], `${path}.thickness`),
    };
  });
  return { contents, thickness: contents.reduce((sum, content) => sum + content.thickness, 0) };
}

/** The heights between which each of the contents lies. */
function layersBelow(front: number, contents: readonly RabbetContent[]): RabbetLayer[] {
  let used = 0;
  return contents.map(({ name, thickness }) => {
    const above = used;
    used += thickness;
    return { name, front: front - above, back: front - used };
  });
}

/**
 * The seating of level contents in a molding's rabbet once it is tilted.
 *
 * Contents go in from the back and rise until they bear. For a square-cut rabbet of width w and depth d, and contents of total thickness T, these hold. Slope s > 0: they
 * bear on the sight edge's back arris and touch the wall at their front; lap w / cos s, depth used w tan s + T / cos s, room lost at their back T tan s;
 * impossible if w tan s > d. Slope s < 0: they must pass the mouth, which is d sin|s| narrower than the corner, so lap w cos s - d sin|s|; their outer arris
 * bears on the ledge, d sin|s| + c before the corner with the clearance c; depth used T / cos s - (d sin|s| + c) tan|s| / cos s. Slope 0: flat on the ledge,
 * lap w, depth used T. All of it is derived from the three arrises alone, so it also holds for rabbets that are not square. The ledge and the wall are taken as
 * straight, and nothing else as being in the way.
 *
 * @param profile - the molding's section, with its three rabbet arrises
 * @param options - the slope, the contents and the clearance
 * @returns where they bear, which point decides their size and what is left, or why they cannot be held
 * @throws {InputError} when an option is out of range or a rabbet arris is missing
 * @example
 * ```ts
 * import { molding, rabbetSeating } from "miterwright/profile";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * const flat = rabbetSeating(profile, { slope: 0, contents: [{ name: "glass", thickness: 2 }] });
 * flat.possible && flat.depthLeft; //=> 8
 * const steep = rabbetSeating(profile, { slope: 60, contents: [{ name: "glass", thickness: 2 }] });
 * steep.possible; //=> false
 * ```
 */
export function rabbetSeating(
  profile: Pick<Profile<RabbetArris>, "arrises">,
  options: RabbetSeatingOptions,
): RabbetSeating {
  const given = checkObject(options);
  const slope = checkSlope(given["slope"]);
  const { contents, thickness } = readContents(given["contents"]);
  const clearance = given["clearance"] === undefined ? 0 : checkLengthOrZero(given["clearance"], "clearance");
  const seating = seatContents(checkRabbet(arrisesOf(profile)), slope, thickness, clearance);
  if ("reason" in seating) {
    const { reason, shortBy } = seating;
    return { possible: false, slope, reason, shortBy };
  }
  const { front, bearsOn, bearing, opening, lap, depthUsed, depthLeft, roomLost } = seating;
  const layers = layersBelow(front, contents);
  return { possible: true, slope, bearsOn, bearing, opening, lap, depthUsed, depthLeft, roomLost, thickness, layers };
}
