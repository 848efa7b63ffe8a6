import type { LengthUnit } from "../core/geometry-types.js";
import { parseLength } from "./parse-length.js";
import { outcomeOf, type ParseOutcome } from "./parse-outcome.js";

/**
 * Like {@link parseLength}, but gives back the error instead of throwing it, for text that is still being typed.
 *
 * @param text - the text; a number in it has at most 1000 digits
 * @param unit - the unit of the result, and of a number without one
 * @returns `{ ok: true, value }` with the length in `unit`, or `{ ok: false, error }`
 * @throws {InputError} when `text` is not a string, or `unit` is not a unit
 * @example
 * ```ts
 * import { tryParseLength } from "miterwright/units";
 *
 * tryParseLength("2ft 3in", "in"); //=> { ok: true, value: 27 }
 * const outcome = tryParseLength("5 7/", "in");
 * if (!outcome.ok) {
 *   outcome.error.position; //=> 4
 *   outcome.error.reason; //=> "a denominator is missing"
 *   outcome.error.message; //=> 'Expected `text` to be a length, got "5 7/" (string): at character 5, a denominator is missing'
 * }
 * ```
 */
export function tryParseLength(text: string, unit: LengthUnit): ParseOutcome {
  return outcomeOf(() => parseLength(text, unit));
}
