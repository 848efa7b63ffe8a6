import type { InputError, InputErrorCode } from "../core/input-error.js";

const CODES: readonly InputErrorCode[] = [
  "type",
  "range",
  "integer",
  "missing",
  "conflict",
  "unknown",
  "impossible",
  "syntax",
];

/**
 * Whether something that was thrown is an {@link InputError}.
 *
 * It goes by name and code instead of by class, since a program can hold two copies of a library and then `instanceof`
 * fails.
 *
 * @param error - anything that was caught
 * @returns true for an `InputError` or a `ParseError` of any copy of this library
 * @example
 * ```ts
 * import { isInputError } from "miterwright/errors";
 *
 * isInputError(new RangeError("too long")); //=> false
 * ```
 */
export function isInputError(error: unknown): error is InputError {
  if (typeof error !== "object" || error === null) return false;
  const { name, code } = error as Partial<InputError>;
  return (name === "InputError" || name === "ParseError") && CODES.includes(code as InputErrorCode);
}
