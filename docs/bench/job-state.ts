import { FIELDS } from "./field-table.js";
import type { FieldName, ListName, Values } from "./fields.js";

/** A row of a list: as typed, by column. */
export type Row = Readonly<Record<string, string>>;

/** All that the form holds, as it was typed. */
export interface JobState {
  /** The fields that stand alone. */
  readonly values: Values;
  /** The rows of the lists. Empty rows are kept: they are room for the next entry. */
  readonly lists: Readonly<Record<ListName, readonly Row[]>>;
}

/** The names of all fields that stand alone, in the order of the form. */
export const FIELD_NAMES: readonly FieldName[] = Object.keys(FIELDS) as FieldName[];

/**
 * What a field holds before anybody touches it.
 *
 * @param name - the field
 * @returns the first choice, or nothing
 */
export function untouched(name: FieldName): string {
  return FIELDS[name].choices?.[0] ?? "";
}

/**
 * The empty form.
 *
 * @returns every choice at its first answer, everything else empty
 */
export function emptyJob(): JobState {
  const values = Object.fromEntries(FIELD_NAMES.map((name) => [name, untouched(name)]));
  return { values: values as Values, lists: { layers: [], sticks: [] } };
}

/**
 * Whether a row says nothing.
 *
 * @param row - the row
 * @returns true when all its columns are blank
 */
export function isBlank(row: Row): boolean {
  return Object.values(row).every((text) => text.trim() === "");
}
