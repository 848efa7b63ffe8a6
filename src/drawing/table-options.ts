import { checkFormatter } from "./drawing-options.js";
import type { CellKind } from "./table-data.js";

/** How a table's numbers are written. Each is needed only where a column is of its kind. */
export interface TableOptions {
  /** Writes a length in the reader's unit. */
  readonly length?: ((value: number) => string) | undefined;
  /** Writes an area in the square of the reader's unit. */
  readonly area?: ((value: number) => string) | undefined;
  /** Writes an angle that is given in degrees. */
  readonly angle?: ((degrees: number) => string) | undefined;
  /** Writes any other number, such as a number of sides; default the shortest text that stands for it. */
  readonly number?: ((value: number) => string) | undefined;
}

/** The kinds of a column, in the order of error texts. */
export const CELL_KINDS: readonly CellKind[] = ["text", "number", "length", "area", "angle"];

/**
 * How the numbers of a column are written.
 *
 * @param options - the formatters, unchecked
 * @param kind - the column's kind
 * @returns the formatter, whose results are checked
 * @throws {InputError} when it is missing or no function
 */
export function formatterOf(options: Readonly<Record<string, unknown>>, kind: CellKind): (value: number) => string {
  // Numbers in a column of words are rare, and nothing more is known of them.
  if (kind === "text") return String;
  if (kind === "number" && options["number"] === undefined) return String;
  return checkFormatter(options[kind], kind);
}
