import { FIELDS, STEPS, type AskedStep } from "./field-table.js";
import type { FieldName, ListName, Step } from "./fields.js";
import { fieldMarkup } from "./field-markup.js";
import { html, type Markup } from "./html.js";
import { FIELD_NAMES } from "./job-state.js";
import type { FieldWords } from "./labels/field-words.js";
import type { FormWords } from "./labels/form-words.js";
import type { PageWords } from "./labels/page-words.js";
import { wordsIn } from "./words.js";

/** What the form is written with: its own texts, and those that the page says while it is used. */
export interface FormPen {
  /** The texts of the form. */
  readonly form: FormWords;
  /** The page's other texts. */
  readonly page: PageWords;
}

function listMarkup(list: ListName, page: PageWords): Markup {
  const { heading, add } = page.lists[list];
  return html`<div class="list">
    <h3>${heading}</h3>
    <ol id="${list}"></ol>
    <button type="button" class="quiet" data-add="${list}">${add}</button>
  </div>`;
}

/** All that a field may say, for finding the trade words in it. */
function fieldText({ label, explain, placeholder = "", choices = {}, otherwise = {} }: FieldWords): string {
  const others = Object.values(otherwise).map((words) => words.explain);
  return [label, explain, placeholder, ...Object.values(choices), ...others].join(". ");
}

function fieldsOf(step: Step): FieldName[] {
  return FIELD_NAMES.filter((name) => FIELDS[name].step === step);
}

function fieldGrid(names: readonly FieldName[], form: FormWords): Markup {
  return html`<div class="fields">${names.map((name) => fieldMarkup(name, FIELDS[name], form.fields[name]))}</div>`;
}

/** The list that belongs to a step, and whether it is one of the finer points. */
const STEP_LISTS: Readonly<Partial<Record<Step, { readonly list: ListName; readonly isFiner: boolean }>>> = {
  rack: { list: "sticks", isFiner: false },
  inside: { list: "layers", isFiner: true },
};

/** The trade words of a text, by their names. */
function wordNames(text: string, { dictionary }: FormWords): string {
  return wordsIn(text, dictionary)
    .map(({ word }) => word)
    .join("|");
}

function stepMarkup(step: AskedStep, { form, page }: FormPen): Markup {
  const { question, hint } = form.steps[step];
  const fields = fieldsOf(step);
  const own = STEP_LISTS[step];
  const plain = fields.filter((name) => FIELDS[name].finer !== true);
  const finer = fields.filter((name) => FIELDS[name].finer === true);
  const isFolded = finer.length > 0 || own?.isFiner === true;
  // Their meanings are written by the script, which has them for the cards too.
  const text = [hint, ...fields.map((name) => fieldText(form.fields[name]))].join(". ");
  return html`<section class="step" aria-labelledby="step-${step}">
    <h2 id="step-${step}">${question}</h2>
    <p class="hint">${hint}</p>
    ${fieldGrid(plain, form)}${own?.isFiner === false ? listMarkup(own.list, page) : null}${
      isFolded
        ? html`<details class="finer">
            <summary>${form.finer}</summary>
            ${fieldGrid(finer, form)}${own?.isFiner === true ? listMarkup(own.list, page) : null}
          </details>`
        : null
    }
    <div class="meaning" data-words="${wordNames(text, form)}"></div>
  </section>`;
}

/**
 * The whole form, empty.
 *
 * @param pen - what it is written with
 * @returns the markup
 */
export function formMarkup(pen: FormPen): Markup {
  return html`<div class="units">${fieldGrid(fieldsOf("units"), pen.form)}</div>
    ${STEPS.map((step) => stepMarkup(step, pen))}`;
}

/**
 * The form of the dry fit.
 *
 * @param form - the texts of the form
 * @returns the markup
 */
export function dryFitMarkup(form: FormWords): Markup {
  return fieldGrid(fieldsOf("dry-fit"), form);
}

/**
 * The meanings of all trade words, for the page's script to take what is needed from.
 *
 * @param form - the texts of the form
 * @returns the markup
 */
export function dictionaryMarkup({ dictionary }: FormWords): Markup {
  return html`<dl>
    ${dictionary.map(
      ({ word, forms = [], means }) =>
        html`<div data-forms="${forms.join("|")}">
          <dt>${word}</dt>
          <dd>${means}</dd>
        </div>`,
    )}
  </dl>`;
}
