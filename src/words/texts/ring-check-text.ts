import { readStored } from "../../core/stored.js";
import type { RingCheck } from "../../closure/index.js";
import { ringCheck } from "../../closure/internal.js";
import { englishRingChecks } from "../catalog/ring-check-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/**
 * Says what to measure on a ring.
 *
 * @param check - one of those that `ringChecks` gives
 * @param options - the words
 * @returns a clause, such as `gap of the last joint, one end touching`
 * @throws {InputError} when the check is none
 * @example
 * ```ts
 * import { ringChecks } from "miterwright/closure";
 * import { ringCheckText } from "miterwright/words";
 *
 * const checks = ringChecks({ sides: 6, width: 40, acceptedGap: 0.25, apothem: 150 });
 * ringCheckText(checks[1]!); //=> "inside angle of every tight corner, taken level"
 * ```
 */
export function ringCheckText(check: RingCheck, options: WordsOptions = {}): string {
  const { code } = readStored(check, "check", ringCheck);
  const words = checkWords(options);
  return (words?.ringChecks ?? englishRingChecks)[code]();
}
