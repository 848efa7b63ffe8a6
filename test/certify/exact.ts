import { Decimal } from "decimal.js";
import { exactText } from "../../src/precise/exact-text.js";

/**
 * The value of a double, every bit of it; `new Decimal(x)` would take its shortest text instead.
 *
 * @param x - any finite number
 * @returns the decimal
 */
export function exactly(x: number): Decimal {
  return new Decimal(exactText(x));
}
