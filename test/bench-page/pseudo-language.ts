import { FORM as ENGLISH_FORM, LANGUAGE as ENGLISH, type Language } from "../../docs/bench/language.js";
import type { FormWords } from "../../docs/bench/labels/form-words.js";
import { pseudoOf } from "../words/pseudo-catalog.js";

/** The page with every text of its catalogs in brackets. What stands outside them did not come from a catalog. */
export const LANGUAGE: Language = {
  page: pseudoOf(ENGLISH.page),
  words: pseudoOf(ENGLISH.words),
  decimalMarker: ENGLISH.decimalMarker,
};

/** The form in the same brackets. */
export const FORM: FormWords = pseudoOf(ENGLISH_FORM);
