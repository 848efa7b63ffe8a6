import type { LengthUnit } from "miterwright/errors";

/** Texts that have caught, or would catch, a careless reader: the exact value in the unit, or `null` where the text is refused. */
export const HARD_TEXTS: readonly {
  readonly text: string;
  readonly unit: LengthUnit;
  readonly value: number | null;
  readonly why: string;
}[] = [
  { text: '5-7/16"', unit: "in", value: 5.4375, why: "a hyphen that joins, not one that subtracts" },
  { text: "-5-7/16", unit: "in", value: -5.4375, why: "one hyphen that negates and one that joins" },
  { text: "3⅞ in", unit: "in", value: 3.875, why: "a vulgar fraction right after a whole number" },
  { text: "1' 2 1/2\"", unit: "in", value: 14.5, why: "feet, inches and a fraction" },
  { text: "2ft 3in", unit: "ft", value: 2.25, why: "letters without spaces" },
  { text: "1,5 mm", unit: "mm", value: 1.5, why: "a decimal comma" },
  { text: "1,234", unit: "mm", value: null, why: "a decimal comma or a thousands separator: nobody can tell" },
  { text: "0.1 in", unit: "mm", value: 2.54, why: "one rounding in all: 0.1 x 25.4 in doubles is 2.54 only by luck" },
  { text: "1’ 2½”", unit: "in", value: 14.5, why: "curly quotes as an editor writes them" },
  { text: "5 17/16", unit: "in", value: null, why: "an improper fraction after a whole number is a slip" },
  { text: "1' 12\"", unit: "in", value: null, why: "twelve inches are a foot: a slip" },
  { text: "1/0", unit: "in", value: null, why: "no number at all" },
  { text: "", unit: "mm", value: null, why: "nothing typed" },
  { text: "−3 mm", unit: "mm", value: -3, why: "the minus of typesetters" },
  { text: "1e101 mm", unit: "mm", value: null, why: "beyond the lengths that can be computed with" },
];
