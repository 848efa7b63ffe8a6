const TABLE = /<table>(.*?)<\/table>/gs;
const ROW = /<tr>(.*?)<\/tr>/gs;
const CELL = /<(t[hd])([^>]*)>(.*?)<\/\1>/gs;

/** Letters that a line of a telephone has room for, less what the columns keep between them. */
const LINE = 42;

/** What a cell says. */
function textOf(html: string): string {
  return html.replace(/<[^>]*>/g, "").replace(/&[a-z]+;|&#\d+;/g, "-");
}

/**
 * Marks the tables of three and more columns that a telephone has no room for, and names in each of their cells the column that it is of, so that a
 * style sheet can stack them. Tables of two columns wrap.
 *
 * @param html - the page
 * @returns the page with `class="stacked"` on such tables and `data-column` on their cells
 */
export function stackTables(html: string): string {
  return html.replace(TABLE, (table, inside: string) => {
    const rows = [...inside.matchAll(ROW)].map(([, row]) => [...row!.matchAll(CELL)].map((cell) => textOf(cell[3]!)));
    const columns = rows[0] ?? [];
    const widths = columns.map((_, index) => Math.max(...rows.map((row) => row[index]?.length ?? 0)));
    if (columns.length < 3 || widths.reduce((sum, width) => sum + width, 0) <= LINE) return table;
    const named = inside.replace(ROW, (row) => {
      let index = 0;
      return row.replace(/<td([^>]*)>/g, (_, attributes: string) => {
        const name = columns[index]!;
        index += 1;
        return name === "" ? `<td${attributes}>` : `<td${attributes} data-column="${name.replaceAll('"', "&quot;")}">`;
      });
    });
    return `<table class="stacked">${named}</table>`;
  });
}
