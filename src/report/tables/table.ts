import type { TableData } from "./table-data.js";
import { markdownOf } from "./table-markdown.js";
import { htmlOf, styledHtmlOf } from "./table-html.js";
import { plainTextOf } from "./table-text.js";
import { freezeShowing, type PageDocument } from "../../drawing/internal.js";

/** The page's `HTMLTableElement` where the compiler knows of one. */
export type TableElement = typeof globalThis extends { HTMLTableElement: { prototype: infer E } } ? E : object;

/** A table. It shows itself in notebooks, and is otherwise plain data that can be written as HTML, Markdown or plain text. */
export interface Table extends TableData {
  /**
   * The table as plain text, its columns lined up.
   *
   * @returns lines, of which the last has no line end
   */
  readonly toString: () => string;
  /**
   * The table as HTML, without styles, ids or style attributes: a page's own style sheet says how it looks. Words stand to the left, numbers to the right.
   *
   * @returns a `table` element
   */
  readonly toHtml: () => string;
  /**
   * The table as Markdown with pipes, the caption in bold above it.
   *
   * @returns lines, of which the last has no line end
   */
  readonly toMarkdown: () => string;
  /**
   * The table as an element of a page, with the styles that it has in notebooks. It is built without the parser of HTML and without style attributes, so that a
   * strict Content-Security-Policy and Trusted Types allow it.
   *
   * @param document - the page's document; default the global one
   * @returns a new `table` element that is in no page yet
   * @throws {InputError} when no document is given and there is no global one
   */
  readonly toElement: (document?: PageDocument) => TableElement;
}

function frozenRows<V>(rows: readonly (readonly V[])[]): readonly (readonly V[])[] {
  return Object.freeze(rows.map((row) => Object.freeze([...row])));
}

/** Makes a table from its data. */
export function makeTable(data: TableData): Table {
  const table: TableData = {
    caption: data.caption,
    columns: Object.freeze(data.columns.map(({ label, kind }) => Object.freeze({ label, kind }))),
    rows: frozenRows(data.rows),
    cells: frozenRows(data.cells),
  };
  const toString = (): string => plainTextOf(table);
  const toHtml = (): string => htmlOf(table);
  const toMarkdown = (): string => markdownOf(table);
  return freezeShowing(table, {
    markup: () => styledHtmlOf(table),
    bundle: () => ({ "text/html": styledHtmlOf(table), "text/markdown": toMarkdown(), "text/plain": toString() }),
    functions: { toString, toHtml, toMarkdown },
  }) as Table;
}
