import { convertLength, formatLength, tryParseLength, type LengthUnit } from "miterwright/units";
import { FIELDS, LISTS } from "./field-table.js";
import type { FieldKind, ListName } from "./fields.js";
import { FIELD_NAMES, isBlank, type JobState, type Row } from "./job-state.js";

/** Most that a converted text may differ from what was typed, in millimeters. No rule shows it, and two decimals come back as they were. */
const SLACK: number = 0.0024;
/** The same as a share of what was typed, for gaps and other small lengths. */
const SMALL_SLACK: number = 1e-4;
/** The finest division of an inch that a rule has. */
const FINEST: number = 64;
/** Most decimals that can be written. */
const MOST_DIGITS: number = 20;
/** Above it lengths are refused, and nothing can be converted. */
const LONGEST: number = 1e100;

/** What somebody typed into a field, and what the page made of it when the unit changed. */
export interface Typed {
  /** As it was typed. */
  readonly text: string;
  /** The form's unit at that time. */
  readonly unit: LengthUnit;
  /** What the page wrote instead of it. */
  readonly written: string;
}

/** The shortest text that says a length; in inches and feet a fraction that a rule has, where there is one. */
function shortestText(value: number, unit: LengthUnit): string | null {
  const slack = Math.min(SLACK, SMALL_SLACK * Math.abs(convertLength(value, unit, "mm")));
  const says = (text: string): boolean => {
    const read = tryParseLength(text, unit);
    return read.ok && Math.abs(convertLength(read.value - value, unit, "mm")) <= slack;
  };
  // Nobody reads a rule in decimals of a foot.
  const decimals = unit === "ft" ? ({ as: "in" } as const) : ({ label: "none" } as const);
  if (unit === "ft") {
    const text = formatLength(value, unit, { style: "feet-inches", denominator: FINEST });
    if (says(text)) return text;
  }
  if (unit === "in") {
    const text = formatLength(value, unit, { style: "fraction", denominator: FINEST, label: "none" });
    if (says(text)) return text;
  }
  for (let digits = 0; digits <= MOST_DIGITS; digits += 1) {
    const text = formatLength(value, unit, { ...decimals, style: "decimal", digits });
    if (says(text)) return text;
  }
  return null;
}

/**
 * A length as typed, for another unit of the form. What names its unit itself says the same as before, and what can't be read says nothing: both are left as they
 * are.
 *
 * @param text - as typed
 * @param from - the unit it was typed under
 * @param to - the unit it will be read in
 * @returns the text that says the same length under `to`
 */
export function convertText(text: string, from: LengthUnit, to: LengthUnit): string {
  const [before, after] = [tryParseLength(text, from), tryParseLength(text, to)];
  if (!before.ok || !after.ok || before.value === 0) return text;
  const value = convertLength(before.value, from, to);
  const namesItsUnit = Math.abs(after.value - value) <= 1e-9 * Math.abs(value);
  if (namesItsUnit || !(Math.abs(value) <= LONGEST)) return text;
  return shortestText(value, to) ?? text;
}

/** Whether the costs of sticks are counted in lengths: one that is left empty is the stick's length, and the others stand beside it. */
function areStickCostsLengths(sticks: readonly Row[]): boolean {
  return sticks.some((row) => !isBlank(row) && (row["cost"] ?? "").trim() === "");
}

/**
 * The form as it has to be typed under another unit to stay the same job.
 *
 * @param state - the form, as typed under `from`
 * @param from - the unit before
 * @param to - the unit now
 * @param typed - what was typed before the page converted it, by field; kept up to date. Who changes the unit back finds it again, letter by letter
 * @returns the form for `to`
 */
export function convertJob(state: JobState, from: LengthUnit, to: LengthUnit, typed: Map<string, Typed>): JobState {
  const convert = (key: string, text: string, kind: FieldKind): string => {
    if (kind !== "length" && kind !== "room") return text;
    const last = typed.get(key);
    const source = last?.written === text ? last : { text, unit: from };
    const written = source.unit === to ? source.text : convertText(source.text, source.unit, to);
    typed.set(key, { text: source.text, unit: source.unit, written });
    return written;
  };
  const values = FIELD_NAMES.map((name) => [name, convert(name, state.values[name], FIELDS[name].kind)]);
  const stickCostsAreLengths = areStickCostsLengths(state.lists.sticks);
  const rows = (list: ListName): Row[] =>
    state.lists[list].map((row, index) => {
      const columns = Object.entries(row).map(([column, text]) => {
        const kind =
          list === "sticks" && column === "cost" && stickCostsAreLengths ? "length" : LISTS[list][column]!.kind;
        return [column, convert(`${list}.${index}.${column}`, text, kind)];
      });
      return Object.fromEntries(columns) as Row;
    });
  return {
    values: { ...(Object.fromEntries(values) as JobState["values"]), unit: to },
    lists: { layers: rows("layers"), sticks: rows("sticks") },
  };
}
