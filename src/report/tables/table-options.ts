import type { Formats } from "../../units/index.js";
import { checkSomeFormats } from "../../units/internal.js";
import { refuse } from "../../core/check.js";
import type { CellKind } from "./table-data.js";

/** How a table's numbers are written. */
export interface TableOptions {
  /** Formatters, as `formatters` makes them; each is needed only where a column is of its kind. Numbers of no kind are by default written as they are. */
  readonly formats?: Partial<Pick<Formats, "length" | "area" | "angle" | "number">> | undefined;
}

/** The kinds of a column, in the order of error texts. */
export const CELL_KINDS: readonly CellKind[] = ["text", "number", "length", "area", "angle"];

/** How the numbers of a column are written; what is missing is refused. */
export function formatterOf(formats: TableOptions["formats"], kind: CellKind): (value: number) => string {
  // Numbers in a column of words are rare, and nothing more is known of them.
  if (kind === "text") return String;
  const checked = formats === undefined ? {} : checkSomeFormats(formats);
  const write = checked[kind];
  if (write !== undefined) return write;
  return kind === "number"
    ? String
    : refuse("missing", `formats.${kind}`, undefined, "a function that writes a number");
}
