import { word } from "../../core/stored.js";
import { englishReasons, type Reason } from "../catalog/reason-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

const REASONS: Readonly<Record<Reason, true>> = {
  "past-mouth": true,
  "falls-through": true,
  "too-steep": true,
  "no-contents-left": true,
  "no-room": true,
  "ends-turned-away": true,
  "no-wall-surface": true,
};

/**
 * Says why something that was asked for cannot be made.
 *
 * @param reason - of a result that says `possible: false`: of a rabbet's seating, a frame's contents, its hanging, or a closing piece
 * @param options - the words
 * @returns a sentence
 * @throws {InputError} when it is no such reason
 * @example
 * ```ts
 * import { molding, rabbetSeating } from "miterwright/profile";
 * import { reasonText } from "miterwright/words";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * const seating = rabbetSeating(profile, { slope: 90, contents: [] });
 * seating.possible ? "" : reasonText(seating.reason); //=> "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents."
 * ```
 */
export function reasonText(reason: Reason, options: WordsOptions = {}): string {
  const code = word(reason, "reason", REASONS);
  const words = checkWords(options);
  return (words?.reasons ?? englishReasons)[code]();
}
