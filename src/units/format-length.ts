import { checkDistance, checkObject, checkWord, refuse } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { decimalText } from "./decimal-text.js";
import {
  checkDigits,
  checkFlag,
  checkFormat,
  type FormatOptions,
  refuseUnlabeled,
  type UnitLabel,
} from "./format-options.js";
import { checkDenominator, inLowestTerms, mixedText } from "./mixed-number.js";
import type { NearestFractionOptions } from "./nearest-fraction.js";
import { roundProduct } from "./rounding.js";
import { checkUnit, UNIT_SIZES } from "../core/unit-sizes.js";

/** How a length is written: `5.438"`, `5 7/16"` or `1' 2 1/2"`. */
export type LengthStyle = "decimal" | "fraction" | "feet-inches";

/** Options of {@link formatLength}. */
export interface FormatLengthOptions extends FormatOptions, Pick<NearestFractionOptions, "reduce"> {
  /**
   * How the length is written; default `"fraction"` in inches, `"feet-inches"` in feet, else `"decimal"`. Where `digits` are
   * asked for and no `denominator` is, the default is `"decimal"` in every unit.
   */
  readonly style?: LengthStyle | undefined;
  /** The unit to write it in; default the unit of the value, but with `style: "feet-inches"` always feet. */
  readonly as?: LengthUnit | undefined;
  /**
   * Most decimals with `style: "decimal"`, an integer from 0 to 20; default 2 in mm, 3 in cm and 5 in m (a hundredth of
   * a millimeter), 3 in inches and 4 in feet (about a thousandth of an inch).
   */
  readonly digits?: number | undefined;
  /** Parts of the unit that fractions count, an integer from 1 to 1e6; default 16. */
  readonly denominator?: number | undefined;
}

/** The style of a unit, unless another is asked for; `digits` without a denominator ask for decimals. */
function styleOf(unit: LengthUnit, { digits, denominator }: Readonly<Record<string, unknown>>): LengthStyle {
  if (digits !== undefined && denominator === undefined) return "decimal";
  return unit === "in" ? "fraction" : unit === "ft" ? "feet-inches" : "decimal";
}

/** The number of decimals of a unit, unless another is asked for. */
function digitsOf(unit: LengthUnit): number {
  return { mm: 2, cm: 3, m: 5, in: 3, ft: 4 }[unit];
}

/** What is written after the number. */
function labelText(unit: LengthUnit, label: UnitLabel): string {
  if (label === "none") return "";
  if (label === "sign" && unit === "in") return '"';
  if (label === "sign" && unit === "ft") return "'";
  return ` ${unit}`;
}

/** A count of parts of a unit as a mixed number of it. */
function fractionText(count: bigint, parts: number, reduce: boolean, hasZero: boolean = false): string {
  const rest = Number(count % BigInt(parts));
  const [top, bottom] = reduce ? inLowestTerms(rest, parts) : [rest, parts];
  return mixedText(count / BigInt(parts), top, bottom, hasZero);
}

/** The unit to write in. */
function checkAs(value: unknown, unit: LengthUnit, style: LengthStyle | undefined): LengthUnit {
  if (style !== "feet-inches") return value === undefined ? unit : checkUnit(value, "as");
  if (value !== undefined && checkUnit(value, "as") !== "ft") {
    refuse("conflict", "as", value, '"ft" with the style "feet-inches"');
  }
  return "ft";
}

/**
 * A length as people write it.
 *
 * The exact value is rounded once, to the last decimal or to the denominator, and carries: 15.99 becomes `16"` and
 * 11 63/64 inches, in sixteenths, `1' 0"`. A tie goes away from zero, as 1/32 to 1/16; `"up"` is toward the larger number and
 * `"down"` toward the smaller, also below zero. A value that is the double nearest to what can be written stays there: 76.2 mm
 * is `3"` up and down. The minus sign stands in front of the whole, and what rounds to zero has none. Feet are left out
 * when there are none (`2 1/2"`), inches are not (`1' 0"`, `1' 0 1/2"`). {@link parseLength} reads every text back, in
 * the unit it was written in when the label is left out; but it asks what three decimals after a comma are.
 *
 * @param value - a length or signed distance, up to 1e100 in size
 * @param unit - the unit of `value`
 * @param options - `style`, `as` (the unit to write in), `digits`, `trailingZeros`, `denominator`, `reduce`, `rounding`,
 * `label` and `decimalMarker`
 * @returns the text, with as many digits before the point as it takes
 * @throws {InputError} when `value` is not a number up to 1e100 in size, `unit` is not a unit, an option is none of those
 * allowed, or `style: "feet-inches"` is asked for with `label: "none"` or in another unit than feet
 * @example
 * ```ts
 * import { formatLength } from "miterwright/units";
 *
 * formatLength(90.5, "mm"); //=> "90.5 mm"
 * formatLength(5.4375, "in"); //=> "5 7/16\""
 * formatLength(90.5, "mm", { as: "in" }); //=> "3 9/16\""
 * formatLength(90.5, "mm", { as: "in", style: "decimal", label: "letters" }); //=> "3.563 in"
 * formatLength(5.4375, "in", { digits: 2 }); //=> "5.44\""
 * formatLength(90.5, "mm", { decimalMarker: "," }); //=> "90,5 mm"
 * formatLength(14.5, "in", { style: "feet-inches" }); //=> "1' 2 1/2\""
 * formatLength(5.2, "in", { denominator: 8, rounding: "up" }); //=> "5 1/4\""
 * ```
 */
export function formatLength(value: number, unit: LengthUnit, options: FormatLengthOptions = {}): string {
  const distance = checkDistance(value, "value");
  const from = checkUnit(unit, "unit");
  const given = checkObject(options);
  const styles = ["decimal", "fraction", "feet-inches"] as const;
  const asked = given["style"] === undefined ? undefined : checkWord(given["style"], "style", styles);
  const shown = checkAs(given["as"], from, asked);
  const style = asked ?? styleOf(shown, given);
  const digits = checkDigits(given["digits"], digitsOf(shown));
  const parts = given["denominator"] === undefined ? 16 : checkDenominator(given["denominator"]);
  const reduce = checkFlag(given["reduce"], "reduce", true);
  const format = checkFormat(given);
  const { rounding, label } = format;
  if (style === "feet-inches") refuseUnlabeled(label, style);

  const perUnit = style === "decimal" ? 10n ** BigInt(digits) : BigInt(style === "fraction" ? parts : 12 * parts);
  const signed = roundProduct(distance, BigInt(UNIT_SIZES[from]) * perUnit, BigInt(UNIT_SIZES[shown]), rounding);
  const count = signed < 0n ? -signed : signed;
  const minus = signed < 0n ? "-" : "";
  if (style === "decimal") return minus + decimalText(count, digits, format) + labelText(shown, label);
  if (style === "fraction") return minus + fractionText(count, parts, reduce) + labelText(shown, label);
  const feet = count / perUnit;
  const inches = fractionText(count % perUnit, parts, reduce, feet > 0n) + labelText("in", label);
  return minus + (feet > 0n ? `${feet.toString()}${labelText("ft", label)} ` : "") + inches;
}
