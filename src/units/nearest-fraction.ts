import { checkDistance, checkObject } from "../core/check.js";
import { nearestDouble } from "./exact-ratio.js";
import { checkFlag } from "./format-options.js";
import { checkDenominator, inLowestTerms, mixedText } from "./mixed-number.js";
import { checkRounding, roundProduct, type Rounding } from "./rounding.js";

/** Options of {@link nearestFraction}. */
export interface NearestFractionOptions {
  /** Which way to round; default `"nearest"`, a tie going away from zero. */
  readonly rounding?: Rounding | undefined;
  /** Whether the fraction is put in lowest terms, 8/16 as 1/2; default true. */
  readonly reduce?: boolean | undefined;
}

/** A number on a scale of fractions. `whole` and `numerator` both have the sign of the value, or are 0. */
export interface NearestFraction {
  /** The whole number: -5 in -5 7/16. */
  readonly whole: number;
  /** Numerator of the rest: -7 in -5 7/16. Its size is less than the denominator. */
  readonly numerator: number;
  /** Denominator of the rest, from 1 to 1e6; 1 where nothing is left of a reduced fraction. */
  readonly denominator: number;
  /** `whole + numerator / denominator`, as the nearest double. */
  readonly value: number;
  /** How far the fraction lies above the number it was made from: `value` less that number. */
  readonly error: number;
  /** As people write it: `-5 7/16`, `7/16`, `5`, `0`. */
  readonly text: string;
}

/** A rounded count of parts: its sign, its size as whole number and rest, and its value. */
interface Count {
  readonly sign: number;
  readonly whole: number;
  readonly rest: number;
  readonly value: number;
}

/** Counts halves, quarters, eighths and so on in doubles. All is exact, since `parts` is a power of two. */
function countBinary(number: number, parts: number, rounding: Rounding): Count {
  const sign = number < 0 ? -1 : 1;
  const scaled = Math.abs(number) * parts;
  const floor = Math.floor(scaled);
  const rest = scaled - floor;
  const isAway = rounding === "nearest" ? rest >= 0.5 : rest > 0 && (rounding === "up") === number > 0;
  const count = isAway ? floor + 1 : floor;
  const whole = Math.floor(count / parts);
  return { sign, whole, rest: count - whole * parts, value: (sign * count) / parts };
}

/** Counts parts of any kind. */
function countAny(number: number, parts: number, rounding: Rounding): Count {
  const divisor = BigInt(parts);
  const count = roundProduct(number, divisor, 1n, rounding);
  const size = count < 0n ? -count : count;
  return {
    sign: count < 0n ? -1 : 1,
    // Exact, since from 2^53 up the number is itself whole.
    whole: Number(size / divisor),
    rest: Number(size % divisor),
    value: nearestDouble(count, divisor),
  };
}

/**
 * The graduation of a scale of fractions that is nearest to a number, or next above or below it.
 *
 * The scale's graduations are the multiples of 1 / `denominator`. The number is taken exactly as the double that it is. A tie goes away from zero, 1/32 to 1/16
 * on a scale of sixteenths, so the fraction of -x is that of x with its signs changed. `"up"` is toward the larger number: -5.45 becomes -5 7/16 up and -5 1/2
 * down. A number that is the double nearest to a graduation is on it, and stays there whichever way it is rounded: 0.1 is one tenth.
 *
 * @param value - the number, up to 1e100 in size, in any unit
 * @param denominator - how many parts make a whole, an integer from 1 to 1e6
 * @param options - `rounding` and `reduce`
 * @returns the fraction, its value and its error in the unit of `value`, and its text
 * @throws {InputError} when `value` is not a number up to 1e100 in size, `denominator` is not an integer from 1 to 1e6, or an
 * option is none of those allowed
 * @example
 * ```ts
 * import { nearestFraction } from "miterwright/units";
 *
 * nearestFraction(5.4375, 16); //=> { whole: 5, numerator: 7, denominator: 16, value: 5.4375, error: 0, text: "5 7/16" }
 * nearestFraction(15.99, 16).text; //=> "16"
 * nearestFraction(-0.3, 16, { rounding: "down" }).text; //=> "-5/16"
 * nearestFraction(0.3, 16).error; //=> 0.0125
 * ```
 */
export function nearestFraction(
  value: number,
  denominator: number,
  options: NearestFractionOptions = {},
): NearestFraction {
  const number = checkDistance(value, "value");
  const parts = checkDenominator(denominator);
  const given = checkObject(options);
  const rounding = checkRounding(given["rounding"]);
  const reduce = checkFlag(given["reduce"], "reduce", true);
  const isBinary = (parts & (parts - 1)) === 0;
  const { sign, whole, rest, value: rounded } = (isBinary ? countBinary : countAny)(number, parts, rounding);
  const [top, bottom] = reduce ? inLowestTerms(rest, parts) : [rest, parts];
  const text = mixedText(whole, top, bottom);
  // Adding 0 keeps out -0.
  return {
    whole: sign * whole + 0,
    numerator: sign * top + 0,
    denominator: bottom,
    value: rounded + 0,
    error: rounded - number,
    text: rounded < 0 ? `-${text}` : text,
  };
}
