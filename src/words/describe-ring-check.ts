import { checkObject } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { RingCheck } from "../closure/index.js";
import { ringCheck } from "../closure/internal.js";
import { englishRingChecks } from "./ring-check-words.js";
import type { WordsOptions } from "./words.js";

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
 * import { describeRingCheck } from "miterwright/words";
 *
 * const checks = ringChecks({ sides: 6, width: 40, acceptedGap: 0.25, apothem: 150 });
 * describeRingCheck(checks[1]!); //=> "inside angle of every tight corner, taken level"
 * ```
 */
export function describeRingCheck(check: RingCheck, options: WordsOptions = {}): string {
  const { code } = readStored(check, "check", ringCheck);
  const { words } = checkObject(options) as WordsOptions;
  return (words?.ringChecks ?? englishRingChecks)[code]();
}
