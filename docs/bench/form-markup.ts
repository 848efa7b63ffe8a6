import { FIELDS, LISTS, STEPS } from "./field-table.js";
import type { Field, FieldName, ListName, PlacedField, Step } from "./fields.js";
import { html, type Markup } from "./html.js";
import { mostLetters } from "./job-link.js";
import { FIELD_NAMES } from "./job-state.js";
import { wordsIn } from "./words.js";

/** How a kind of field is best typed on a touch screen. */
const KEYBOARDS: Readonly<Record<string, string>> = { count: "numeric", number: "decimal" };

/** The input itself, under the key that errors and links know it by. */
function control(key: string, field: Field): Markup {
  const described = `${key}-explain ${key}-error`;
  if (field.choices !== undefined) {
    return html`<select id="${key}" name="${key}" aria-describedby="${described}">
      ${field.choices.map(({ value, label }) => html`<option value="${value}">${label}</option>`)}
    </select>`;
  }
  if (field.kind === "lines") {
    return html`<textarea
      id="${key}"
      name="${key}"
      rows="3"
      maxlength="${mostLetters(field.kind)}"
      placeholder="${field.placeholder ?? ""}"
      aria-describedby="${described}"
    ></textarea>`;
  }
  const keyboard = KEYBOARDS[field.kind] ?? "text";
  return html`<input
    id="${key}"
    name="${key}"
    type="text"
    inputmode="${keyboard}"
    maxlength="${mostLetters(field.kind)}"
    autocomplete="off"
    spellcheck="false"
    placeholder="${field.placeholder ?? ""}"
    aria-describedby="${described}"
  />`;
}

/**
 * A field with its label, its explanation and room for what is wrong with it.
 *
 * @param key - its name, or list, row and column
 * @param field - what it is
 * @returns the markup
 */
export function fieldMarkup(key: string, field: Field): Markup {
  return html`<div class="field kind-${field.kind}" data-field="${key}">
    <label for="${key}">${field.label}</label>${control(key, field)}
    <p class="error" id="${key}-error" hidden></p>
    <p class="explain" id="${key}-explain">${field.explain}</p>
  </div>`;
}

/**
 * A row of a list.
 *
 * @param list - the list
 * @param index - its place, from 0
 * @returns the markup
 */
export function rowMarkup(list: ListName, index: number): Markup {
  const what = list === "sticks" ? "stick" : "layer";
  return html`<li class="row row-${list}" data-row="${index}">
    <fieldset>
      <legend>${what} ${index + 1}</legend>
      ${Object.entries(LISTS[list]).map(([column, field]) => fieldMarkup(`${list}.${index}.${column}`, field))}<button
        type="button"
        class="quiet"
        data-remove="${list}.${index}"
      >
        Remove ${what} ${index + 1}
      </button>
    </fieldset>
  </li>`;
}

function listMarkup(list: ListName): Markup {
  const [heading, add] =
    list === "sticks" ? ["Sticks", "Add another kind of stick"] : ["What lies in the rabbet", "Add a layer"];
  return html`<div class="list">
    <h3>${heading}</h3>
    <ol id="${list}"></ol>
    <button type="button" class="quiet" data-add="${list}">${add}</button>
  </div>`;
}

/**
 * The explanation of every trade word in a text, folded away.
 *
 * @param text - the text
 * @returns the markup, `null` where there is none
 */
export function wordList(text: string): Markup | null {
  const words = wordsIn(text);
  if (words.length === 0) return null;
  return html`<details class="words">
    <summary>What the words mean</summary>
    <dl>
      ${words.map(
        ({ word, means }) =>
          html`<div>
            <dt>${word}</dt>
            <dd>${means}</dd>
          </div>`,
      )}
    </dl>
  </details>`;
}

function fieldText({ label, explain, placeholder = "", choices = [], saidOtherwise }: PlacedField): string {
  const others = Object.values(saidOtherwise?.words ?? {}).map((words) => words.explain);
  return [label, explain, placeholder, ...choices.map((choice) => choice.label), ...others].join(". ");
}

function fieldsOf(step: Step): [FieldName, PlacedField][] {
  return FIELD_NAMES.filter((name) => FIELDS[name].step === step).map((name) => [name, FIELDS[name]]);
}

function fieldGrid(fields: readonly (readonly [FieldName, PlacedField])[]): Markup {
  return html`<div class="fields">${fields.map(([name, field]) => fieldMarkup(name, field))}</div>`;
}

/** The list that belongs to a step, and whether it is one of the finer points. */
const STEP_LISTS: Readonly<Partial<Record<Step, { readonly list: ListName; readonly isFiner: boolean }>>> = {
  rack: { list: "sticks", isFiner: false },
  inside: { list: "layers", isFiner: true },
};

function stepMarkup(step: Step, question: string, hint: string): Markup {
  const fields = fieldsOf(step);
  const own = STEP_LISTS[step];
  const plain = fields.filter(([, field]) => field.finer !== true);
  const finer = fields.filter(([, field]) => field.finer === true);
  const isFolded = finer.length > 0 || own?.isFiner === true;
  const text = [hint, ...fields.map(([, field]) => fieldText(field))].join(". ");
  return html`<section class="step" aria-labelledby="step-${step}">
    <h2 id="step-${step}">${question}</h2>
    <p class="hint">${hint}</p>
    ${fieldGrid(plain)}${own?.isFiner === false ? listMarkup(own.list) : null}${
      isFolded
        ? html`<details class="finer">
            <summary>Finer points</summary>
            ${fieldGrid(finer)}${own?.isFiner === true ? listMarkup(own.list) : null}
          </details>`
        : null
    }${wordList(text)}
  </section>`;
}

/**
 * The whole form, empty.
 *
 * @returns the markup
 */
export function formMarkup(): Markup {
  return html`<div class="units">${fieldGrid(fieldsOf("units"))}</div>
    ${STEPS.map(({ step, question, hint }) => stepMarkup(step, question, hint))}`;
}

/**
 * The form of the dry fit.
 *
 * @returns the markup
 */
export function dryFitMarkup(): Markup {
  return fieldGrid(fieldsOf("dry-fit"));
}
