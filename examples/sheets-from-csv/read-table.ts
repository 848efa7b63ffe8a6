/**
 * A CSV file as rows of named fields. A row that is no row is reported and left out; the others stand.
 */
import { parse } from "csv-parse/sync";

/** A row of a table. */
export interface TableRow {
  /** Its number as a spreadsheet shows it; the names of the columns are in row 1. */
  readonly row: number;
  /** Its fields by their columns' names, without blanks around them. */
  readonly fields: Readonly<Record<string, string>>;
}

/** Something wrong with a row. */
export interface RowIssue {
  /** The row's number. */
  readonly row: number;
  /** The column, where it is about a single field. */
  readonly field?: string;
  /** What is wrong. */
  readonly sentence: string;
}

/** A table, and what was wrong with it. */
export interface Table {
  readonly rows: readonly TableRow[];
  readonly issues: readonly RowIssue[];
}

/**
 * Reads a table.
 *
 * @param text - the file, as RFC 4180 describes it; a byte order mark, lines that end in LF and blank lines are taken too
 * @param columns - the columns that it must have, in any order
 * @returns its rows, and what was wrong with the others
 */
export function readTable(text: string, columns: readonly string[]): Table {
  const issues: RowIssue[] = [];
  let count = 0;
  const numbered: (readonly [row: number, cells: readonly string[]])[] = [];
  parse(text, {
    bom: true,
    relax_column_count: true,
    // An inch mark that nobody put between quotes is an inch mark.
    relax_quotes: true,
    skip_records_with_error: true,
    on_record: (record: string[]) => {
      count += 1;
      const cells = record.map((cell) => cell.trim());
      if (cells.some((cell) => cell !== "")) numbered.push([count, cells]);
      return null;
    },
    on_skip: (error) => {
      count += 1;
      issues.push({ row: count, sentence: `cannot be read: ${error?.message ?? "unknown"}` });
    },
  });
  const [[top, names] = [1, []], ...others] = numbered;
  const missing = columns.filter((column) => !names.includes(column));
  const strange = names.filter((name, index) => !columns.includes(name) || names.indexOf(name) !== index);
  for (const field of missing) issues.push({ row: top, field, sentence: "this column is missing" });
  for (const field of strange)
    issues.push({ row: top, field, sentence: "this column is not known, or is there twice" });
  if (missing.length + strange.length > 0) return { rows: [], issues };

  const rows: TableRow[] = [];
  for (const [row, cells] of others) {
    if (cells.length === names.length)
      rows.push({ row, fields: Object.fromEntries(names.map((name, i) => [name, cells[i]!])) });
    else issues.push({ row, sentence: `has ${cells.length} fields where the first row has ${names.length}` });
  }
  return { rows, issues };
}
