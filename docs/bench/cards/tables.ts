import { html, type Markup, type Part } from "../html.js";

/**
 * A table whose first column heads its rows. It scrolls by itself where the page is narrow.
 *
 * @param caption - what it shows
 * @param heads - the heads of its columns
 * @param rows - its rows
 * @returns the markup
 */
export function table(caption: string, heads: readonly string[], rows: readonly (readonly Part[])[]): Markup {
  const body = rows.map(
    ([first = null, ...cells]) =>
      html`<tr>
        <th scope="row">${first}</th>
        ${cells.map((cell) => html`<td>${cell}</td>`)}
      </tr>`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${caption}">
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
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
