import type { CellKind, TableColumn, TableData } from "./table-data.js";

/** A cell: a text, or a number and how it is written. */
export type Cell = string | { readonly value: number; readonly text: string };

/** A number and how it is written. */
export function written(value: number, write: (value: number) => string): Cell {
  return { value, text: write(value) };
}

/** A column of a kind. */
export function column(label: string, kind: CellKind = "text"): TableColumn {
  return { label, kind };
}

/** A table whose cells are written already. */
export function plainTable(
  caption: string,
  columns: readonly TableColumn[],
  rows: readonly (readonly Cell[])[],
): TableData {
  return {
    caption,
    columns,
    rows: rows.map((row) => row.map((cell) => (typeof cell === "string" ? cell : cell.value))),
    cells: rows.map((row) => row.map((cell) => (typeof cell === "string" ? cell : cell.text))),
  };
}
