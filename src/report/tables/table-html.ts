import { escapeText } from "../../drawing/internal.js";
import type { CellKind, TableData } from "./table-data.js";

/** The side of a column, as an attribute or, since that counts for more than the style sheets of notebooks, as a style. */
function sideOf(kind: CellKind, isStyled: boolean): string {
  const side = kind === "text" ? "left" : "right";
  return isStyled ? ` style="text-align:${side};padding:0.2em 0.7em"` : ` align="${side}"`;
}

function write({ caption, columns, rows, cells }: TableData, isStyled: boolean): string {
  const style = (text: string): string => (isStyled ? ` style="${text}"` : "");
  const cell = (tag: string, text: string, index: number): string => {
    const { kind } = columns[index]!;
    return `<${tag}${sideOf(kind, isStyled)}>${escapeText(text)}</${tag.split(" ", 1)[0]!}>`;
  };
  const heads = columns.map(({ label }, index) => cell('th scope="col"', label, index)).join("");
  const body = cells.map((row, place) => {
    const written = row.map((text, index) => {
      // A number, its fraction and its unit stay on one line.
      const tied = typeof rows[place]![index] === "number" ? text.replaceAll(" ", "\u00a0") : text;
      return cell(index === 0 ? 'th scope="row"' : "td", tied, index);
    });
    return `<tr>${written.join("")}</tr>`;
  });
  return `<table${style("border-collapse:collapse;font-variant-numeric:tabular-nums")}><caption${style("text-align:left;caption-side:top")}>${escapeText(caption)}</caption><thead${style("border-bottom:1px solid")}><tr>${heads}</tr></thead><tbody>${body.join("")}</tbody></table>`;
}

/**
 * Writes a table as HTML that is also well-formed XML. It has no style attribute, which a Content-Security-Policy may forbid.
 */
export function htmlOf(table: TableData): string {
  return write(table, false);
}

/** The same with its styles in it, for notebooks: their own style sheets put words to the right. */
export function styledHtmlOf(table: TableData): string {
  return write(table, true);
}
