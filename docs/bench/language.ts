import { english, type Words } from "miterwright/words";
import { formEnglish, pageEnglish } from "./labels/english.js";
import type { FormWords } from "./labels/form-words.js";
import type { PageWords } from "./labels/page-words.js";

/** What the page speaks: put other catalogs in place of these, and it speaks another language. */
export interface Language {
  /** The page's own texts. */
  readonly page: PageWords;
  /** What is told of a plan. */
  readonly words: Words;
  /** What stands between a number and its decimals. */
  readonly decimalMarker: "." | ",";
}

/** The language of the page. */
export const LANGUAGE: Language = { page: pageEnglish, words: english, decimalMarker: "." };

/** What is written into the page when it is built, in the same language. */
export const FORM: FormWords = formEnglish;
