import MarkdownIt from "markdown-it";
import { elementsOf, readXml, textOf, type XmlElement } from "../drawing/read-xml.js";

/** What one written form of a table says. */
export interface ReadTable {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The side on which each column stands. */
  readonly sides: readonly ("left" | "right")[];
}

/** Elements that an HTML table of ours may have. */
const ALLOWED = ["table", "caption", "thead", "tbody", "tr", "th", "td"];

/** Reads a table from HTML that must be well-formed XML and hold nothing but a table and text. */
export function readHtml(html: string): ReadTable {
  const root = readXml(html);
  const all = elementsOf(root);
  const other = all.find(({ name }) => !ALLOWED.includes(name));
  if (other !== undefined || root.name !== "table") throw new Error(`not a table: ${(other ?? root).name}`);
  const named = (within: XmlElement, ...names: string[]): XmlElement[] =>
    elementsOf(within).filter(({ name }) => names.includes(name));
  const [head] = named(root, "thead");
  const [body] = named(root, "tbody");
  const scopes = named(body!, "tr").map((row) => named(row, "th").map(({ attributes }) => attributes["scope"]));
  if (scopes.some((row) => row.join() !== "row")) throw new Error("a row without its one head");
  const columns = named(head!, "th");
  if (columns.some(({ attributes }) => attributes["scope"] !== "col")) throw new Error("a column without its head");
  if (all.some(({ attributes }) => "style" in attributes)) throw new Error("a style attribute");
  const sideOf = ({ attributes }: XmlElement): "left" | "right" => attributes["align"] as "left" | "right";
  for (const row of named(body!, "tr"))
    named(row, "th", "td").forEach((cell, index) => {
      if (sideOf(cell) !== sideOf(columns[index]!)) throw new Error("a cell on the other side than its head");
    });
  return {
    caption: textOf(named(root, "caption")[0]!),
    heads: columns.map(textOf),
    rows: named(body!, "tr").map((row) => named(row, "th", "td").map(textOf)),
    sides: columns.map(sideOf),
  };
}

type Token = ReturnType<MarkdownIt["parse"]>[number];

/** The text of an inline token that must hold nothing but text. */
function plainText(token: Token, allowed: readonly string[]): string {
  const parts = token.children!.filter(({ type }) => !allowed.includes(type));
  const other = parts.find(({ type }) => type !== "text" && type !== "text_special");
  if (other !== undefined) throw new Error(`not plain text: ${other.type} ${other.content}`);
  return parts.map(({ content }) => content).join("");
}

/** Reads a table from Markdown, by the rules of CommonMark with GitHub's tables and links, HTML let through. */
export function readMarkdown(markdown: string): ReadTable {
  const parser = new MarkdownIt({ html: true, linkify: true });
  // GitHub's rules make no link of a bare name such as example.com.
  parser.linkify.set({ fuzzyLink: false });
  const tokens = parser.parse(markdown, {});
  const inline = tokens.filter(({ type }) => type === "inline");
  const shape = tokens.filter(({ type, nesting }) => nesting === 1 && !/^t[rhd]_/.test(type)).map(({ type }) => type);
  if (!/^paragraph_open,table_open,thead_open(,tbody_open)?$/.test(shape.join()))
    throw new Error(`not a table: ${shape.join()}`);
  const [caption, ...cells] = inline;
  if (caption!.children!.filter(({ type }) => type === "strong_open").length !== 1) throw new Error("no bold caption");
  const heads = tokens.filter(({ type }) => type === "th_open");
  const texts = cells.map((cell) => plainText(cell, []));
  const rows = Array.from({ length: texts.length / heads.length - 1 }, (_, row) =>
    texts.slice((row + 1) * heads.length, (row + 2) * heads.length),
  );
  return {
    caption: plainText(caption!, ["strong_open", "strong_close"]),
    heads: texts.slice(0, heads.length),
    rows,
    sides: heads.map((head) => /text-align:(left|right)/.exec(head.attrGet("style")!)![1] as "left" | "right"),
  };
}

/** Reads a table from plain text, cutting every line where the rule under the heads says; letters of one column each. */
export function readPlainText(text: string): Omit<ReadTable, "sides"> {
  const [caption, empty, head, rule, ...lines] = text.split("\n");
  if (empty !== "" || !/^-+(?: {2}-+)*$/.test(rule!)) throw new Error(`no rule: ${rule!}`);
  const spans = [...rule!.matchAll(/-+/g)].map(({ 0: dashes, index }) => [index, index + dashes.length] as const);
  const cut = (line: string): string[] => {
    const signs = Array.from(line);
    if (signs.length > rule!.length) throw new Error(`wider than its rule: ${line}`);
    return spans.map(([from, to], index) => {
      if (index > 0 && signs.slice(spans[index - 1]![1], from).some((sign) => sign !== " "))
        throw new Error(`crosses a gap: ${line}`);
      return signs.slice(from, to).join("");
    });
  };
  const raw = [head!, ...lines].map(cut);
  const [heads, ...rows] = raw.map((row) => row.map((cell) => cell.trim()));
  return { caption: caption!, heads: heads!, rows };
}
