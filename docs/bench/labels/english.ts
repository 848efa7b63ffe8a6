/** The page's own texts in English. Another language has a module like this one, and takes its place in `language.ts`. */
export { formEnglish } from "./form-words.js";
export { pageEnglish } from "./page-words.js";
