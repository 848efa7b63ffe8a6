import { CARDS } from "./cards/index.js";
import type { Card } from "./cards/card.js";
import { dryFitMarkup, formMarkup } from "./form-markup.js";
import { html, type Markup } from "./html.js";

function cardMarkup({ id, heading }: Card): Markup {
  return html`<section class="card" id="card-${id}" hidden>
    <h2>${heading}</h2>
    <div class="body"></div>
    <div class="meaning"></div>
  </section>`;
}

/**
 * Fills the page's template, so that the form is there before any script runs.
 *
 * @param template - its text, with the places marked by comments
 * @param policy - what the page may load and run
 * @returns the page
 */
export function fillTemplate(template: string, policy: string): string {
  const column = (name: Card["column"]): Markup =>
    html`${CARDS.filter((card) => card.column === name).map(cardMarkup)}`;
  const parts: Readonly<Record<string, Markup>> = {
    policy: html`<meta http-equiv="Content-Security-Policy" content="${policy}" />`,
    form: formMarkup(),
    work: column("work"),
    frame: column("frame"),
    "dry-fit": dryFitMarkup(),
  };
  return template.replace(/<!-- ([\w-]+) -->/g, (_, name: string) => {
    const part = parts[name];
    if (part === undefined) throw new Error(`bug: the template has no part ${name}`);
    return part.html;
  });
}
