import { checkArray, checkRange, checkObject, checkWord, refuse, reject } from "../../core/check.js";
import { checkFormatter } from "../../units/internal.js";
import { checkLine, tidy } from "./plain-table.js";
import type { CellKind } from "./table-data.js";
import { makeTable, type Table } from "./table.js";
import { CELL_KINDS, formatterOf, type TableOptions } from "./table-options.js";

/** A column of a table to write. */
export interface ColumnToWrite {
  /** Its head; not empty. */
  readonly label: string;
  /** What its cells are, which says how numbers are written and on which side they stand; default `"text"`. */
  readonly kind?: CellKind | undefined;
  /** Writes the numbers of this column; default what the options say for its kind. */
  readonly format?: ((value: number) => string) | undefined;
}

/** A table to write. One that was written before, or read back from JSON, is as good. */
export interface TableToWrite {
  /** What it shows, in a few words; not empty. */
  readonly caption: string;
  /** Its columns, at least one. */
  readonly columns: readonly ColumnToWrite[];
  /** Its rows, each with one finite number or text a column. */
  readonly rows: readonly (readonly (number | string)[])[];
}

/** A column that was checked. */
interface ReadyColumn {
  readonly label: string;
  readonly kind: CellKind;
  readonly write: (value: number) => string;
}

function readColumn(value: unknown, path: string, formats: unknown): ReadyColumn {
  const given = checkObject(value, path);
  const kind = checkWord(given["kind"] ?? "text", `${path}.kind`, CELL_KINDS);
  const { format } = given;
  return {
    label: checkLine(given["label"], `${path}.label`),
    kind,
    write: format === undefined ? formatterOf(formats, kind) : checkFormatter(format, `${path}.format`, "number"),
  };
}

function readCell(value: unknown, path: string): number | string {
  const expected = "a finite number or a text";
  if (typeof value === "number")
    return checkRange(value, path, { min: -Number.MAX_VALUE, max: Number.MAX_VALUE, what: expected });
  return typeof value === "string" ? value : refuse("type", path, value, expected);
}

function readRow(value: unknown, path: string, width: number): (number | string)[] {
  const row = checkArray(value, path, "an array of cells");
  if (row.length === width) return row.map((cell, index) => readCell(cell, `${path}[${index}]`));
  const message = `Expected \`${path}\` to have as many cells as there are columns, ${width}, got ${row.length}`;
  return reject("conflict", path, value, message);
}

/**
 * Makes a table that shows itself in notebooks, and writes itself as HTML, Markdown and plain text.
 *
 * Numbers are written by the formatter of their column's kind and stand at the right; texts are shown as they are, whatever they hold, on one line. The cells of
 * the first column head their rows.
 *
 * @param table - caption, columns, and rows of finite numbers and texts
 * @param options - formatters; needed are those whose kind a column has
 * @returns the frozen table
 * @throws {InputError} when a caption, head, kind or cell is not what it should be, a row has more or fewer cells than there are columns, or a formatter is
 * missing or writes no text
 * @example
 * ```ts
 * import { tabulate } from "miterwright/report";
 *
 * const table = tabulate(
 *   {
 *     caption: "Shelves of the tide hut",
 *     columns: [{ label: "shelf" }, { label: "width", kind: "length" }],
 *     rows: [["upper", 640], ["lower", 1280]],
 *   },
 *   { formats: { length: (value) => `${value} mm` } },
 * );
 * table.toMarkdown().split("\n").slice(2);
 * //=> ["| shelf | width |", "| :--- | ---: |", "| upper | 640 mm |", "| lower | 1280 mm |"]
 * table.rows[1]; //=> ["lower", 1280]
 * ```
 * @see GitHub Flavored Markdown Spec 0.29, section 4.10, tables
 */
export function tabulate(table: TableToWrite, options: TableOptions = {}): Table {
  const given = checkObject(table, "table");
  const { formats } = checkObject(options);
  const caption = checkLine(given["caption"], "caption");
  const list = checkArray(given["columns"], "columns", "an array of columns");
  if (list.length === 0) return refuse("range", "columns", list, "an array of one column or more");
  const columns = list.map((column, index) => readColumn(column, `columns[${index}]`, formats));
  const rows = checkArray(given["rows"], "rows", "an array of rows").map((row, index) =>
    readRow(row, `rows[${index}]`, columns.length),
  );
  const write = (cell: number | string, index: number): string =>
    tidy(typeof cell === "number" ? columns[index]!.write(cell) : cell);
  return makeTable({ caption, columns, rows, cells: rows.map((row) => row.map(write)) });
}
