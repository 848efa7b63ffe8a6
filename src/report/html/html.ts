import { escapeText } from "../../drawing/internal.js";

/** Markup that needs no more escaping. */
export interface Markup {
  /** The markup. */
  readonly html: string;
}

/** What may stand in an element: plain text of anybody, which is escaped, or our own markup. */
export type Content = string | Markup;

/** Puts contents one after another. */
export function join(contents: readonly Content[]): Markup {
  return {
    html: contents.map((content) => (typeof content === "string" ? escapeText(content) : content.html)).join(""),
  };
}

/** An element round contents; its tag may have attributes of our own: `div class="row"`. */
export function element(tag: string, ...contents: readonly Content[]): Markup {
  return { html: `<${tag}>${join(contents).html}</${tag.split(" ", 1)[0]!}>` };
}

/** A list of items. */
export function list(tag: "ul" | "ol", items: readonly Content[]): Markup {
  return element(tag, ...items.map((item) => element("li", item)));
}
