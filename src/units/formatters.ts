import { checkFields, checkInteger, checkOneOf, checkRange, checkWord, refuse } from "../core/check.js";
import type { LengthUnit } from "../core/geometry-types.js";
import { formatAngle } from "./format-angle.js";
import { formatLength, type FormatLengthOptions } from "./format-length.js";
import { checkFlag, type FormatOptions } from "./format-options.js";
import { checkUnit, GRAVITY, isInches, POUND } from "../core/unit-sizes.js";

/** Options of {@link formatters}. */
export interface FormattersOptions extends Pick<FormatOptions, "decimalMarker"> {
  /** The unit that lengths are in, and are written in. */
  readonly unit: LengthUnit;
  /**
   * Parts of the unit that lengths are rounded to, an integer from 1 to 1e6: 32 writes inches to 1/32 in as fractions, 2 writes millimeters to half
   * a millimeter as decimals. Not with `digits`. Default 32 in inches and feet; in the others `digits` decide.
   */
  readonly denominator?: number | undefined;
  /** Most decimals of a length, an integer from 0 to 6. Not with `denominator`. Default 1 in mm, 2 in cm, 4 in m. */
  readonly digits?: number | undefined;
  /** Writes an amount of money; default two decimals without a currency. */
  readonly money?: ((amount: number) => string) | undefined;
  /** Whether masses and forces are written in pounds; default true in inches and feet. */
  readonly pounds?: boolean | undefined;
}

/** Writes every kind of number that a plan has. No text of it breaks over two lines: its spaces are no-break spaces. */
export interface Formats {
  /** A length in the reader's unit, as fine as a rule shows it. */
  readonly length: (value: number) => string;
  /** A small length, such as a gap or a tolerance: to a hundredth of a millimeter or a thousandth of an inch. */
  readonly small: (value: number) => string;
  /** An angle in degrees, to a hundredth. */
  readonly angle: (degrees: number) => string;
  /** A small angle in degrees, such as a tolerance: to its first digit that is not 0. */
  readonly smallAngle: (degrees: number) => string;
  /** A mass in kilograms, to three figures. */
  readonly mass: (kilograms: number) => string;
  /** A force in newtons, to three figures. */
  readonly force: (newtons: number) => string;
  /** A share in percent, to three figures. */
  readonly percent: (percent: number) => string;
  /** A temperature in degrees Celsius, to three figures. */
  readonly temperature: (celsius: number) => string;
  /** An area in the square of the unit, to four figures. */
  readonly area: (area: number) => string;
  /** A number without a unit, to three figures. */
  readonly number: (value: number) => string;
  /** An amount of money. */
  readonly money: (amount: number) => string;
}

/** Decimals that show a hundredth of a millimeter, or a thousandth of an inch. */
const SMALL_DIGITS: Readonly<Record<LengthUnit, number>> = { mm: 2, cm: 3, m: 5, in: 3, ft: 4 };
/** Decimals of a length where nothing is asked for: a tenth of a millimeter. */
const USUAL_DIGITS: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 2, m: 4, in: 3, ft: 4 };
/** The usual fractions of an inch on a workshop's rule. */
const USUAL_DENOMINATOR: number = 32;
/** Most decimals of a small angle. */
const SMALL_ANGLE_DIGITS: number = 6;

/** An area shows more than a length of three figures would. */
const AREA_FIGURES: number = 4;
/** Numbers without a unit may be as large as this. */
const MOST: number = 1e300;

/** An amount with two decimals; a very large one with six figures, which say more than its cents. */
function amountText(amount: number): string {
  return Math.abs(amount) < 1e9 ? amount.toFixed(2) : amount.toPrecision(6);
}

/** A number, its fraction and its unit stay on one line: 92 23/32" broken behind the 92 would be misread. */
function tied(text: string): string {
  return text.replaceAll(" ", "\u00a0");
}

