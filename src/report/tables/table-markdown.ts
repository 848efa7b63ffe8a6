import { isolateText } from "../../core/isolate.js";
import { oneLine } from "../../drawing/internal.js";
import type { TableData } from "./table-data.js";

/**
 * Characters that can mean something else within a line: CommonMark's and GitHub's, the dollar sign of formulas in notebooks, and what makes a bare address a
 * link (`://`, `www.`, `@`).
 */
const SPECIAL: RegExp = /[\\`*_[\]<>|~&$@]|:(?=\/\/)|(?<=www)\./gi;

/** A text as Markdown that shows it. A backslash before punctuation makes that plain (CommonMark 0.31, section 2.4). */
export function escapeMarkdown(text: string): string {
  return isolateText(oneLine(text)).replace(SPECIAL, "\\$&");
}

/** Writes a table as Markdown, with pipes (GitHub Flavored Markdown 0.29, section 4.10). */
export function markdownOf(table: TableData): string {
  const { caption, columns, cells } = table;
  const line = (texts: readonly string[]): string => `| ${texts.map(escapeMarkdown).join(" | ")} |`;
  const rule = columns.map(({ kind }) => (kind === "text" ? ":---" : "---:")).join(" | ");
  return [
    `**${escapeMarkdown(caption)}**`,
    "",
    line(columns.map(({ label }) => label)),
    `| ${rule} |`,
    ...cells.map(line),
  ].join("\n");
}
