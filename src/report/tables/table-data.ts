/** What a column holds: text, which stands at the left, or numbers of a kind, which stand at the right. */
export type CellKind = "text" | "number" | "length" | "area" | "angle";

/** A column of a table. */
export interface TableColumn {
  /** Its head. */
  readonly label: string;
  /** What its cells are. */
  readonly kind: CellKind;
}

/** What a table holds: plain data, which survives JSON. */
export interface TableData {
  /** What it shows, in a few words. */
  readonly caption: string;
  /** Its columns, at least one; the cells of the first head their rows. */
  readonly columns: readonly TableColumn[];
  /** Its rows, each with one value a column: numbers as they were given, and texts. */
  readonly rows: readonly (readonly (number | string)[])[];
  /** The same as they are written: one line each, with no space at either end, not yet escaped. */
  readonly cells: readonly (readonly string[])[];
}
