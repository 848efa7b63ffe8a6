import { checkFields, checkNumber, refuse } from "../core/check.js";

/** What a search knows so far. */
export interface FitProgress {
  /** Cost of the best plan so far; of what it makes, if some pieces have no place yet. */
  readonly cost: number;
  /** Lower bound of the cost so far. */
  readonly bound: number;
  /** How many pieces have no place in that plan. */
  readonly unplaced: number;
  /** Steps taken so far, in the unit of `stepLimit`. */
  readonly steps: number;
}

/** When a search has to end. */
export interface FitOptions {
  /**
   * Milliseconds after which the best plan so far is returned, from 0. The search overruns it by a tenth of a second at
   * most; a very large job is read, filled once and written whatever that takes. Default 2000, or none if `stepLimit` is
   * given.
   */
  readonly timeLimit?: number | undefined;
  /**
   * Steps of the search (branches tried in a knapsack, entries updated in a matrix; a million take some milliseconds)
   * after which the best plan so far is returned, from 0. Unlike `timeLimit` it gives the same plan on every machine.
   * Default none.
   */
  readonly stepLimit?: number | undefined;
  /**
   * Called when something better is found, and after every million steps; answer "stop" to end the search. What it throws
   * passes through.
   */
  readonly onProgress?: ((progress: FitProgress) => unknown) | undefined;
}

/** What is read of an abort signal; an `AbortSignal` is one. */
export interface FitSignal {
  /** Whether the fit is no longer wanted. */
  readonly aborted: boolean;
  /** Why; the promise is rejected with it. */
  readonly reason?: unknown;
}

/** {@link FitOptions} of the asynchronous search. */
export interface FitAsyncOptions extends FitOptions {
  /** When it is aborted, the promise rejects with its reason. An `AbortSignal` will do. */
  readonly signal?: FitSignal | undefined;
}

/** {@link FitOptions} with their defaults filled in. */
export interface CheckedOptions {
  /** Milliseconds, Infinity for no limit. */
  readonly timeLimit: number;
  /** Steps, Infinity for no limit. */
  readonly stepLimit: number;
  /** Called now and then. */
  readonly onProgress: ((progress: FitProgress) => unknown) | undefined;
}

/** Checks the options of a search and fills in their defaults; `others` are options that the caller looks at itself. */
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
