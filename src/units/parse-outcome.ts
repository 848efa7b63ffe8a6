import { refuse } from "../core/check.js";
import { ParseError } from "../core/parse-error.js";

/** What came of reading a text: its value, or the error that says why it has none. */
export type ParseOutcome =
  | {
      /** The text could be read. */
      readonly ok: true;
      /** Its value. */
      readonly value: number;
    }
  | {
      /** The text could not be read. */
      readonly ok: false;
      /** Where it stops making sense, and why. */
      readonly error: ParseError;
    };

/** A text, which may be empty. */
export function checkParsable(value: unknown): string {
  return typeof value === "string" ? value : refuse("type", "text", value, "a string");
}

/** Makes an outcome of reading a text. */
export function outcomeOf(read: () => number): ParseOutcome {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (error instanceof ParseError) return { ok: false, error };
    throw error;
  }
}
