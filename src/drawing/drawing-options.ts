import { checkNumber, checkObject } from "../core/check.js";
import type { Formats } from "../units/index.js";
import type { TellOptions, Words } from "../words/index.js";
import { checkTellOptions } from "../words/internal.js";

/** What every drawing has to be told. */
export interface DrawingOptions extends TellOptions {
  /** Width that the drawing aims at, from 160 to 2000 in its own units, of which letters are 11 high. Labels that need more room get it. Default: one that suits it. */
  readonly width?: number | undefined;
  /** Whether the figure's signs and letters are explained below it; default true. */
  readonly key?: boolean | undefined;
}

/** Options that were checked. */
export interface ReadyOptions extends Pick<Formats, "length" | "angle"> {
  readonly formats: Formats;
  readonly words: Words | undefined;
  readonly width: number;
  readonly key: boolean;
}

/** Checks the options that all drawings share. */
export function checkDrawingOptions(options: unknown, width: number): ReadyOptions {
  const { formats, words } = checkTellOptions(options);
  const given = checkObject(options);
  return {
    formats,
    words,
    // What formatters write stays on one line: it is drawn with ordinary spaces, but lines are not broken at them.
    length: formats.length,
    angle: formats.angle,
    width: checkNumber(given["width"] ?? width, "width", 160, 2000),
    key: given["key"] !== false,
  };
}
