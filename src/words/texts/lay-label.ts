import { checkWord } from "../../core/check.js";
import type { Lay, LayName } from "../../miter/index.js";
import { checkRotation, LAY_NAMES } from "../../miter/internal.js";
import { englishLayNames, englishRolled } from "../catalog/label-words.js";
import { checkFormats } from "../../units/internal.js";
import { checkWords, type TellOptions, type WordsOptions } from "../tell-options.js";

/**
 * What to call a lay on paper: words that go on after "the stick lies".
 *
 * @param lay - a name, or degrees from -360 to 360 by which the stick is rolled about its length
 * @param options - words, and formatters for a lay in degrees
 * @returns words for people
 * @throws {InputError} when `lay` is no such name or angle, or a formatter is missing
 * @example
 * ```ts
 * import { layLabel } from "miterwright/words";
 * import { formatters } from "miterwright/units";
 *
 * const formats = formatters({ unit: "mm" });
 * layLabel("outer-edge-down"); //=> "on its outer edge"
 * layLabel(12.5, { formats }); //=> "rolled by 12.5°"
 * ```
 */
export function layLabel(lay: LayName, options?: WordsOptions): string;
export function layLabel(lay: Lay, options: TellOptions): string;
export function layLabel(lay: Lay, options: Partial<TellOptions> = {}): string {
  const labels = checkWords(options)?.labels;
  if (typeof lay === "number") {
    const degrees = checkRotation(lay);
    return (labels?.rolled ?? englishRolled)({ angle: checkFormats(options.formats).angle(degrees) });
  }
  return (labels?.lays ?? englishLayNames)[checkWord(lay, "lay", LAY_NAMES)];
}
