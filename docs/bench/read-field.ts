import type { ParseError } from "miterwright/errors";
import { tryParseAngle, tryParseLength, type LengthUnit } from "miterwright/units";
import type { FieldKind } from "./fields.js";
import type { PageWords } from "./labels/page-words.js";

/** A field that was read: what it says, or what is wrong with it. */
export type Reading = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly words: string };

/** What a field is read with. */
export interface ReadWith {
  /** Unit of lengths without one. */
  readonly unit: LengthUnit;
  /** The page's texts. */
  readonly page: PageWords;
}

function refused(words: string): Reading {
  return { ok: false, words };
}

/** A text that can't be read, and why. */
function unreadable(what: "length" | "angle", { fault }: ParseError, { errors }: PageWords): Reading {
  const reason = (errors.reasons[fault.code] as (values: typeof fault) => string)(fault);
  return refused(errors.unreadable[what]({ reason }));
}

function readLength(text: string, kind: "length" | "room", { unit, page }: ReadWith): Reading {
  const read = tryParseLength(text, unit);
  if (!read.ok) return unreadable("length", read.error, page);
  if (kind === "room" && read.value < 0) return refused(page.errors.negative);
  if (kind === "length" && read.value <= 0) return refused(page.errors.notPositive);
  return { ok: true, value: read.value };
}

/**
 * Reads the text of a field that holds a number.
 *
 * @param text - as typed, not blank
 * @param kind - what the field takes
 * @param given - unit of lengths without one, and the page's texts
 * @returns the number, lengths in that unit, or what is wrong in a sentence
 */
export function readField(text: string, kind: FieldKind, given: ReadWith): Reading {
  const { errors } = given.page;
  switch (kind) {
    case "length":
    case "room":
      return readLength(text, kind, given);
    case "angle": {
      const read = tryParseAngle(text);
      return read.ok ? read : unreadable("angle", read.error, given.page);
    }
    case "count":
      return /^\s*\d+\s*$/.test(text) ? { ok: true, value: Number(text) } : refused(errors.notCount);
    default:
      return /^\s*\d+(?:\.\d+)?\s*$/.test(text) ? { ok: true, value: Number(text) } : refused(errors.notNumber);
  }
}
