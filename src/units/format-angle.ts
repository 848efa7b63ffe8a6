import { checkRange, checkObject, checkWord } from "../core/check.js";
import { DEGREE_SIZE, MINUTE_SIZE } from "./angle-notation.js";
import { decimalText } from "./decimal-text.js";
import { checkDigits, checkFormat, type FormatOptions, refuseUnlabeled } from "./format-options.js";
import { roundProduct } from "./rounding.js";

/** How an angle is written: `22.505°`, or in degrees, minutes and seconds, `22°30'18"`. */
export type AngleStyle = "decimal" | "dms";

/** Options of {@link formatAngle}. */
export interface FormatAngleOptions extends FormatOptions {
  /** How the angle is written; default `"decimal"`. */
  readonly style?: AngleStyle | undefined;
  /** Most decimals, of degrees or with `style: "dms"` of seconds, an integer from 0 to 20; default 2 and 0. */
  readonly digits?: number | undefined;
}

/**
 * An angle as people write it.
 *
 * The exact value is rounded once, to the last decimal of degrees or seconds, and carries: 29°59'59.99" becomes
 * `30°00'00"`. A tie goes away from zero; `"up"` is toward the larger number and `"down"` toward the smaller, also below
 * zero, and a value that is the double nearest to what can be written stays there. Minutes and seconds have two digits
 * before the point. The minus sign stands in front of the whole, and what rounds to zero has none. {@link parseAngle}
 * reads every text back, but for one with three decimals after a comma, where it asks.
 *
 * @param value - an angle in degrees, up to 1e100 in size
 * @param options - `style`, `digits`, `trailingZeros`, `rounding`, `label`, `decimalMarker`
 * @returns the text, with as many digits before the point as it takes
 * @throws {InputError} when `value` is not a number up to 1e100 in size, an option is none of those allowed, or
 * `style: "dms"` is asked for with `label: "none"`
 * @example
 * ```ts
 * import { formatAngle } from "miterwright/units";
 *
 * formatAngle(22.5); //=> "22.5°"
 * formatAngle(22.5, { style: "dms" }); //=> "22°30'00\""
 * formatAngle(125.26438968275465, { style: "dms", digits: 1 }); //=> "125°15'51.8\""
 * formatAngle(-7.125, { digits: 1, label: "letters" }); //=> "-7.1 deg"
 * ```
 */
export function formatAngle(value: number, options: FormatAngleOptions = {}): string {
  const degrees = checkRange(value, "value", { min: -1e100, max: 1e100, what: "degrees from -1e100 to 1e100" });
  const given = checkObject(options);
  const { style: styleGiven = "decimal" } = given;
  const style = checkWord(styleGiven, "style", ["decimal", "dms"]);
  const digits = checkDigits(given["digits"], style === "dms" ? 0 : 2);
  const format = checkFormat(given);
  const { rounding, label } = format;
  if (style === "dms") refuseUnlabeled(label, style);

  const perSecond = 10n ** BigInt(digits);
  const perDegree = style === "dms" ? BigInt(DEGREE_SIZE) * perSecond : perSecond;
  const signed = roundProduct(degrees, perDegree, 1n, rounding);
  const count = signed < 0n ? -signed : signed;
  const minus = signed < 0n ? "-" : "";
  const [degree, minute, second, gap] = label === "letters" ? [" deg", " min", " sec", " "] : ["°", "'", '"', ""];
  if (style === "decimal") {
    return minus + decimalText(count, digits, format) + (label === "none" ? "" : degree);
  }
  const perMinute = BigInt(MINUTE_SIZE) * perSecond;
  const minutes = ((count % perDegree) / perMinute).toString().padStart(2, "0");
  const seconds = decimalText(count % perMinute, digits, format).replace(/^\d(?!\d)/, "0$&");
  return `${minus}${(count / perDegree).toString()}${degree}${gap}${minutes}${minute}${gap}${seconds}${second}`;
}
