import { reject } from "../core/check.js";
import { cosDeg, tanDeg } from "../core/degrees.js";
import { sawSetting, type EndCut, type SawSetting } from "../miter/index.js";
import type { Profile } from "../profile/index.js";
import { lieSection, type LieSectionOptions, type LyingSection } from "./lie-section.js";

/** How much of the blade and of the table a cut takes. */
export interface CutSize {
  /** Height of the stick above the table, with its cradle where it lies propped. */
  readonly height: number;
  /** Depth of the cut along the leaning blade. */
  readonly depth: number;
  /** Length of the cut along the line in which the blade crosses the table. */
  readonly line: number;
}

/** Refuses a cut that, to the last bit, runs along the stick or along the table. */
function refuseFlatBlade(name: "miter" | "bevel", degrees: number, setting: SawSetting): void {
  if (Math.abs(degrees) < 90) return;
  const message = `Expected \`cut\` to cross the stick in this lay, but its ${name} there is ${degrees} degrees`;
  reject("impossible", "cut", setting, message);
}

/**
 * How high the work stands for a cut, how deep the blade goes and how far across the table it cuts.
 *
 * Work of height H takes H / cos(bevel) of a leaning blade. A point of the section that lies a away from the frame's center and u above the table is cut at
 * a / cos(miter) - u tan(miter) tan(bevel) along the line of cut; the line is as long as these reach. A cradle's base is as high as whatever hangs
 * below it, so the stick's lowest point is at the table in it as in any other lay.
 *
 * @param cut - the cut
 * @param profile - the molding's section
 * @param options - the frame's slope and the lay
 * @returns the sizes, in the section's unit
 * @throws {InputError} when the cut, the profile, the slope or the lay is not sound, or the cut has a miter or a bevel of 90 degrees in this lay (`"impossible"`)
 * @example
 * ```ts
 * import { joinCorner } from "miterwright/miter";
 * import { molding } from "miterwright/profile";
 * import { cutSize } from "miterwright/saw";
 *
 * const board = { slope: 90, thickness: 20 };
 * const { first } = joinCorner({ turn: 90, first: board, second: board });
 * const size = cutSize(first, molding({ width: 60, thickness: 20 }), { slope: 90, lay: "flat" });
 * size.height; //=> 20
 * size.depth; //=> 28.284271247462
 * size.line; //=> 60
 * ```
 */
export function cutSize(cut: EndCut, profile: Profile, options: LieSectionOptions): CutSize {
  return cutSizeKernel(lieSection(profile, options), sawSetting(cut, options.lay));
}

/** The sizes of a cut in a lay that is worked out already, unchecked. */
export function cutSizeKernel(lying: LyingSection, setting: SawSetting): CutSize {
  const { outline, height } = lying;
  const { miter, bevel } = setting;
  refuseFlatBlade("miter", miter, setting);
  refuseFlatBlade("bevel", bevel, setting);
  const shift = tanDeg(miter) * tanDeg(bevel);
  const along = outline.map(({ across, up }) => across / cosDeg(miter) - up * shift);
  return { height, depth: height / cosDeg(bevel), line: Math.max(...along) - Math.min(...along) };
}
