import { afterAll, beforeAll, expect, test } from "vitest";
import { bundleProgram } from "../house/measure-bundle.js";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

/** What a cell of a notebook in the browser does: elements of drawings and tables, put into the page. */
const CELL = `
  import { drawPlanView } from "miterwright/drawing";
  import { tabulate, tabulateLengths } from "miterwright/report";
  import { formatters } from "miterwright/units";
  import { frameGeometry } from "miterwright/frame";

  const formats = formatters({ unit: "mm", digits: 1 });
  const frame = frameGeometry({ sides: 7, opening: { side: 120 }, measured: { levelWidth: 45 } });
  const hostile = '<img src=x onerror="globalThis.harmed = 1"></td></table><script>globalThis.harmed = 1</script>';
  const table = tabulate({ caption: hostile, columns: [{ label: hostile }, { label: "n", kind: "number" }], rows: [[hostile, 1]] });
  document.body.append(drawPlanView(frame, { formats }).toElement(), tabulateLengths(frame, { formats }).toElement(), table.toElement(document));
  export { hostile };
`;

let browser: OpenBrowser;
let opened: OpenPage;
beforeAll(async () => {
  browser = await openBrowser();
  const { code } = await bundleProgram(CELL, { format: "iife", globalName: "cell" });
  browser.serve("cell.js", code);
  // As strict as pages are: no style but from files, and no text that becomes markup.
  const policy = "default-src 'none'; script-src 'self'; require-trusted-types-for 'script'; trusted-types 'none'";
  const page = `<!doctype html><html lang="en"><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>Cell</title><body><script src="cell.js"></script></body></html>`;
  opened = await browser.open(browser.serve("cell.html", page));
});
afterAll(() => browser.close());

test("a drawing and tables become elements of the page", async () => {
  const kinds =
    "[...document.body.children].slice(1).map((element) => [element.constructor.name, element.isConnected])";
  expect(await opened.page.evaluate(kinds)).toEqual([
    ["SVGSVGElement", true],
    ["HTMLTableElement", true],
    ["HTMLTableElement", true],
  ]);
});

test("a table has its caption, heads and rows, numbers at the right", async () => {
  const read = `(() => {
    const table = document.querySelector("table");
    const side = (cell) => getComputedStyle(cell).textAlign;
    return {
      caption: table.caption.textContent,
      heads: [...table.tHead.rows[0].cells].map((cell) => [cell.textContent, cell.scope, side(cell)]),
      rows: [...table.tBodies[0].rows].map((row) => [...row.cells].map((cell) => cell.textContent)),
    };
  })()`;
  expect(await opened.page.evaluate(read)).toEqual({
    caption: "Finished length of every piece along every edge",
    heads: [
      ["letter", "col", "left"],
      ["edge", "col", "left"],
      ["length", "col", "right"],
    ],
    rows: [
      ["a", "rabbet wall", "120\u00a0mm"],
      ["b", "outermost point", "163.3\u00a0mm"],
    ],
  });
});

test("what looks like markup is text there, and runs nothing", async () => {
  const texts = `[...document.querySelectorAll("table")].at(-1).querySelectorAll("caption, th")`;
  const [hostile, caption, head, , row] = await opened.page.evaluate<string[]>(
    `[cell.hostile, ...[...${texts}].map((element) => element.textContent)]`,
  );
  expect([caption, head, row]).toEqual([hostile, hostile, hostile]);
  expect(await opened.page.evaluate("[globalThis.harmed, document.images.length]")).toEqual([undefined, 0]);
  expect(opened.complaints).toEqual([]);
});
