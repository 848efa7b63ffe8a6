import { elementsOf, readXml, textOf, type XmlElement } from "../drawing/read-xml.js";

/** What a shop sheet says. */
export interface ReadSheet {
  readonly root: XmlElement;
  readonly elements: readonly XmlElement[];
  /** All text outside of drawings and of the style, its spaces untied. */
  readonly text: string;
  /** Every table as rows of cells, by caption. */
  readonly tables: Readonly<Record<string, readonly (readonly string[])[]>>;
}

function loose(text: string): string {
  return text.replaceAll("\u00a0", " ");
}

function proseOf(element: XmlElement): string {
  if (["svg", "style", "head"].includes(element.name)) return "";
  return element.children.map((child) => (typeof child === "string" ? child : `${proseOf(child)} `)).join("");
}

/** Reads a sheet, which is well-formed XML after its first line, as every HTML document can be. */
export function readSheet(html: string): ReadSheet {
  const doctype = "<!DOCTYPE html>\n";
  if (!html.startsWith(doctype)) throw new Error("no doctype");
  const root = readXml(html.slice(doctype.length).trimEnd());
  const elements = elementsOf(root);
  const tables = elements
    .filter(({ name }) => name === "table")
    .map((table) => {
      const rows = elementsOf(table).filter(({ name }) => name === "tr");
      const cellsOf = (row: XmlElement): string[] =>
        elementsOf(row)
          .filter(({ name }) => name === "th" || name === "td")
          .map((cell) => loose(textOf(cell)));
      const caption = elementsOf(table).find(({ name }) => name === "caption")!;
      return [loose(textOf(caption)), rows.map(cellsOf)] as const;
    });
  return { root, elements, text: loose(proseOf(root)), tables: Object.fromEntries(tables) };
}
