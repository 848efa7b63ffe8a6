import type { Expected } from "miterwright/errors";

/** What an error of the library says, and of what kind it is. */
export interface Refusal {
  /** What is wrong, in one word. */
  readonly code: string;
  /** Where, as the library names it. */
  readonly path: string;
  /** The library's sentence. */
  readonly message: string;
  /** What would have been taken. */
  readonly expected: Expected;
  /** Of a text that can't be read: why. */
  readonly reason?: string;
}

/** `opening.contains.width` as a programmer reads it; beside its own field the page needs no name. */
const QUOTED: RegExp = /`([^`]+)`/g;

function unquoted(text: string): string {
  return text.replaceAll(QUOTED, (_, name: string) => name.replace(/^.*\./, ""));
}

/** What a field would have taken, in the words of the form. */
function allowed(expected: Expected, clause: string): string {
  if (expected.kind === "integer") return `a whole number from ${expected.min} to ${expected.max}`;
  if (expected.kind === "text") return "a word";
  if (expected.kind === "number" && expected.max === 1e100) {
    return expected.min > 0 ? "a positive length" : expected.min === 0 ? "zero or a positive length" : "a length";
  }
  return unquoted(clause);
}

/**
 * Says an error of the library in the words of the form, for a place beside the field that it is about.
 *
 * The library's sentences name fields as programmers do and repeat the value. Beside the field, where the text stands as it was typed, neither is needed.
 *
 * @param refusal - the error
 * @returns a sentence
 */
export function issueWords({ code, path, message, expected, reason }: Refusal): string {
  if (code === "impossible" && path === "opening") {
    return "The opening is too small for this molding and number of sides: the sides would have no length at the inside.";
  }
  const { clause } = expected;
  if (clause === null) return unquoted(message);
  return reason === undefined
    ? `This has to be ${allowed(expected, clause)}.`
    : `This can't be read as ${clause}: ${reason}.`;
}
