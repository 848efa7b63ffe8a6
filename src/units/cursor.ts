import { describeValue } from "../core/check.js";
import type { InputErrorCode } from "../core/input-error.js";
import { ParseError, type ParseFault } from "../core/parse-error.js";
import { type CharacterKind, kindOf } from "./character-kind.js";

/** Where a reader stands in a text. It only moves forward, so that reading takes time in proportion to the text. */
export interface Cursor {
  /** The text. */
  readonly text: string;
  /** What the text should be, with its article, for error texts. */
  readonly noun: string;
  /** Index of the next character. */
  at: number;
  /** What the next character is. */
  kind: CharacterKind;
}

/** Most digits that a number may have: more than any measure needs, and few enough for exact arithmetic at once. */
const MOST_DIGITS = 1000;

/** Why a text makes no sense: as a clause, and as data. A fault without values is given by its code. */
export type Why = readonly [reason: string, fault: ParseFault | PlainFault];

/** A fault that has no values. */
type PlainFault = Exclude<
  ParseFault,
  { readonly limit: number } | { readonly thousands: string } | { readonly sign: string }
>["code"];

/** Why a text without a number is refused. */
export const NO_NUMBER: Why = ["a number is missing", "no-number"];

/** Throws the error that says where the text stops making sense, and why. */
export function fail(cursor: Cursor, why: Why, position: number = cursor.at, code: InputErrorCode = "syntax"): never {
  const { text, noun } = cursor;
  const [reason, fault] = why;
  throw new ParseError({
    code,
    path: "text",
    value: text,
    // People count from 1.
    message: `Expected \`text\` to be ${noun}, got ${describeValue(text)}: at character ${position + 1}, ${reason}`,
    expected: { clause: noun, kind: "other" },
    position,
    reason,
    fault: typeof fault === "string" ? { code: fault } : fault,
  });
}

/** A reader at the start of a text. */
export function openCursor(text: string, noun: string): Cursor {
  return { text, noun, at: 0, kind: kindOf(text.charCodeAt(0)) };
}

/** Whether the next character is of a kind. */
export function isNext(cursor: Cursor, kind: CharacterKind): boolean {
  return cursor.kind === kind;
}

/** What a character after the next one is. */
export function peek(cursor: Cursor, ahead: number): CharacterKind {
  return kindOf(cursor.text.charCodeAt(cursor.at + ahead));
}

/** Passes over the next character. */
export function advance(cursor: Cursor): void {
  cursor.kind = kindOf(cursor.text.charCodeAt(++cursor.at));
}

/** Passes over the next character, if it is of a kind. */
export function skip(cursor: Cursor, kind: CharacterKind): boolean {
  if (!isNext(cursor, kind)) return false;
  advance(cursor);
  return true;
}

/** Passes over spaces. */
export function skipSpace(cursor: Cursor): boolean {
  const start = cursor.at;
  while (isNext(cursor, "space")) advance(cursor);
  return cursor.at > start;
}

/** Takes a run of characters of one kind. */
export function takeRun(cursor: Cursor, kind: CharacterKind): string {
  const start = cursor.at;
  while (isNext(cursor, kind)) advance(cursor);
  return cursor.text.slice(start, cursor.at);
}

/** Takes a run of digits of one kind. */
export function takeDigits(cursor: Cursor, kind: "digit" | "raised" | "lowered" = "digit"): string {
  const start = cursor.at;
  const digits = takeRun(cursor, kind);
  if (digits.length > MOST_DIGITS) {
    const fault = { code: "too-many-digits", limit: MOST_DIGITS } as const;
    fail(cursor, [`a number has more than ${MOST_DIGITS} digits`, fault], start + MOST_DIGITS, "range");
  }
  // The compatibility form of ⁷ and ₇ is 7.
  return kind === "digit" ? digits : digits.normalize("NFKC");
}
