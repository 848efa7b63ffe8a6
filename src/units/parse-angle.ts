import { ANGLE_NOTATION, DEGREE_SIZE } from "./angle-notation.js";
import { checkParsable, outcomeOf, type ParseOutcome } from "./parse-outcome.js";
import { readQuantity } from "./read-quantity.js";

/**
 * The angle that a person typed, in degrees.
 *
 * An angle is a number of degrees, minutes or seconds, or several that go down: `22.5`, `22,5°`, `22 1/2°`, `22½ deg`,
 * `22°30'`, `22° 30′ 15.5″`. A number without a unit is in degrees, after degrees in minutes, and after minutes in seconds.
 * Only the last part can have a fraction or decimals; minutes and seconds beside a larger unit are below 60. The text's
 * exact value is rounded once. What could mean two things is refused, as {@link parseLength} does; so is `22 30`.
 *
 * @param text - the text; a number in it has at most 1000 digits
 * @returns degrees, the nearest double to the exact value: 0, or 1e-100 to 1e100 in size; negative after a minus sign
 * @throws {ParseError} when the text is no angle or could be two, with the position and the reason; with the code
 * `"missing"` when it is empty, `"range"` when a number in it or the angle is beyond its bounds, else `"syntax"`
 * @throws {InputError} when `text` is not a string
 * @example
 * ```ts
 * import { parseAngle } from "miterwright/units";
 *
 * parseAngle("22°30'"); //=> 22.5
 * parseAngle("-22° 30′ 18″"); //=> -22.505
 * parseAngle("22½"); //=> 22.5
 * ```
 */
export function parseAngle(text: string): number {
  return readQuantity(checkParsable(text), ANGLE_NOTATION, DEGREE_SIZE);
}

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
