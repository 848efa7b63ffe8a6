import type { LengthUnit } from "../core/geometry-types.js";
import { LENGTH_NOTATION } from "./length-notation.js";
import { checkParsable } from "./parse-outcome.js";
import { readQuantity } from "./read-quantity.js";
import { checkUnit, UNIT_SIZES } from "./unit-sizes.js";

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
