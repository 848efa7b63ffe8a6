import { escapeText } from "./markup.js";
import type { TableData } from "./table-data.js";

/**
 * Writes a table as HTML that is also well-formed XML. Its styles stand in it, since notebooks bring none that would put words to the left and numbers to the
 * right.
 *
 * @param table - the table
 * @returns a `table` element
 */
export function htmlOf(table: TableData): string {
  const { caption, columns, cells } = table;
  const styles = columns.map(({ kind }) => `text-align:${kind === "text" ? "left" : "right"};padding:0.2em 0.7em`);
  const cell = (tag: string, text: string, index: number): string =>
    `<${tag} style="${styles[index]!}">${escapeText(text)}</${tag.split(" ", 1)[0]!}>`;
  const heads = columns.map(({ label }, index) => cell('th scope="col"', label, index)).join("");
  const body = cells.map((row) => {
    const written = row.map((text, index) => cell(index === 0 ? 'th scope="row"' : "td", text, index));
    return `<tr>${written.join("")}</tr>`;
  });
  return `<table style="border-collapse:collapse;font-variant-numeric:tabular-nums"><caption style="text-align:left;caption-side:top">${escapeText(caption)}</caption><thead style="border-bottom:1px solid"><tr>${heads}</tr></thead><tbody>${body.join("")}</tbody></table>`;
}
