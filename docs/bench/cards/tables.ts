import { html, type Markup, type Part } from "../html.js";

/** From so many columns on, a narrow page shows a row as a list. */
const MANY_COLUMNS: number = 5;

/**
 * A table whose first column heads its rows. It scrolls by itself where the page is narrow; one of many columns shows each row as a list there, whose roles tell
 * programs that read the page aloud that it is a table all the same.
 *
 * @param caption - what it shows
 * @param heads - the heads of its columns
 * @param rows - its rows
 * @returns the markup
 */
export function table(caption: string, heads: readonly string[], rows: readonly (readonly Part[])[]): Markup {
  const body = rows.map(
    ([first = null, ...cells]) =>
      html`<tr role="row">
        <th scope="row" role="rowheader" data-head="${heads[0] ?? ""}">${first}</th>
        ${cells.map((cell, index) => html`<td role="cell" data-head="${heads[index + 1] ?? ""}">${cell}</td>`)}
      </tr>`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${caption}">
    <table role="table" class="${heads.length < MANY_COLUMNS ? "few" : "many"}">
      <caption>
        ${caption}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          ${heads.map((head) => html`<th scope="col" role="columnheader">${head}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${body}
      </tbody>
    </table>
  </div>`;
}

/**
 * A list of sentences.
 *
 * @param items - the sentences
 * @returns the markup
 */
export function bullets(items: readonly Part[]): Markup {
  return html`<ul>
    ${items.map((item) => html`<li>${item}</li>`)}
  </ul>`;
}

/**
 * A list of names and what they stand for.
 *
 * @param entries - the names and values
 * @returns the markup
 */
export function facts(entries: readonly (readonly [name: string, value: Part])[]): Markup {
  return html`<dl class="facts">
    ${entries.map(
      ([name, value]) =>
        html`<div>
          <dt>${name}</dt>
          <dd>${value}</dd>
        </div>`,
    )}
  </dl>`;
}
