import type { Filled } from "../core/geometry-types.js";
import { checkNumber, checkObject, refuse } from "../core/check.js";

/** What every drawing has to be told. */
export interface DrawingOptions {
  /** Writes a length in the reader's unit. */
  readonly length: (value: number) => string;
  /** Writes an angle that is given in degrees. */
  readonly angle: (degrees: number) => string;
  /** Width that the drawing aims at, from 160 to 2000 in its own units, of which letters are 11 high. Labels that need more room get it. Default: one that suits it. */
  readonly width?: number | undefined;
  /** Whether the figure's signs and letters are explained below it; default true. */
  readonly key?: boolean | undefined;
}

/** Options that were checked, and a way to write lengths within sentences. */
export interface ReadyOptions extends Filled<DrawingOptions> {
  /** Writes a length that stays in one piece where a sentence is broken into lines. */
  readonly tied: (value: number) => string;
}

/**
 * Checks a function that writes numbers.
 *
 * @param value - the function
 * @param path - its name in error texts
 * @returns the function, whose results are checked too
 * @throws {InputError} when it is no function; the function that is returned throws when no text came out
 */
export function checkFormatter(value: unknown, path: string): (value: number) => string {
  if (typeof value !== "function") return refuse("type", path, value, "a function that writes a number as text");
  return (number) => {
    const text: unknown = (value as (value: number) => unknown)(number);
    return typeof text === "string"
      ? text
      : refuse("type", path, text, "a function that writes a number as text, but its result was not one");
  };
}

/**
 * Checks the options that all drawings share.
 *
 * @param options - the options
 * @param width - the width by default
 * @returns the formatters, whose results are checked too, and the width
 * @throws {InputError} when a formatter is missing or the width is out of range
 */
export function checkDrawingOptions(options: unknown, width: number): ReadyOptions {
  const given = checkObject(options);
  const length = checkFormatter(given["length"], "length");
  return {
    length,
    // Drawn as ordinary spaces, but lines are not broken at them.
    tied: (value) => length(value).replaceAll(" ", "\u00a0"),
    angle: checkFormatter(given["angle"], "angle"),
    width: checkNumber(given["width"] ?? width, "width", 160, 2000),
    key: given["key"] !== false,
  };
}
