/** What other modules of the library use of this one, and no entry shows: what `precise`, which imports nothing else, needs to check its input. */
export { checkInteger, checkObject, checkOneOf, checkWord, refuse, reject } from "../core/check.js";
