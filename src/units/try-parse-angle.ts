import { parseAngle } from "./parse-angle.js";
import { outcomeOf, type ParseOutcome } from "./parse-outcome.js";

/**
 * Like {@link parseAngle}, but gives back the error instead of throwing it, for text that is still being typed.
 *
 * @param text - the text; a number in it has at most 1000 digits
 * @returns `{ ok: true, value }` with the angle in degrees, or `{ ok: false, error }`
 * @throws {InputError} when `text` is not a string
 * @example
 * ```ts
 * import { tryParseAngle } from "miterwright/units";
 *
 * tryParseAngle("22° 30'"); //=> { ok: true, value: 22.5 }
 * const outcome = tryParseAngle("22° 75'");
 * if (!outcome.ok) {
 *   outcome.error.position; //=> 4
 *   outcome.error.code; //=> "range"
 * }
 * ```
 */
export function tryParseAngle(text: string): ParseOutcome {
  return outcomeOf(() => parseAngle(text));
}
