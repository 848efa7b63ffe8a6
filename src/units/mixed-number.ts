import { checkInteger } from "../core/check.js";

/** A denominator. */
export function checkDenominator(value: unknown): number {
  return checkInteger(value, "denominator", 1, 1_000_000);
}

/** A fraction in lowest terms: 8/16 as 1/2, 0/16 as 0/1. The numerator is 0 or more, the denominator positive. */
export function inLowestTerms(numerator: number, denominator: number): [numerator: number, denominator: number] {
  let [a, b] = [denominator, numerator];
  while (b !== 0) [a, b] = [b, a % b];
  return [numerator / a, denominator / a];
}

/** A mixed number as text: `5 7/16`, `7/16`, `5`. */
export function mixedText(
  whole: number | bigint,
  numerator: number,
  denominator: number,
  hasZero: boolean = false,
): string {
  // A double from 2^53 up would print rounded, or with an exponent.
  const integer = whole < 2 ** 53 ? whole.toString() : BigInt(whole).toString();
  if (numerator === 0) return integer;
  const fraction = `${numerator}/${denominator}`;
  return integer === "0" && !hasZero ? fraction : `${integer} ${fraction}`;
}
