import { checkLengthOrZero } from "../core/check.js";

/**
 * An allowance, from a function's options; 0 when they name none.
 *
 * @param options - the options
 * @returns the length
 */
export function checkAllowance(options: Readonly<Record<string, unknown>>): number {
  const { allowance } = options;
  return allowance === undefined ? 0 : checkLengthOrZero(allowance, "allowance");
}
