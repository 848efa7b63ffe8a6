import { checkNumber, checkObject, refuse } from "../core/check.js";
import type { FitOptions, FitProgress } from "./fit-options.js";

/** {@link FitOptions} with their defaults filled in. */
export interface CheckedOptions {
  /** Milliseconds, Infinity for no limit. */
  readonly timeLimit: number;
  /** Steps, Infinity for no limit. */
  readonly workLimit: number;
  /** Called now and then. */
  readonly onProgress: ((progress: FitProgress) => unknown) | undefined;
}

/**
 * Checks the options of a search and fills in their defaults.
 *
 * @param value - the options as they came
 * @returns the options
 * @throws {InputError} when one is of another type or below 0
 */
export function checkOptions(value: FitOptions): CheckedOptions {
  const options = checkObject(value);
  const limit = (key: "timeLimit" | "workLimit", otherwise: number): number =>
    options[key] === undefined ? otherwise : checkNumber(options[key], key, 0, Infinity, "a number from 0");
  const workLimit = limit("workLimit", Infinity);
  const { onProgress } = value;
  if (onProgress !== undefined && typeof onProgress !== "function") {
    refuse("type", "onProgress", onProgress, "a function");
  }
  return {
    workLimit,
    timeLimit: limit("timeLimit", options["workLimit"] === undefined ? 2000 : Infinity),
    onProgress,
  };
}
