import { checkObject } from "../core/check.js";
import { word } from "../core/stored.js";
import { englishReasons, type Reason } from "./reason-words.js";
import type { WordsOptions } from "./words.js";

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
 * @returns a sentence; that of a seating ends without a period, so that more can follow
 * @throws {InputError} when it is no such reason
 * @example
 * ```ts
 * import { molding, rabbetSeating } from "miterwright/profile";
 * import { describeReason } from "miterwright/words";
 *
 * const profile = molding({ width: 40, thickness: 20, rabbet: { width: 8, depth: 10 } });
 * const seating = rabbetSeating(profile, { slope: 90, contents: [] });
 * seating.possible ? "" : describeReason(seating.reason); //=> "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents"
 * ```
 */
export function describeReason(reason: Reason, options: WordsOptions = {}): string {
  const code = word(reason, "reason", REASONS);
  checkObject(options);
  const { words } = options;
  return (words?.reasons ?? englishReasons)[code]();
}
