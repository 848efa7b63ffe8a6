import { checkWord } from "../core/check.js";
import { exactRatio, nearestDouble } from "./exact-ratio.js";

/**
 * Which way to round: to the nearest (a tie goes away from zero, so 0.5 becomes 1 and -0.5 becomes -1), up to the larger
 * number, or down to the smaller one (-1.2 becomes -1 and -2). What is there already, to the precision of a double, stays.
 */
export type Rounding = "nearest" | "up" | "down";

/** A way of rounding, `nearest` unless given. */
export function checkRounding(value: unknown): Rounding {
  return value === undefined ? "nearest" : checkWord(value, "rounding", ["nearest", "up", "down"]);
}

/**
 * `value` times `top` over `bottom`, rounded to an integer once, from the exact product.
 *
 * A value that is the double nearest to a graduation, one of the multiples of `bottom` / `top`, is taken to be on it. Else 0.1,
 * which is a little more than a tenth in binary, would round up to two tenths. Top and bottom are positive.
 */
export function roundProduct(value: number, top: bigint, bottom: bigint, rounding: Rounding): bigint {
  const [numerator, denominator] = exactRatio(value);
  const dividend = numerator * top;
  const divisor = denominator * bottom;
  const toward = dividend / divisor;
  const rest = dividend % divisor;
  if (rest === 0n) return toward;
  const isNegative = rest < 0n;
  const away = toward + (isNegative ? -1n : 1n);
  const nearest = (isNegative ? -2n : 2n) * rest >= divisor ? away : toward;
  if (rounding === "nearest" || nearestDouble(nearest * bottom, top) === value) return nearest;
  return isNegative === (rounding === "down") ? away : toward;
}
