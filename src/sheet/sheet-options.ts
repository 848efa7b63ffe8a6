import type { DrawingOptions } from "../drawing/index.js";
import type { StockFit } from "../stock/index.js";

/** Options of {@link shopSheet}. */
export interface SheetOptions extends Pick<DrawingOptions, "length" | "angle"> {
  /** Writes a small length, such as a gap, a tolerance or what wood moves by, for which the graduations of a rule may be too coarse; default `length`. */
  readonly small?: ((value: number) => string) | undefined;
  /** Writes a small angle in degrees, such as a tolerance, that `angle` would write as none; default its first digit that is not 0, with a point and a degree sign. */
  readonly smallAngle?: ((degrees: number) => string) | undefined;
  /** Writes a mass in kilograms; default three figures in kilograms. */
  readonly mass?: ((kilograms: number) => string) | undefined;
  /** Writes a force in newtons; default three figures in newtons. */
  readonly force?: ((newtons: number) => string) | undefined;
  /** How the sticks are cut up: what `fitStock` made of the plan's stock job. Default: the sheet only says how much molding is needed. */
  readonly fit?: StockFit | undefined;
  /** Heading of the sheet; default its number of sides and slope. */
  readonly title?: string | undefined;
  /** Remarks below the heading; every line becomes a paragraph. Default none. */
  readonly note?: string | undefined;
}

/** The formatters, checked. */
export type Words = Pick<SheetOptions, "length" | "angle" | "smallAngle" | "mass" | "force"> & {
  /** Writes a small length. */
  readonly small: (value: number) => string;
};

/** An angle down to its first digit that is not 0: the sheet's way where the caller has none. */
function downToItsDigit(degrees: number): string {
  return `${degrees.toFixed(Math.max(0, Math.ceil(-Math.log10(Math.abs(degrees)))))}°`;
}

/** Angles under a millionth of a degree are none. */
const LEAST: number = 1e-6;

/**
 * The formatters for sentences in which lengths and angles may be small.
 *
 * @param words - the formatters
 * @returns the same, with lengths written finely, and finely too an angle that would come out as none
 */
export function finely(words: Words): Words {
  const { smallAngle = downToItsDigit } = words;
  const angle = (degrees: number): string => {
    const text = words.angle(degrees);
    return Math.abs(degrees) < LEAST || text !== words.angle(0) ? text : smallAngle(degrees);
  };
  return { ...words, length: words.small, angle };
}
