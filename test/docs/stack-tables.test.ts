import { describe, expect, test } from "vitest";
import { stackTables } from "../../docs/pages/stack-tables.js";

const row = (cell: string, texts: readonly string[]): string =>
  `<tr>${texts.map((text) => `<${cell}>${text}</${cell}>`).join("")}</tr>`;
const table = (head: readonly string[], body: readonly string[]): string =>
  `<table><thead>${row("th", head)}</thead><tbody>${row("td", body)}</tbody></table>`;
const LONG = "something that no telephone has room for";

describe("tables", () => {
  test("of three wide columns name the column in every cell", () => {
    const made = stackTables(table(["code", "raised <b>when</b>", ""], ["<code>tip</code>", LONG, "x"]));
    expect(made).toContain('<table class="stacked">');
    expect(made).toContain(
      `<td data-column="code"><code>tip</code></td><td data-column="raised when">${LONG}</td><td>x</td>`,
    );
    expect(made).toContain("<th>code</th>");
  });

  test.each([
    ["two columns", table(["code", "raised when"], ["tip", LONG])],
    ["narrow ones", table(["n", "miter", "bevel"], ["4", "45", "0"])],
  ])("of %s stay as they are", (_, html) => {
    expect(stackTables(html)).toBe(html);
  });
});
