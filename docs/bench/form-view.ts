import { FIELDS, LISTS } from "./field-table.js";
import { isAsked, type ListName } from "./fields.js";
import { find, showMarkup } from "./elements.js";
import { rowMarkup } from "./field-markup.js";
import { html } from "./html.js";
import { FIELD_NAMES, type JobState, type Row } from "./job-state.js";
import { LANGUAGE } from "./language.js";
import type { FieldWords } from "./labels/field-words.js";
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
  showMarkup(find(list, HTMLOListElement), html`${shown.map((_, index) => rowMarkup(list, index, LANGUAGE.page))}`);
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

/** What a field says under an answer of another, as the form was written. */
type Said = Pick<FieldWords, "explain" | "placeholder">;

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
    if (field.otherwiseBy === undefined) continue;
    const place = find(`${name}-explain`, HTMLParagraphElement);
    const said = JSON.parse(place.dataset["said"] ?? "{}") as Readonly<Record<string, Said>>;
    const { explain, placeholder = "" } = said[values[field.otherwiseBy]] ?? said[""]!;
    place.textContent = explain;
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
  const label = document.querySelector(`label[for="${key}"]`)?.textContent ?? key;
  const [list, index, column] = key.split(".");
  if (column === undefined) return label;
  return LANGUAGE.page.lists[list as ListName].cell({ label, number: Number(index) + 1 });
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
