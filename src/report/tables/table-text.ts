import { closeIsolates, isolateText } from "../../core/isolate.js";
import type { TableData } from "./table-data.js";

/** Signs that take no column of a terminal, as accents that stand for themselves do. */
const NO_COLUMN: RegExp = /[\p{Mn}\p{Me}\p{Cf}]/u;
/** Signs that take two columns: East Asian ones and pictograms (Unicode Standard Annex 11, roughly). */
const TWO_COLUMNS: RegExp =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\u3000-\u303e\uff01-\uff60\uffe0-\uffe6]/u;

/** How many columns of letters of one width a text takes. */
function columnsOf(text: string): number {
  let sum = 0;
  for (const sign of text) sum += NO_COLUMN.test(sign) ? 0 : TWO_COLUMNS.test(sign) ? 2 : 1;
  return sum;
}

/** Writes a table as plain text for letters of one width. */
export function plainTextOf(table: TableData): string {
  const { caption, columns } = table;
  const cells = table.cells.map((row) => row.map(isolateText));
  const heads = columns.map(({ label }) => isolateText(label));
  const widths = columns.map((_, index) =>
    [heads, ...cells].reduce((widest, row) => Math.max(widest, columnsOf(row[index]!)), 1),
  );
  const line = (texts: readonly string[]): string =>
    texts
      .map((text, index) => {
        const room = " ".repeat(widths[index]! - columnsOf(text));
        return columns[index]!.kind === "text" ? text + room : room + text;
      })
      .join("  ")
      .trimEnd();
  return [
    closeIsolates(caption),
    "",
    line(heads),
    widths.map((width) => "-".repeat(width)).join("  "),
    ...cells.map(line),
  ].join("\n");
}
