import { checkText } from "../../core/check.js";
import { oneLine } from "../../drawing/internal.js";
import type { CellKind, TableColumn, TableData } from "./table-data.js";
import { makeTable, type Table } from "./table.js";

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

/** A text as a cell holds it: on one line. */
export function tidy(text: string): string {
  return oneLine(text).trim();
}

/** A caption or a head of the caller. */
export function checkLine(value: unknown, path: string): string {
  return checkText(typeof value === "string" ? tidy(value) : value, path);
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
    cells: rows.map((row) => row.map((cell) => tidy(typeof cell === "string" ? cell : cell.text))),
  };
}

/** A table that shows itself, with the caller's caption where there is one. */
export function captioned(table: TableData, caption: unknown): Table {
  return makeTable({ ...table, caption: caption === undefined ? table.caption : checkLine(caption, "caption") });
}
