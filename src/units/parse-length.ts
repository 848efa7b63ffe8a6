import type { LengthUnit } from "../core/geometry-types.js";
import { checkParsable, outcomeOf, type ParseOutcome } from "./parse-outcome.js";
import { type Notation, readQuantity } from "./read-quantity.js";
import { checkUnit, UNIT_SIZES } from "../core/unit-sizes.js";

/** The unit of length that a word or sign names. */
function sizeOf(word: string): number | undefined {
  switch (word) {
    case "mm":
    case "millimeter":
    case "millimeters":
    case "millimetre":
    case "millimetres":
      return UNIT_SIZES.mm;
    case "cm":
    case "centimeter":
    case "centimeters":
    case "centimetre":
    case "centimetres":
      return UNIT_SIZES.cm;
    case "m":
    case "meter":
    case "meters":
    case "metre":
    case "metres":
      return UNIT_SIZES.m;
    case '"':
    case "in":
    case "inch":
    case "inches":
      return UNIT_SIZES.in;
    case "'":
    case "ft":
    case "foot":
    case "feet":
      return UNIT_SIZES.ft;
    default:
      return undefined;
  }
}

/** How lengths are written. */
const LENGTH_NOTATION: Notation = {
  noun: "a length",
  units: "mm, cm, m, in or ft",
  sizeOf,
  // `1' 2` is a foot and 2 inches. But the 2 of `1 m 2` could be centimeters, millimeters or tenths.
  sizeAfter: (size) => (size === UNIT_SIZES.ft ? UNIT_SIZES.in : undefined),
};

/**
 * The length that a person typed.
 *
 * A length is a number, a fraction or a mixed number with a unit, or several with units that go down, as feet and inches:
 * `90.5mm`, `1,5 mm`, `5 7/16`, `5-7/16"`, `3⅞ in`, `1' 2 1/2"`, `2ft 3in`, `1 m 20 cm`. A number without a unit is in
 * `unit`; after feet it is in inches. Only the last part can have a fraction or decimals, and a part beside a larger
 * unit must not fill one of it. Fractions of metric units are read too: `1/2 m` can only mean one thing. Names of units can
 * have capitals; quotes and primes, spaces, hyphens and minus signs can be of any width and slant. The text's exact value
 * is rounded once, in `unit`.
 *
 * What could mean two things is refused, with the reason: `1,234` (decimals or thousands), `5 - 7/16` (a mixed number or
 * a difference), `1 m 2` (centimeters or tenths). Thousands are written without separators.
 *
 * @param text - the text; a number in it has at most 1000 digits
 * @param unit - the unit of the result, and of a number without one
 * @returns the length in `unit`, the nearest double to the exact value: 0, or 1e-100 to 1e100 in size, negative after a
 * minus sign
 * @throws {ParseError} when the text is no length or could be two, with the position and the reason; with the code
 * `"missing"` when it is empty, `"range"` when a number in it or the length is beyond its bounds, else `"syntax"`
 * @throws {InputError} when `text` is not a string, or `unit` is not a unit
 * @example
 * ```ts
 * import { parseLength } from "miterwright/units";
 *
 * parseLength("5 7/16", "in"); //=> 5.4375
 * parseLength("5-7/16\"", "mm"); //=> 138.1125
 * parseLength("1' 2 1/2\"", "in"); //=> 14.5
 * parseLength("1,5 mm", "in"); //=> 0.05905511811023622
 * parseLength("3⅞", "ft"); //=> 3.875
 * ```
 */
export function parseLength(text: string, unit: LengthUnit): number {
  return readQuantity(checkParsable(text), LENGTH_NOTATION, UNIT_SIZES[checkUnit(unit, "unit")]);
}

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
