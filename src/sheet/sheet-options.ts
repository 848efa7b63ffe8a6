import type { DrawingOptions } from "../drawing/index.js";
import type { StockFit } from "../stock/index.js";

/** Options of {@link shopSheet}. */
export interface SheetOptions extends Pick<DrawingOptions, "length" | "angle"> {
  /** Writes a small length, such as a gap, a tolerance or what wood moves by, which a rule's marks may be too coarse for; default `length`. */
  readonly small?: (value: number) => string;
  /** How the sticks are cut up: what `fitStock` made of the plan's `job`. Default: the sheet only says how much molding is needed. */
  readonly fit?: StockFit;
  /** Heading of the sheet; default its number of sides and slope. */
  readonly title?: string;
  /** Remarks below the heading; every line becomes a paragraph. Default none. */
  readonly note?: string;
}

/** The formatters, checked. */
export type Words = Pick<DrawingOptions, "length" | "angle"> & Required<Pick<SheetOptions, "small">>;

/**
 * The formatters for sentences in which all lengths are small.
 *
 * @param words - the formatters
 * @returns the same, with lengths written finely
 */
export function finely(words: Words): Words {
  return { ...words, length: words.small };
}
