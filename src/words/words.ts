import { englishChecks, type CheckWords } from "./check-words.js";

/**
 * Every text that a person reads of a plan, as one catalog. Values come formatted; counts come as numbers.
 *
 * The library's own catalog is {@link english}. One of your own, typed as this, puts everything into other words.
 */
export interface Words {
  /** What to measure. */
  readonly checks: CheckWords;
}

/** The words in English, as the trade writes them. */
export const english: Words = {
  checks: englishChecks,
};
