import { tryParseAngle, tryParseLength, type LengthUnit } from "miterwright/units";
import type { FieldKind } from "./fields.js";
import { issueWords } from "./issue-words.js";

/** A field that was read: what it says, or what is wrong with it. */
export type Reading = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly words: string };

function refused(words: string): Reading {
  return { ok: false, words };
}

function readLength(text: string, unit: LengthUnit, least: "above zero" | "zero"): Reading {
  const read = tryParseLength(text, unit);
  if (!read.ok) return refused(issueWords(read.error));
  if (read.value < 0 || (read.value === 0 && least === "above zero")) {
    return refused(least === "zero" ? "This can't be less than zero." : "This has to be more than zero.");
  }
  return { ok: true, value: read.value };
}

/**
 * Reads the text of a field that holds a number.
 *
 * @param text - as typed, not blank
 * @param kind - what the field takes
 * @param unit - unit of lengths without one
 * @returns the number, lengths in `unit`, or what is wrong in a sentence
 */
export function readField(text: string, kind: FieldKind, unit: LengthUnit): Reading {
  switch (kind) {
    case "length":
      return readLength(text, unit, "above zero");
    case "room":
      return readLength(text, unit, "zero");
    case "angle": {
      const read = tryParseAngle(text);
      return read.ok ? read : refused(issueWords(read.error));
    }
    case "count":
      return /^\s*\d+\s*$/.test(text)
        ? { ok: true, value: Number(text) }
        : refused("This is counted in whole numbers, such as 6.");
    default:
      return /^\s*\d+(?:\.\d+)?\s*$/.test(text)
        ? { ok: true, value: Number(text) }
        : refused("This has to be a plain number, such as 12 or 12.50.");
  }
}
