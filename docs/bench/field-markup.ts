import { LISTS } from "./field-table.js";
import type { Field, ListName } from "./fields.js";
import { html, type Markup } from "./html.js";
import { mostLetters } from "./job-link.js";
import type { Word } from "./labels/dictionary.js";
import type { FieldWords } from "./labels/field-words.js";
import type { PageWords } from "./labels/page-words.js";

/** How a kind of field is best typed on a touch screen. */
const KEYBOARDS: Readonly<Record<string, string>> = { count: "numeric", number: "decimal" };

/** The input itself, under the key that errors and links know it by. */
function control(key: string, field: Field, { choices: names, placeholder = "" }: FieldWords): Markup {
  const described = `${key}-explain ${key}-error`;
  if (field.choices !== undefined) {
    return html`<select id="${key}" name="${key}" aria-describedby="${described}">
      ${field.choices.map((value) => html`<option value="${value}">${names?.[value] ?? value}</option>`)}
    </select>`;
  }
  if (field.kind === "lines") {
    return html`<textarea
      id="${key}"
      name="${key}"
      rows="3"
      maxlength="${mostLetters(field.kind)}"
      placeholder="${placeholder}"
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
    placeholder="${placeholder}"
    aria-describedby="${described}"
  />`;
}

/** What a field says under each answer of the field that it depends on, for the script that changes it; `""` for any other answer. */
function saidUnder({ explain, placeholder = "", otherwise }: FieldWords): Markup | null {
  if (otherwise === undefined) return null;
  return html` data-said="${JSON.stringify({ "": { explain, placeholder }, ...otherwise })}"`;
}

/**
 * A field with its label, its explanation and room for what is wrong with it.
 *
 * @param key - its name, or list, row and column
 * @param field - what it is
 * @param words - what it says
 * @returns the markup
 */
export function fieldMarkup(key: string, field: Field, words: FieldWords): Markup {
  return html`<div class="field kind-${field.kind}" data-field="${key}">
    <label for="${key}">${words.label}</label>${control(key, field, words)}
    <p class="error" id="${key}-error" hidden></p>
    <p class="explain" id="${key}-explain" ${saidUnder(words)}>${words.explain}</p>
  </div>`;
}

/**
 * A row of a list.
 *
 * @param list - the list
 * @param index - its place, from 0
 * @param page - the page's texts
 * @returns the markup
 */
export function rowMarkup(list: ListName, index: number, page: PageWords): Markup {
  const { row, remove, columns } = page.lists[list];
  const number = index + 1;
  return html`<li class="row row-${list}" data-row="${index}">
    <fieldset>
      <legend>${row({ number })}</legend>
      ${Object.entries(LISTS[list]).map(([column, field]) =>
        fieldMarkup(`${list}.${index}.${column}`, field, columns[column]!),
      )}<button type="button" class="quiet" data-remove="${list}.${index}">${remove({ number })}</button>
    </fieldset>
  </li>`;
}

/**
 * What trade words mean, folded away.
 *
 * @param words - the words
 * @param page - the page's texts
 * @returns the markup, `null` where there are none
 */
export function wordList(words: readonly Word[], page: PageWords): Markup | null {
  if (words.length === 0) return null;
  return html`<details class="words">
    <summary>${page.meanings}</summary>
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
