import {
  convertLength,
  formatAngle,
  formatLength,
  formatters,
  parseAngle,
  parseLength,
  type Formats,
  type LengthUnit,
} from "miterwright/units";

/** The units that a reader can choose; figures compute in millimeters. */
export const READERS = {
  mm: "millimeters",
  cm: "centimeters",
  "in-8": "inches, 1/8",
  "in-16": "inches, 1/16",
  "in-32": "inches, 1/32",
  "in-64": "inches, 1/64",
  "in-decimal": "decimal inches",
} as const;

export type ReaderName = keyof typeof READERS;

/** How numbers are written for a reader, and read again. Lengths are given in millimeters and areas in square millimeters. */
export interface Reader extends Formats {
  readonly name: ReaderName;
  /** Reads a length as typed. */
  readonly readLength: (text: string) => number;
  /** Reads an angle as typed. */
  readonly readAngle: (text: string) => number;
}

const FIVE_DIGITS = 5;

/**
 * The reader of a name.
 *
 * @param name - one of {@link READERS}
 * @returns its formatters
 */
export function readerOf(name: ReaderName): Reader {
  const unit: LengthUnit = name === "mm" || name === "cm" ? name : "in";
  const [, parts] = /^in-(\d+)$/.exec(name) ?? [];
  const decimals = { mm: 1, cm: 2, in: 3 }[unit];
  const decimal = (value: number, digits: number): string =>
    formatLength(value, "mm", { as: unit, style: "decimal", digits, label: "letters" });
  const square = convertLength(1, "mm", unit) ** 2;
  return {
    ...formatters({ unit }),
    name,
    length: (value) =>
      parts === undefined
        ? decimal(value, decimals)
        : formatLength(value, "mm", { as: "in", style: "fraction", denominator: Number(parts), label: "letters" }),
    small: (value) => decimal(value, decimals + (unit === "in" ? 0 : 1)),
    area: (value) => `${String(Number((value * square).toPrecision(FIVE_DIGITS)))} ${unit}²`,
    angle: (degrees) => formatAngle(degrees, { digits: 2 }),
    smallAngle: (degrees) => formatAngle(degrees, { digits: 3 }),
    // Through the reader's own unit, in which a number without one is meant.
    readLength: (text) => convertLength(parseLength(text, unit), unit, "mm"),
    readAngle: (text) => parseAngle(text),
  };
}
