import { formatAngle, formatters, type Formats, type LengthUnit } from "miterwright/units";
import type { Words } from "miterwright/words";
import type { Values } from "./fields.js";
import type { PageWords } from "./labels/page-words.js";
import { LANGUAGE, type Language } from "./language.js";

/** What the page writes with: its own texts, those of the library, and what writes numbers. */
export interface Pen {
  /** The page's own texts. */
  readonly page: PageWords;
  /** What is told of a plan. */
  readonly words: Words;
  /** How numbers are written, on the page and on its sheets. */
  readonly formats: Formats;
  /** The same with angles to a thousandth of a degree, for corrections: a hundredth at every cut of a ring would be seen. */
  readonly fine: Formats;
}

/** Parts of a millimeter, of a centimeter, and of an inch that each fineness counts. */
const PARTS: Readonly<Record<string, { readonly mm: number; readonly cm: number; readonly in: number }>> = {
  coarse: { mm: 1, cm: 10, in: 16 },
  usual: { mm: 2, cm: 20, in: 32 },
  fine: { mm: 10, cm: 100, in: 64 },
};

/**
 * How a job writes its numbers.
 *
 * @param values - the form's answers; only `unit` and `fineness` are read
 * @param decimalMarker - what stands between a number and its decimals; default the page's own
 * @returns the formatters
 */
export function writersOf(
  values: Pick<Values, "unit" | "fineness">,
  decimalMarker: Language["decimalMarker"] = LANGUAGE.decimalMarker,
): Formats {
  const unit = values.unit as LengthUnit;
  const parts = PARTS[values.fineness] ?? PARTS["usual"]!;
  const denominator = unit === "cm" ? parts.cm : unit === "mm" ? parts.mm : parts.in;
  return formatters({ unit, denominator, decimalMarker });
}

/**
 * What a job is written with.
 *
 * @param values - the form's answers; only `unit` and `fineness` are read
 * @param language - what the page is written in; default its own language
 * @returns the pen
 */
export function penOf(values: Pick<Values, "unit" | "fineness">, language: Language = LANGUAGE): Pen {
  const { page, words, decimalMarker } = language;
  const formats = writersOf(values, decimalMarker);
  const fine = { ...formats, angle: (degrees: number): string => formatAngle(degrees, { digits: 3, decimalMarker }) };
  return { page, words, formats, fine };
}
