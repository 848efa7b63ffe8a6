import { checkObject, checkSides } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import type { FrameCheck } from "../../frame/index.js";
import { frameCheck } from "../../frame/internal.js";
import { arrisLabel } from "./arris-label.js";
import { englishChecks } from "../catalog/check-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/** Options of {@link frameCheckText}. */
export interface FrameCheckTextOptions extends WordsOptions {
  /** Number of sides of the frame. */
  readonly sides: number;
}

/**
 * Says what to measure.
 *
 * @param check - one of a plan's checks
 * @param options - the frame's number of sides, and the words
 * @returns a clause, such as `opening, in the rabbet, side to opposite side`
 * @throws {InputError} when the check is none, or the number of sides is not sound
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { frameCheckText } from "miterwright/words";
 *
 * const { checks, geometry } = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
 * frameCheckText(checks[5]!, geometry); //=> "opening, in the rabbet, side to opposite side"
 * ```
 */
export function frameCheckText(check: FrameCheck, options: FrameCheckTextOptions): string {
  const { code, arris, place } = readStored(check, "check", frameCheck);
  const sides = checkSides(checkObject(options)["sides"]);
  const words = checkWords(options);
  return (words?.checks ?? englishChecks)[code]({ sides, edge: arrisLabel(arris, { words }), place });
}
