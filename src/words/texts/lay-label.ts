import { checkWord } from "../../core/check.js";
import type { Lay } from "../../miter/index.js";
import { checkRotation, LAY_NAMES } from "../../miter/internal.js";
import { englishLabels } from "../catalog/label-words.js";
import { checkTellOptions, type TellOptions } from "../tell-options.js";

/**
 * What to call a lay on paper: words that go on after "the stick lies".
 *
 * @param lay - a name, or degrees from -360 to 360 by which the stick is rolled about its length
 * @param options - formatters and words
 * @returns words for people
 * @throws {InputError} when `lay` is no such name or angle, or a formatter is missing
 * @example
 * ```ts
 * import { layLabel } from "miterwright/words";
 * import { formatters } from "miterwright/units";
 *
 * const formats = formatters({ unit: "mm" });
 * layLabel("outer-edge-down", { formats }); //=> "on its outer edge"
 * layLabel(12.5, { formats }); //=> "rolled by 12.5°"
 * ```
 */
export function layLabel(lay: Lay, options: TellOptions): string {
  const { words, formats } = checkTellOptions(options);
  const { lays, rolled } = words?.labels ?? englishLabels;
  if (typeof lay === "number") return rolled({ angle: formats.angle(checkRotation(lay)) });
  return lays[checkWord(lay, "lay", LAY_NAMES)];
}
