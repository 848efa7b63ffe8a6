import type { Catalog } from "./catalog.js";
import { valuesFrom, type Figure, type Picture, type Values } from "./figure.js";
import { escapeText } from "./pad.js";
import type { Reader } from "./reader.js";

/** A figure as a page asks for it: `<figure data-figure="polygon" data-sides="9">`. */
export interface PlacedFigure {
  readonly figure: Figure;
  /** What it starts with. */
  readonly values: Values;
}

/**
 * The figure that a page's element asks for.
 *
 * @param data - the element's `data-` attributes without that prefix
 * @param catalog - the figures that there are
 * @returns the figure and the values that it starts with
 * @throws {RangeError} when there is no such figure, or it takes no such value
 */
export function figureFor(data: Readonly<Record<string, string | undefined>>, catalog: Catalog): PlacedFigure {
  const { figure: name = "", ...given } = data;
  const figure = catalog.get(name);
  if (figure === undefined) throw new RangeError(`there is no figure "${name}"`);
  return { figure, values: valuesFrom(figure, given) };
}

/**
 * The numbers of a picture as a list.
 *
 * @param facts - names and texts
 * @returns the items of a `dl`
 */
export function factsMarkup(facts: Picture["facts"]): string {
  return facts.map(([name, text]) => `<div><dt>${escapeText(name)}</dt><dd>${escapeText(text)}</dd></div>`).join("");
}

/**
 * What the library says about a picture, as a list.
 *
 * @param says - sentences
 * @returns the items of a `ul`
 */
export function saysMarkup(says: readonly string[]): string {
  return says.map((sentence) => `<li>${escapeText(sentence)}</li>`).join("");
}

/**
 * What stands in a figure before any script runs.
 *
 * @param placed - the figure and its values
 * @param reader - how numbers are written
 * @returns the picture and its numbers as markup
 */
export function stillMarkup({ figure, values }: PlacedFigure, reader: Reader): string {
  const { svg, facts, says } = figure.draw(values, reader);
  const sentences = says === undefined ? "" : `<ul class="figure-says">${saysMarkup(says)}</ul>`;
  return `<div class="figure-picture">${svg}</div><dl class="figure-facts">${factsMarkup(facts)}</dl>${sentences}`;
}

const PLACEHOLDER = /<figure((?:\s+data-[a-z-]+="[^"]*")+)\s*>/g;

/** `data-first-slope` as scripts know it: `firstSlope`. */
function camel(name: string): string {
  return name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/**
 * Puts a picture into every figure of a page that asks for one.
 *
 * @param html - the page
 * @param catalog - the figures that there are
 * @param reader - how numbers are written
 * @returns the page with its pictures
 * @throws {RangeError} when the page asks for a figure that there is not
 */
export function placeFigures(html: string, catalog: Catalog, reader: Reader): string {
  return html.replace(PLACEHOLDER, (tag, attributes: string) => {
    const pairs = [...attributes.matchAll(/data-([a-z-]+)="([^"]*)"/g)];
    const data = Object.fromEntries(pairs.map(([, name, value]) => [camel(name!), value!]));
    if (data["figure"] === undefined) return tag;
    return `${tag}${stillMarkup(figureFor(data, catalog), reader)}`;
  });
}
