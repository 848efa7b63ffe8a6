import { checkNumber, checkWord } from "../core/check.js";
import type { Price } from "./brief.js";
import { fieldsTogether } from "./together.js";

/** Largest amount that a price may have. */
const MAX_AMOUNT: number = 1e12;

/**
 * Checks a price.
 *
 * @param value - the price
 * @param path - its name in error texts
 * @param pers - what it may be counted by here
 * @returns the checked price
 */
export function checkPrice(value: unknown, path: string, pers: readonly Price["per"][]): Price {
  return fieldsTogether<Price>(value, path, {
    amount: (amount, at) => checkNumber(amount, at, 0, MAX_AMOUNT, "an amount from 0 to 1e12"),
    per: (per, at) => checkWord(per, at, pers),
  });
}
