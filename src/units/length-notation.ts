import type { Notation } from "./read-quantity.js";
import { UNIT_SIZES } from "./unit-sizes.js";

/** The unit of length that a word or sign names. */
function sizeOf(word: string): number | undefined {
  switch (word) {
    case "mm":
    case "millimeter":
    case "millimeters":
    case "millimetre":
    case "millimetres":
      return UNIT_SIZES.mm;
    case "cm":
    case "centimeter":
    case "centimeters":
    case "centimetre":
    case "centimetres":
      return UNIT_SIZES.cm;
    case "m":
    case "meter":
    case "meters":
    case "metre":
    case "metres":
      return UNIT_SIZES.m;
    case '"':
    case "in":
    case "inch":
    case "inches":
      return UNIT_SIZES.in;
    case "'":
    case "ft":
    case "foot":
    case "feet":
      return UNIT_SIZES.ft;
    default:
      return undefined;
  }
}

/** How lengths are written. */
export const LENGTH_NOTATION: Notation = {
  noun: "a length",
  units: "mm, cm, m, in or ft",
  sizeOf,
  // `1' 2` is a foot and 2 inches. But the 2 of `1 m 2` could be centimeters, millimeters or tenths.
  sizeAfter: (size) => (size === UNIT_SIZES.ft ? UNIT_SIZES.in : undefined),
};
