import type { LengthUnit } from "miterwright/units";
import { FIELDS, LISTS } from "./field-table.js";
import { isAsked, type Field, type ListName, type Values } from "./fields.js";
import { FIELD_NAMES, isBlank, type JobState, type Row } from "./job-state.js";
import type { PageWords } from "./labels/page-words.js";
import { readField } from "./read-field.js";

/** Something that is wrong with a field. */
export interface FieldIssue {
  /** The field's key: its name, or list, row and column as in `sticks.0.length`. */
  readonly field: string;
  /** What is wrong, in a sentence. */
  readonly words: string;
}

/** The fields of a form, read one by one. */
export interface ReadFields {
  /** The answers, as typed. */
  readonly values: Values;
  /** The numbers of all fields that are asked, filled in and sound, by key. */
  readonly numbers: ReadonlyMap<string, number>;
  /** What is wrong with a field by itself. */
  readonly issues: readonly FieldIssue[];
  /** The fields that are empty and needed, by key. */
  readonly needed: readonly string[];
}

/** A row that says something, with its place in the form. */
export interface PlacedRow {
  /** What it says. */
  readonly row: Row;
  /** Its place in the form, blank rows counted. */
  readonly index: number;
}

/**
 * The rows of a list that say something.
 *
 * @param state - the form
 * @param list - the list
 * @returns the rows, each with its place
 */
export function filledRows(state: JobState, list: ListName): readonly PlacedRow[] {
  return state.lists[list].map((row, index) => ({ row, index })).filter(({ row }) => !isBlank(row));
}

/** Columns without which a row means nothing. */
const NEEDED_COLUMNS: readonly string[] = ["length", "thickness"];

/**
 * Reads every field that is asked. The dry fit is another question and is left out.
 *
 * @param state - the form
 * @param page - the page's texts
 * @returns the numbers, what is wrong, and what is needed
 */
export function readFields(state: JobState, page: PageWords): ReadFields {
  const { values } = state;
  const numbers = new Map<string, number>();
  const issues: FieldIssue[] = [];
  const needed: string[] = [];
  const take = (key: string, text: string, field: Field, isNeeded: boolean): void => {
    if (text.trim() === "") {
      if (isNeeded) needed.push(key);
      return;
    }
    const reading = readField(text, field.kind, { unit: values.unit as LengthUnit, page });
    if (reading.ok) numbers.set(key, reading.value);
    else issues.push({ field: key, words: reading.words });
  };
  // Half a rabbet is none: with one of its sizes the other is needed.
  const isOtherHalf = (name: string): boolean =>
    (name === "rabbetWidth" && values.rabbetDepth.trim() !== "") ||
    (name === "rabbetDepth" && values.rabbetWidth.trim() !== "");
  for (const name of FIELD_NAMES) {
    const field = FIELDS[name];
    const isNumber = !["choice", "text", "lines"].includes(field.kind);
    if (!isNumber || field.step === "dry-fit" || !isAsked(field, values)) continue;
    take(name, values[name], field, field.optional !== true || isOtherHalf(name));
  }
  for (const list of ["layers", "sticks"] as const) {
    for (const { row, index } of filledRows(state, list)) {
      for (const [column, field] of Object.entries(LISTS[list])) {
        if (field.kind === "text" || field.kind === "choice") continue;
        take(`${list}.${index}.${column}`, row[column] ?? "", field, NEEDED_COLUMNS.includes(column));
      }
    }
  }
  return { values, numbers, issues, needed };
}
