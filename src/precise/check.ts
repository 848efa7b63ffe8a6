import { Decimal } from "decimal.js";
import { checkInteger, refuse } from "../errors/internal.js";
import { exactText } from "./exact-text.js";

/** A number as a double, which counts with its exact value, or as a decimal text like `"22.5"` or `"1e-7"`, of up to 1100 characters. */
export type PreciseNumber = number | string;

/** How many digits are wanted. */
export interface PreciseOptions {
  /** Significant digits of every result, an integer from 1 to 1000. By default 50. */
  readonly digits?: number | undefined;
}

/** What values a number may take. */
export interface Range {
  /** What to call it in error texts, with its bounds. */
  readonly what: string;
  /** Lower bound. */
  readonly low: string;
  /** Upper bound. */
  readonly high: string;
  /** Whether the bounds themselves are refused. */
  readonly open?: boolean;
  /** Whether only integers are allowed. */
  readonly integer?: boolean;
}

/** Degrees from flat to upright. */
export const SLOPE: Range = { what: "degrees from -90 to 90", low: "-90", high: "90" };
/** Number of sides. */
export const SIDES: Range = { what: "an integer from 3 to 1000000", low: "3", high: "1e6", integer: true };
/** Turn of a corner. */
export const TURN: Range = {
  what: "a number between -180 and 180, bounds excluded",
  low: "-180",
  high: "180",
  open: true,
};
/** A length that is not zero. */
export const LENGTH: Range = { what: "a positive length (1e-100 to 1e100)", low: "1e-100", high: "1e100" };
/** A coordinate. */
export const DISTANCE: Range = { what: "a finite distance (-1e100 to 1e100)", low: "-1e100", high: "1e100" };

const DECIMAL_TEXT = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/iu;
/** Longer texts could differ from a round number by less than the last attempt of the evaluation can see. */
const LONGEST_TEXT = 1100;
/** Numbers nearer to zero, but not zero, are refused: their results would be texts of as many zeros. No double is among them. */
const SMALLEST = "1e-400";

/** A number of digits: an integer from 1 to 1000, 50 when it is missing. */
export function checkDigits(value: unknown): number {
  return value === undefined ? 50 : checkInteger(value, "digits", 1, 1000);
}

/** The exact value of a double or of a decimal text, which must be one. */
function readExact(value: unknown, path: string, expected: string): Decimal {
  const make = Decimal.clone({ defaults: true });
  if (typeof value === "number") {
    return Number.isFinite(value) ? new make(exactText(value)) : refuse("range", path, value, expected);
  }
  if (typeof value !== "string") return refuse("type", path, value, expected);
  if (!DECIMAL_TEXT.test(value)) return refuse("syntax", path, value, expected);
  if (value.length > LONGEST_TEXT) {
    return refuse("range", path, value, `a decimal text of at most ${LONGEST_TEXT} characters`);
  }
  return new make(value);
}

/** Whether a number is nearer to zero than allowed. What even decimal.js cannot hold has become zero. */
function isTooSmall(exact: Decimal, value: unknown): boolean {
  if (!exact.isZero()) return exact.abs().lt(SMALLEST);
  return typeof value === "string" && /^[^e]*[1-9]/iu.test(value);
}

/** A number, as a double or a decimal text. Its exact value, never -0. */
export function checkPrecise(value: unknown, path: string, range: Range): Decimal {
  const expected = `${range.what}, as a number or a decimal text`;
  const exact = readExact(value, path, expected);
  const inside =
    range.open === true ? exact.gt(range.low) && exact.lt(range.high) : exact.gte(range.low) && exact.lte(range.high);
  if (!inside) return refuse("range", path, value, expected);
  if (range.integer === true && !exact.isInteger()) return refuse("integer", path, value, expected);
  if (isTooSmall(exact, value)) return refuse("range", path, value, `0 or of a magnitude of at least ${SMALLEST}`);
  return exact.isZero() ? exact.abs() : exact;
}
