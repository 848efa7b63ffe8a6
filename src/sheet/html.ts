import { escapeText } from "../drawing/markup.js";
import type { Drawing } from "../drawing/index.js";

/** Markup that needs no more escaping. */
export interface Markup {
  /** The markup. */
  readonly html: string;
}

/** What may stand in an element: plain text of anybody, which is escaped, or our own markup. */
export type Content = string | Markup;

/**
 * Puts contents one after another.
 *
 * @param contents - texts, which are escaped, and markup
 * @returns markup
 */
export function join(contents: readonly Content[]): Markup {
  return {
    html: contents.map((content) => (typeof content === "string" ? escapeText(content) : content.html)).join(""),
  };
}

/**
 * An element round contents.
 *
 * @param tag - its name, with attributes of our own if any: `div class="row"`
 * @param contents - texts, which are escaped, and markup
 * @returns markup
 */
export function element(tag: string, ...contents: readonly Content[]): Markup {
  return { html: `<${tag}>${join(contents).html}</${tag.split(" ", 1)[0]!}>` };
}

/**
 * A list of items.
 *
 * @param tag - `ul` or `ol`
 * @param items - its items
 * @returns markup
 */
export function list(tag: "ul" | "ol", items: readonly Content[]): Markup {
  return element(tag, ...items.map((item) => element("li", item)));
}

/** A table to write. */
export interface TableFacts {
  /** What it shows. */
  readonly caption: string;
  /** The heads of its columns. */
  readonly heads: readonly string[];
  /** Its rows; the first cell of each is its head. */
  readonly rows: readonly (readonly Content[])[];
  /** Whether it holds names of the caller, which may be words of any length and break anywhere; default false. */
  readonly hasNames?: boolean;
}

/**
 * A table whose first column heads its rows.
 *
 * @param facts - caption, heads and rows
 * @returns markup
 */
export function table(facts: TableFacts): Markup {
  const { caption, heads, rows, hasNames = false } = facts;
  const body = rows.map(([first, ...cells]) =>
    element("tr", element('th scope="row"', first!), ...cells.map((cell) => element("td", cell))),
  );
  return element(
    hasNames ? 'table class="names"' : "table",
    element("caption", caption),
    element("thead", element("tr", ...heads.map((head) => element('th scope="col"', head)))),
    element("tbody", ...body),
  );
}

/**
 * A figure with its caption.
 *
 * @param drawing - the picture
 * @param caption - what is written below it
 * @returns markup
 */
export function figure(drawing: Drawing, caption: string): Markup {
  return element("figure", { html: drawing.svg }, element("figcaption", caption));
}
