import { MAX_LENGTH, MIN_LENGTH } from "../core/check.js";
import {
  type Cursor,
  fail,
  NO_NUMBER,
  type Why,
  isNext,
  openCursor,
  peek,
  skip,
  skipSpace,
  takeRun,
} from "./cursor.js";
import { type Part, valueOf } from "./quantity-value.js";
import { readNumeral } from "./read-numeral.js";

/** How a kind of quantity is written. */
export interface Notation {
  /** What it is, with its article. */
  readonly noun: string;
  /** The units that may be written, as a list for error texts. */
  readonly units: string;
  /** Size of the unit that a word or sign names, in lower case; `undefined` when it names none. */
  readonly sizeOf: (word: string) => number | undefined;
  /** Size of the unit that a last number without one has, by that of the unit before it. */
  readonly sizeAfter: (size: number) => number | undefined;
}

/** Why a minus sign is refused. */
const MINUS: Why = ["a minus sign can only stand in front", "late-minus"];

/** Takes the name or sign of a unit, in lower case; nothing when there is none. */
function takeUnit(cursor: Cursor): string {
  if (skip(cursor, "single")) return skip(cursor, "single") ? '"' : "'";
  if (skip(cursor, "double")) return '"';
  if (skip(cursor, "degree")) return "°";
  return takeRun(cursor, "letter").toLowerCase();
}

/** Refuses a point or comma that touches the digits after it, once a unit has been read. */
function refusePoint(cursor: Cursor, kind: "point" | "comma"): void {
  if (isNext(cursor, kind) && peek(cursor, 1) === "digit") {
    fail(cursor, [
      `the ${kind} could end a part or mark decimals; write a space`,
      { code: "unclear-joint", sign: kind },
    ]);
  }
}

/** Passes over what can join two parts: the point of an abbreviation, then a comma or a hyphen. */
function skipJoint(cursor: Cursor): void {
  refusePoint(cursor, "point");
  skip(cursor, "point");
  const isParted = skipSpace(cursor);
  refusePoint(cursor, "comma");
  const isHyphen = skip(cursor, "hyphen");
  if (!isHyphen && !skip(cursor, "comma")) return;
  const joint = cursor.at - 1;
  const isLoose = skipSpace(cursor);
  if (isNext(cursor, "end")) fail(cursor, NO_NUMBER);
  if (isHyphen && isParted && !isLoose) fail(cursor, MINUS, joint);
}

/** Checks that a part can follow a larger one: in a unit that divides the larger, and too little to fill one of it. */
function checkNextPart(cursor: Cursor, last: Part, part: Part, at: { start: number; unit: number }): void {
  if (last.top != 0 || last.bottom != 1 || last.exponent !== 0) {
    fail(cursor, ["only the last part can have a fraction or decimals", "early-fraction"], at.start);
  }
  // The sizes of one system divide each other, those of two do not.
  const ratio = last.size / part.size;
  if (!(ratio > 1) || !Number.isInteger(ratio))
    fail(cursor, ["units must go down within one system", "unit-order"], at.unit);
  if (part.whole >= ratio || part.top >= part.bottom) {
    const fault = { code: "too-many-parts", limit: ratio } as const;
    fail(cursor, [`the number beside a larger unit is not below ${ratio}`, fault], at.start, "range");
  }
}

/** Why what follows a number is no unit. */
function whyNoUnit(cursor: Cursor, units: string): Why {
  switch (cursor.kind) {
    case "digit":
    case "raised":
    case "vulgar":
      return ["another number follows; a unit between them is missing", "no-unit-between"];
    case "slash":
      return ["a fraction has two whole numbers, as in 7/16", "broken-fraction"];
    case "minus":
      return MINUS;
    default:
      return [`the unit must be ${units}`, "unknown-unit"];
  }
}

/** Takes the next part, with whatever joins it to another. */
function readPart(cursor: Cursor, notation: Notation, bareSize: number, last: Part | undefined): Part {
  const start = cursor.at;
  const { whole, top, bottom, exponent } = readNumeral(cursor, last === undefined);
  skipSpace(cursor);
  const place = cursor.at;
  const isBare = isNext(cursor, "end");
  // Before the unit is taken, since what stands here in its place says why there is none.
  const why: Why = isBare ? ["the last number needs a unit", "no-unit"] : whyNoUnit(cursor, notation.units);
  const size = !isBare ? notation.sizeOf(takeUnit(cursor)) : last ? notation.sizeAfter(last.size) : bareSize;
  if (size === undefined) return fail(cursor, why, place);
  const part: Part = { whole, top, bottom, exponent, size };
  if (last) checkNextPart(cursor, last, part, { start, unit: place });
  skipJoint(cursor);
  return part;
}

/**
 * Reads a quantity from a whole text, and rounds it once. `size` is that of the unit of a bare number and of the result, which is 0 or 1e-100 to 1e100 in size,
 * never -0.
 */
export function readQuantity(text: string, notation: Notation, size: number): number {
  const cursor = openCursor(text, notation.noun);
  skipSpace(cursor);
  if (isNext(cursor, "end")) fail(cursor, NO_NUMBER, cursor.at, "missing");
  const isNegative = skip(cursor, "hyphen") || skip(cursor, "minus");
  if (!isNegative) skip(cursor, "plus");
  skipSpace(cursor);
  const start = cursor.at;
  const parts: Part[] = [];
  do parts.push(readPart(cursor, notation, size, parts.at(-1)));
  while (!isNext(cursor, "end"));
  const value = valueOf(parts, size);
  if (value !== 0 && !(value >= MIN_LENGTH && value <= MAX_LENGTH)) {
    fail(cursor, ["the value must be 0 or from 1e-100 to 1e100 in size", "out-of-range"], start, "range");
  }
  return (isNegative ? -value : value) + 0;
}
