import { FIELDS, LISTS } from "./field-table.js";
import type { Field, FieldKind, FieldName, ListName } from "./fields.js";
import type { OpenedWords } from "./labels/opened-words.js";
import { emptyJob, FIELD_NAMES, isBlank, untouched, type JobState, type Row } from "./job-state.js";

/** The version of the form that links and files are written in. A change that old ones can't be read by raises it. */
export const JOB_VERSION: number = 1;

/** A job that was read from a link or a file: the job and what was left out of it, or why it can't be read. */
export type OpenedJob =
  | { readonly ok: true; readonly state: JobState; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly why: string };

/** Most rows of a list that a link or a file may have. */
export const MOST_ROWS: number = 500;

/**
 * Most letters that a field takes.
 *
 * @param kind - the field's kind
 * @returns a number that no job needs
 */
export function mostLetters(kind: FieldKind): number {
  return kind === "lines" ? 10_000 : 1000;
}

/** Most names that are said of what was left out, and most letters of each. */
const MOST_SAID = { names: 5, letters: 40 } as const;

/**
 * Says what was left out of a job. A link can hold anything, so that no more of it is repeated than is needed to find it.
 *
 * @param leftOut - the names
 * @param words - what is said of links and files
 * @returns a sentence; empty where nothing was left out
 */
export function leftOutWords(leftOut: readonly string[], words: OpenedWords): string {
  if (leftOut.length === 0) return "";
  const names = leftOut.slice(0, MOST_SAID.names).map((name) => {
    const plain = name.slice(0, MOST_SAID.letters).replace(/[^\w.[\] -]/g, "?");
    return name.length > MOST_SAID.letters ? `${plain}…` : plain;
  });
  return words.leftOut({ names, more: leftOut.length - names.length });
}

/**
 * A job as the fragment of a link, without its `#`. What nobody touched is left out.
 *
 * @param state - the job
 * @returns the fragment; empty for an empty job
 */
export function jobToFragment(state: JobState): string {
  const parts = new URLSearchParams();
  for (const name of FIELD_NAMES) {
    if (state.values[name] !== untouched(name)) parts.set(name, state.values[name]);
  }
  for (const list of ["layers", "sticks"] as const) {
    state.lists[list]
      .filter((row) => !isBlank(row))
      .forEach((row, index) => {
        for (const column of Object.keys(LISTS[list])) {
          const text = row[column] ?? "";
          if (text !== "") parts.set(`${list}.${index}.${column}`, text);
        }
      });
  }
  const written = parts.toString();
  return written === "" ? "" : `v=${JOB_VERSION}&${written}`;
}

/**
 * Says why a version can't be read.
 *
 * @param what - the link or the file
 * @param version - what it says its version is
 * @param words - what is said of links and files
 * @returns a sentence, or `null` when it can
 */
export function versionTrouble(what: "link" | "file", version: unknown, words: OpenedWords): string | null {
  if (version === JOB_VERSION || version === String(JOB_VERSION)) return null;
  const number = typeof version === "string" && /^\d+$/.test(version) ? Number(version) : version;
  if (typeof number === "number" && Number.isInteger(number) && number > JOB_VERSION) {
    return words.newer({ what, version: number, known: JOB_VERSION });
  }
  return words.noVersion({ what, known: JOB_VERSION });
}

/**
 * Whether a field can hold a text: choices take none but their own answers, and no field takes one that is too long.
 *
 * @param field - the field, or the column of a list
 * @param text - the text
 * @returns true when it can
 */
export function canHold({ choices, kind }: Field, text: string): boolean {
  return choices === undefined ? text.length <= mostLetters(kind) : choices.includes(text);
}

/**
 * Whether a text is the name of a field.
 *
 * @param name - the text
 * @returns true when it is
 */
export function isFieldName(name: string): name is FieldName {
  return Object.hasOwn(FIELDS, name);
}

/**
 * Reads a job from the fragment of a link.
 *
 * @param fragment - with or without its `#`
 * @param words - what is said of links and files
 * @returns the job, or why it can't be read
 */
export function jobFromFragment(fragment: string, words: OpenedWords): OpenedJob {
  const parts = new URLSearchParams(fragment.replace(/^#/, ""));
  if (parts.size === 0) return { ok: true, state: emptyJob(), leftOut: [] };
  const why = versionTrouble("link", parts.get("v"), words);
  if (why !== null) return { ok: false, why };
  const { values } = emptyJob();
  const written: Record<string, string> = { ...values };
  const lists: Record<ListName, Record<string, string>[]> = { layers: [], sticks: [] };
  const leftOut: string[] = [];
  for (const [key, text] of parts) {
    if (key === "v") continue;
    const row = /^(layers|sticks)\.(\d{1,3})\.(\w+)$/.exec(key);
    const list = row === null ? null : (row[1] as ListName);
    const column = list === null || !Object.hasOwn(LISTS[list], row![3]!) ? undefined : LISTS[list][row![3]!];
    if (list !== null && Number(row![2]) < MOST_ROWS && column !== undefined && canHold(column, text)) {
      (lists[list][Number(row![2])] ??= {})[row![3]!] = text;
    } else if (isFieldName(key) && canHold(FIELDS[key], text)) {
      written[key] = text;
    } else {
      leftOut.push(key);
    }
  }
  const rows = (list: ListName): Row[] =>
    Array.from(lists[list], (row) => row as Row | undefined).filter((row) => row !== undefined);
  return {
    ok: true,
    state: { values: written as JobState["values"], lists: { layers: rows("layers"), sticks: rows("sticks") } },
    leftOut,
  };
}
