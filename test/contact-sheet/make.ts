/**
 * Renders every drawing and several shop sheets to PNG and PDF under `out/`, for people to look at; the browser tests measure them. Run by
 * `npx tsx test/contact-sheet/make.ts`; it needs a Chromium.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openBrowser } from "../browser/open-browser.js";
import { listCases, type Case } from "./cases.js";
import { listSheets, printedPages } from "./sheets.js";

const OUT = join(import.meta.dirname, "../../out/contact-sheet");

function pageOf(cases: readonly Case[]): string {
  const cells = cases.map(({ name, drawing }) => `<figure>${drawing.svg}<figcaption>${name}</figcaption></figure>`);
  return `<!DOCTYPE html><meta charset="utf-8"><style>body{margin:10px;background:#bbb;display:flex;flex-wrap:wrap;gap:10px;font:12px sans-serif}figure{margin:0}svg{display:block}</style>${cells.join("")}`;
}

const cases = listCases();
mkdirSync(OUT, { recursive: true });
const browser = await openBrowser();
for (const kind of ["plan", "section", "piece", "cut", "cradle", "panel", "panel-cut", "stock"] as const) {
  const ofKind = cases.filter((one) => one.kind === kind);
  for (let start = 0, sheet = 1; start < ofKind.length; start += 16, sheet++) {
    const { page } = await browser.open(
      browser.serve(`${kind}-${sheet}.html`, pageOf(ofKind.slice(start, start + 16))),
    );
    await page.setViewportSize({ width: 1560, height: 900 });
    await page.screenshot({ path: join(OUT, `${kind}-${sheet}.png`), fullPage: true });
    await page.close();
  }
}
for (const { name, html } of listSheets()) {
  const file = name.replaceAll(" ", "-");
  writeFileSync(join(OUT, `${file}.html`), html);
  const { page } = await browser.open(browser.serve(`${file}.html`, html));
  for (const format of ["A4", "Letter"] as const) {
    const pages = await printedPages(page, format, join(OUT, `${file}-${format}.pdf`));
    console.log(`${name}: ${pages} pages of ${format}`);
  }
  await page.close();
}
await browser.close();
console.log(`${cases.length} drawings: ${OUT}`);
