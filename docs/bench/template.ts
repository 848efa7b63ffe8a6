import { CARDS, type Card } from "./cards.js";
import { dictionaryMarkup, dryFitMarkup, formMarkup } from "./form-markup.js";
import { html, type Markup } from "./html.js";
import type { FormWords } from "./labels/form-words.js";
import type { Language } from "./language.js";

function cardMarkup({ section, title }: Card & { readonly title: string }): Markup {
  return html`<section class="card" id="card-${section}" hidden>
    <h2>${title}</h2>
    <div class="body"></div>
    <div class="meaning"></div>
  </section>`;
}

/**
 * Fills the page's template, so that the form is there before any script runs.
 *
 * @param template - its text. A comment marks the place of a part, and a name in double braces that of a text
 * @param policy - what the page may load and run
 * @param form - what is written into it
 * @param language - what it speaks while it is used
 * @returns the page
 */
export function fillTemplate(template: string, policy: string, form: FormWords, { page, words }: Language): string {
  const { sections } = words.reports;
  const column = (name: Card["column"]): Markup =>
    html`${CARDS.filter((card) => card.column === name).map((card) =>
      cardMarkup({ ...card, title: sections[card.section] }),
    )}`;
  const parts: Readonly<Record<string, Markup>> = {
    policy: html`<meta http-equiv="Content-Security-Policy" content="${policy}" />`,
    form: formMarkup({ form, page }),
    work: column("work"),
    frame: column("frame"),
    "dry-fit": dryFitMarkup(form),
    dictionary: dictionaryMarkup(form),
  };
  const texts: Readonly<Record<string, string>> = {
    ...form.template,
    language: page.language,
    stockHeading: sections.stock,
    none: page.status.none,
  };
  return template.replace(/<!-- ([\w-]+) -->|\{\{(\w+)\}\}/g, (_, part?: string, text?: string) => {
    const filled = part === undefined ? texts[text!] : parts[part];
    if (filled === undefined) throw new Error(`bug: the template has no part ${part ?? text!}`);
    // Line ends and indents of our own markup mean nothing.
    return html`${filled}`.html.replace(/\s+/g, " ");
  });
}
