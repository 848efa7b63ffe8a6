import { checkObject } from "../core/check.js";
import { checkFormats } from "../units/internal.js";
import type { Formats } from "../units/index.js";
import type { Words } from "./words.js";

/** Options of what tells of something without numbers. */
export interface WordsOptions {
  /** The words; default English. */
  readonly words?: Words | undefined;
}

/** Options of what tells of something with numbers. */
export interface TellOptions extends WordsOptions {
  /** Writes the numbers, as `formatters` makes it. */
  readonly formats: Formats;
}

/** Options that were checked: every formatter is there, and what it writes stays on one line. */
export interface Telling {
  readonly formats: Formats;
  readonly words: Words | undefined;
}

/** Checks the words: a catalog's own texts are taken as they are. */
export function checkWords(options: unknown): Words | undefined {
  const { words } = checkObject(options);
  return words === undefined ? undefined : (checkObject(words, "words") as unknown as Words);
}

/** Checks words and formatters. */
export function checkTellOptions(options: unknown): Telling {
  return { words: checkWords(options), formats: checkFormats(checkObject(options)["formats"]) };
}
