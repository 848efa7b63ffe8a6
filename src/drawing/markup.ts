import { closeIsolates } from "../core/isolate.js";

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/**
 * Anything that XML 1.0 does not allow as a character (section 2.2, production 2), surrogates that stand alone among it. Tab and line ends are allowed there,
 * but count as spaces here.
 */
const FORBIDDEN: RegExp = /[\u0000-\u001f\u007f\ufffe\uffff]|\p{Cs}/gu;

/**
 * A caller's text as one line of plain characters: several spaces in a row become one (but spaces that tie words stay), characters that XML forbids become
 * U+FFFD, and no sign for a direction reaches beyond its end.
 */
export function oneLine(text: string): string {
  return closeIsolates(text.replace(/[\t-\r \u0085\u2028\u2029]+/g, " ").replace(FORBIDDEN, "\ufffd"));
}

/** Escapes a text for an element or a quoted attribute of XML or HTML. */
export function escapeText(text: string): string {
  return oneLine(text).replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}
