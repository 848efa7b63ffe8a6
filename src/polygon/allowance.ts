import { checkLengthOrZero } from "../core/check.js";

/** An allowance, from a function's options; 0 when they name none. */
export function checkAllowance(options: Readonly<Record<string, unknown>>): number {
  const { allowance } = options;
  return allowance === undefined ? 0 : checkLengthOrZero(allowance, "allowance");
}
