import { checkNumber, checkWord, isRecord, refuse } from "../../core/check.js";
import type { Cost, CostRate, CostUnit } from "./brief.js";
import { fieldsTogether } from "../../core/together.js";

/** Largest amount that a cost may have. */
const MAX_AMOUNT: number = 1e12;

function checkAmount(value: unknown, path: string): number {
  return checkNumber(value, path, 0, MAX_AMOUNT, "an amount from 0 to 1e12");
}

/**
 * Checks a cost.
 *
 * @param value - the cost
 * @param path - its name in error texts
 * @param units - what it may be counted by here, besides pieces
 * @returns the checked cost
 */
export function checkCost(value: unknown, path: string, units: readonly CostUnit[]): Cost {
  if (typeof value === "number") return checkAmount(value, path);
  if (!isRecord(value)) refuse("type", path, value, "an amount from 0 to 1e12 or an object with `amount` and `per`");
  return fieldsTogether<CostRate>(value, path, {
    amount: checkAmount,
    per: (per, at) => checkWord(per, at, units),
  });
}
