import { escapeText } from "../../src/drawing/markup.js";

/** Markup that needs no more escaping. */
export interface Markup {
  /** The markup. */
  readonly html: string;
}

/** What may stand in markup: text, which is escaped; markup; several of either; or nothing. */
export type Part = string | number | Markup | null | readonly Part[];

function write(part: Part): string {
  if (part === null) return "";
  if (typeof part === "string") return escapeText(part);
  if (typeof part === "number") return String(part);
  if ("html" in part) return part.html;
  return part.map(write).join("");
}

/**
 * Writes markup; everything that is put into it is escaped unless it is markup itself.
 *
 * @param texts - the markup between the parts
 * @param parts - what is put in
 * @returns the markup
 */
export function html(texts: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  return { html: texts.map((text, index) => text + write(parts[index] ?? null)).join("") };
}

/**
 * Takes finished markup, such as a drawing, as it is.
 *
 * @param text - the markup
 * @returns the same, marked as markup
 */
export function trusted(text: string): Markup {
  return { html: text };
}
