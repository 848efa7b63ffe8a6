import type { Formats } from "../../units/index.js";
import { checkFormatter } from "../../units/internal.js";
import { checkObject } from "../../core/check.js";
import type { CellKind } from "./table-data.js";

/** How a table's numbers are written. */
export interface TableOptions {
  /** Formatters, as `formatters` makes them; each is needed only where a column is of its kind. Numbers of no kind are by default written as they are. */
  readonly formats?: Partial<Pick<Formats, "length" | "area" | "angle" | "number">> | undefined;
}

/** The kinds of a column, in the order of error texts. */
export const CELL_KINDS: readonly CellKind[] = ["text", "number", "length", "area", "angle"];

/** How the numbers of a column are written; a formatter that is needed and missing is refused. */
export function formatterOf(formats: unknown, kind: CellKind): (value: number) => string {
  // Numbers in a column of words are rare, and nothing more is known of them.
  if (kind === "text") return String;
  const given = formats === undefined ? undefined : checkObject(formats, "formats")[kind];
  if (given === undefined && kind === "number") return String;
  return checkFormatter(given, `formats.${kind}`, kind);
}
