import { checkFields, checkNumber, refuse } from "../core/check.js";
import type { FitOptions, FitProgress } from "./fit-options.js";

/** {@link FitOptions} with their defaults filled in. */
export interface CheckedOptions {
  /** Milliseconds, Infinity for no limit. */
  readonly timeLimit: number;
  /** Steps, Infinity for no limit. */
  readonly stepLimit: number;
  /** Called now and then. */
  readonly onProgress: ((progress: FitProgress) => unknown) | undefined;
}

/** Checks the options of a search and fills in their defaults. */
export function checkOptions(value: FitOptions, others: readonly string[] = []): CheckedOptions {
  const options = checkFields(value, "", ["timeLimit", "stepLimit", "onProgress", ...others]);
  const { stepLimit = Infinity, timeLimit = options["stepLimit"] === undefined ? 2000 : Infinity } = options;
  const { onProgress } = value;
  if (onProgress !== undefined && typeof onProgress !== "function") {
    refuse("type", "onProgress", onProgress, "a function");
  }
  return {
    stepLimit: checkNumber(stepLimit, "stepLimit", 0, Infinity),
    timeLimit: checkNumber(timeLimit, "timeLimit", 0, Infinity),
    onProgress,
  };
}