/** How a length is written, from checked options. */
function lengthWriter(
  unit: LengthUnit,
  denominator: number | undefined,
  digits: number | undefined,
  marker: Pick<FormatLengthOptions, "decimalMarker">,
): (value: number) => string {
  if (isInches(unit) && digits === undefined) {
    return (value) => tied(formatLength(value, unit, { ...marker, denominator: denominator ?? USUAL_DENOMINATOR }));
  }
  if (denominator === undefined) {
    const options: FormatLengthOptions = { ...marker, style: "decimal", digits: digits ?? USUAL_DIGITS[unit] };
    return (value) => tied(formatLength(value, unit, options));
  }
  // A half or a quarter is no number of decimals, so the value is put on the grid first.
  return (value) =>
    tied(formatLength(Math.round(value * denominator) / denominator, unit, { ...marker, style: "decimal" }));
}

/**
 * Writes the numbers of plans for a reader: lengths in a unit, angles, masses, forces, shares and money.
 *
 * @param options - the unit, how finely lengths are written, the decimal marker, money and pounds
 * @returns a function for each kind of number; each throws an `InputError` for what is not a finite number
 * @throws {InputError} when an option is unknown or not sound
 * @example
 * ```ts
 * import { formatters } from "miterwright/units";
 *
 * const inches = formatters({ unit: "in", denominator: 16 });
 * inches.length(5.4375); //=> "5 7/16\""
 * inches.mass(2.5); //=> "5.51 lb"
 * const millimeters = formatters({ unit: "mm", denominator: 2, decimalMarker: "," });
 * millimeters.length(191.3); //=> "191,5 mm"
 * millimeters.small(0.256); //=> "0,26 mm"
 * ```
 */
export function formatters(options: FormattersOptions): Formats {
  const given = checkFields(options, "", ["unit", "denominator", "digits", "decimalMarker", "money", "pounds"]);
  const unit = checkUnit(given["unit"], "unit");
  if (given["denominator"] !== undefined && given["digits"] !== undefined)
    checkOneOf(given, "", ["denominator", "digits"]);
  const denominator =
    given["denominator"] === undefined ? undefined : checkInteger(given["denominator"], "denominator", 1, 1e6);
  const digits = given["digits"] === undefined ? undefined : checkInteger(given["digits"], "digits", 0, 6);
  const decimalMarker = checkWord(given["decimalMarker"] ?? ".", "decimalMarker", [".", ","]);
  const pounds = checkFlag(given["pounds"], "pounds", isInches(unit));
  const { money } = given;
  if (money !== undefined && typeof money !== "function")
    refuse("type", "money", money, "a function that writes an amount of money");

  const marked = (text: string): string => (decimalMarker === "," ? text.replace(".", ",") : text);
  const finite = (value: unknown, path: string): number =>
    checkRange(value, path, { min: -MOST, max: MOST, what: "a finite number" });
  const figures = (value: number, path: string, count = 3): string =>
    marked(String(Number(finite(value, path).toPrecision(count)) + 0));
  const small: FormatLengthOptions = { style: "decimal", digits: SMALL_DIGITS[unit], decimalMarker };
  return {
    length: lengthWriter(unit, denominator, digits, { decimalMarker }),
    small: (value) => tied(formatLength(value, unit, small)),
    angle: (degrees) => tied(formatAngle(degrees, { decimalMarker })),
    smallAngle: (degrees) =>
      tied(
        formatAngle(Number(finite(degrees, "degrees").toPrecision(1)), { digits: SMALL_ANGLE_DIGITS, decimalMarker }),
      ),
    mass: (kilograms) =>
      `${figures(finite(kilograms, "kilograms") / (pounds ? POUND : 1), "kilograms")}\u00a0${pounds ? "lb" : "kg"}`,
    force: (newtons) =>
      `${figures(finite(newtons, "newtons") / (pounds ? POUND * GRAVITY : 1), "newtons")}\u00a0${pounds ? "lbf" : "N"}`,
    percent: (percent) => `${figures(percent, "percent")}\u00a0%`,
    temperature: (celsius) => `${figures(celsius, "celsius")}\u00a0°C`,
    area: (area) => `${figures(area, "area", AREA_FIGURES)}\u00a0${unit}²`,
    number: (value) => figures(value, "value"),
    money: money === undefined ? (amount) => marked(amountText(finite(amount, "amount"))) : (money as Formats["money"]),
  };
}
