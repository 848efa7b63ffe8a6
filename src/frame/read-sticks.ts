import { checkArray, checkInteger, checkLength, checkLengthOrZero, checkObject, checkText } from "../core/check.js";
import type { StockStick } from "../stock/index.js";
import { ifGiven, together } from "./together.js";

function readStick(value: unknown, path: string): StockStick {
  const stick = checkObject(value, path);
  together<unknown>([
    () => checkText(stick["id"], `${path}.id`),
    () => checkLength(stick["length"], `${path}.length`),
    ifGiven(stick["count"], (count) => checkInteger(count, `${path}.count`, 0, 1e9)),
    ifGiven(stick["cost"], (cost) => checkLengthOrZero(cost, `${path}.cost`)),
  ]);
  return value as StockStick;
}

/**
 * Checks the sticks on offer, as far as a plan reads them; `fitStock` looks at the rest.
 *
 * @param value - the sticks
 * @returns the sticks as they were given
 */
export function readSticks(value: unknown): readonly StockStick[] {
  const sticks = checkArray(value, "sticks", "an array of sticks, each with an id and a length");
  return together(sticks.map((stick, index) => () => readStick(stick, `sticks[${index}]`)));
}
