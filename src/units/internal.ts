/** What other modules of the library use of this one, and no entry shows. */
export { checkFormats, checkFormatter, finely } from "./check-formats.js";
