import { FIELDS, LISTS } from "./field-table.js";
import { isAsked, wordsOf, type FieldName, type ListName } from "./fields.js";
import { find, showMarkup } from "./elements.js";
import { rowMarkup } from "./form-markup.js";
import { html } from "./html.js";
import { FIELD_NAMES, type JobState, type Row } from "./job-state.js";
import type { FieldIssue } from "./read-fields.js";

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

const LIST_NAMES: readonly ListName[] = ["layers", "sticks"];

/** Every field on the page, those of the dry fit too. */
function controlOf(key: string): Control {
  return document.getElementById(key) as Control;
}

function rowsOn(list: ListName): NodeListOf<HTMLLIElement> {
  return find(list, HTMLOListElement).querySelectorAll<HTMLLIElement>(":scope > li");
}

/**
 * Reads what is typed.
 *
 * @returns the form's state
 */
export function readForm(): JobState {
  const values = Object.fromEntries(FIELD_NAMES.map((name) => [name, controlOf(name).value]));
  const rows = (list: ListName): Row[] =>
    Array.from(rowsOn(list), (_, index) =>
      Object.fromEntries(
        Object.keys(LISTS[list]).map((column) => [column, controlOf(`${list}.${index}.${column}`).value]),
      ),
    );
  return { values: values as JobState["values"], lists: { layers: rows("layers"), sticks: rows("sticks") } };
}

/**
 * Makes a list show rows.
 *
 * @param list - the list
 * @param rows - what they say; there is at least one, to type into
 */
export function showRows(list: ListName, rows: readonly Row[]): void {
  const shown = rows.length === 0 ? [{}] : rows;
  showMarkup(find(list, HTMLOListElement), html`${shown.map((_, index) => rowMarkup(list, index))}`);
  shown.forEach((row: Row, index) => {
    for (const column of Object.keys(LISTS[list])) controlOf(`${list}.${index}.${column}`).value = row[column] ?? "";
  });
}

/**
 * Fills the form in, and leaves open what is open.
 *
 * @param state - what its fields say
 */
export function fillIn(state: JobState): void {
  for (const name of FIELD_NAMES) controlOf(name).value = state.values[name];
  for (const list of LIST_NAMES) showRows(list, state.lists[list]);
}

/**
 * Makes the form show a job.
 *
 * @param state - the job
 */
export function showForm(state: JobState): void {
  fillIn(state);
  // What somebody filled in is not hidden from whoever opens the job.
  for (const fold of document.querySelectorAll<HTMLDetailsElement>("details.finer")) {
    fold.open = Array.from(fold.querySelectorAll<Control>("input, select, textarea")).some((control) =>
      control instanceof HTMLSelectElement ? control.selectedIndex > 0 : control.value !== "",
    );
  }
}

/**
 * Shows the fields that are asked, with the help that suits the other answers, and hides the others.
 *
 * @param values - the answers
 */
export function showAsked(values: JobState["values"]): void {
  for (const name of FIELD_NAMES) {
    const field = FIELDS[name];
    const control = controlOf(name);
    control.closest<HTMLElement>(".field")!.hidden = !isAsked(field, values);
    if (field.saidOtherwise === undefined) continue;
    const { explain, placeholder = "" } = wordsOf(field, values);
    find(`${name}-explain`, HTMLParagraphElement).textContent = explain;
    control.setAttribute("placeholder", placeholder);
  }
}

/**
 * What a field is called on the page.
 *
 * @param key - its key
 * @returns its label, with its row
 */
export function labelOf(key: string): string {
  const [list, index, column] = key.split(".");
  if (column === undefined) return FIELDS[key as FieldName].label;
  return `${LISTS[list as ListName][column]!.label} of ${list === "sticks" ? "stick" : "layer"} ${Number(index) + 1}`;
}

/**
 * Shows beside every field what is wrong with it, and nothing beside the others.
 *
 * @param issues - what is wrong
 */
export function showIssues(issues: readonly FieldIssue[]): void {
  const words = new Map<string, string>();
  for (const issue of issues) words.set(issue.field, [words.get(issue.field), issue.words].filter(Boolean).join(" "));
  for (const place of document.querySelectorAll<HTMLElement>(".field[data-field]")) {
    const key = place.dataset["field"]!;
    const said = words.get(key);
    const error = find(`${key}-error`, HTMLParagraphElement);
    const text = said ?? "";
    if (error.textContent !== text) error.textContent = text;
    error.hidden = said === undefined;
    controlOf(key).toggleAttribute("aria-invalid", said !== undefined);
    if (said === undefined) continue;
    controlOf(key).setAttribute("aria-invalid", "true");
    const fold = place.closest("details");
    if (fold !== null) fold.open = true;
  }
}
