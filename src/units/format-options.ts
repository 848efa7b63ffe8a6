import { checkInteger, checkWord, refuse } from "../core/check.js";
import { checkRounding, type Rounding } from "./rounding.js";

/**
 * How a unit is written after its number: as a sign where it has one (`5"`, `5'`, `22.5°`), in letters (`5 in`, `5 ft`,
 * `22.5 deg`), or not at all.
 */
export type UnitLabel = "sign" | "letters" | "none";

/** What the options for writing lengths and angles have in common. */
export interface FormatOptions {
  /** Most decimals, an integer from 0 to 20. */
  readonly digits?: number | undefined;
  /** Whether zeros at the end of the decimals are written, so that all texts have as many; default false. */
  readonly trailingZeros?: boolean | undefined;
  /** Which way to round, once, from the exact value; default `"nearest"`, a tie going away from zero. */
  readonly rounding?: Rounding | undefined;
  /** How the unit is written; default `"sign"`. */
  readonly label?: UnitLabel | undefined;
  /** What stands between a number and its decimals; default `"."`. The parsers take both, but ask what is meant by three digits after a comma. */
  readonly decimalMarker?: "." | "," | undefined;
}

/** Checked {@link FormatOptions}; `digits` is left to the caller, whose default depends on more. */
export interface CheckedFormat {
  /** Whether zeros at the end are written. */
  readonly trailingZeros: boolean;
  /** Which way to round. */
  readonly rounding: Rounding;
  /** How the unit is written. */
  readonly label: UnitLabel;
  /** What stands between a number and its decimals. */
  readonly decimalMarker: "." | ",";
}

/** True or false. */
export function checkFlag(value: unknown, path: string, otherwise: boolean): boolean {
  if (value === undefined) return otherwise;
  return typeof value === "boolean" ? value : refuse("type", path, value, "true or false");
}

/** A number of decimals. */
export function checkDigits(value: unknown, otherwise: number): number {
  return value === undefined ? otherwise : checkInteger(value, "digits", 0, 20);
}

/** The options common to lengths and angles. */
export function checkFormat(given: Readonly<Record<string, unknown>>): CheckedFormat {
  const { label = "sign", decimalMarker = "." } = given;
  return {
    trailingZeros: checkFlag(given["trailingZeros"], "trailingZeros", false),
    rounding: checkRounding(given["rounding"]),
    label: checkWord(label, "label", ["sign", "letters", "none"]),
    decimalMarker: checkWord(decimalMarker, "decimalMarker", [".", ","]),
  };
}

/** Refuses to leave out the units of a text that has several, and so could not be read. */
export function refuseUnlabeled(label: UnitLabel, style: string): void {
  if (label === "none") refuse("conflict", "label", label, `"sign" or "letters" with the style "${style}"`);
}
