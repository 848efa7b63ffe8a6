import { plainCopy } from "../../core/plain-copy.js";
import { checkSticks } from "../../stock/internal.js";
import type { StockStick } from "../../stock/index.js";
import { together } from "../../core/together.js";

/**
 * Checks the sticks on offer, as `fitStock` does, but reports all that is wrong with them.
 *
 * @param value - the sticks
 * @returns a copy of the sticks as they were given
 */
export function readSticks(value: unknown): readonly StockStick[] {
  checkSticks(value, "sticks", together);
  return plainCopy(value as readonly StockStick[]);
}
