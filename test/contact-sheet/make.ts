/**
 * Renders every drawing and several shop sheets to PNG and PDF under `out/`, for people to look at, and measures in the browser what the tests can only
 * take from a table: that no text is wider than the library takes it for. Run by `npx tsx test/contact-sheet/make.ts`; it needs a Chromium.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { planFrame, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { fitStock } from "miterwright/stock";
import { shopSheet } from "miterwright/sheet";
import { openBrowser } from "../browser/open-browser.js";
import { layoutFaults, readDrawing } from "../drawing/read-drawing.js";
import { listCases, tray, WORDS, type Case } from "./cases.js";

const AXE = readFileSync(fileURLToPath(import.meta.resolve("axe-core")), "utf8");
const OUT = join(import.meta.dirname, "../../out/contact-sheet");

function pageOf(cases: readonly Case[]): string {
  const cells = cases.map(({ name, drawing }) => `<figure>${drawing.svg}<figcaption>${name}</figcaption></figure>`);
  return `<!DOCTYPE html><meta charset="utf-8"><style>body{margin:10px;background:#bbb;display:flex;flex-wrap:wrap;gap:10px;font:12px sans-serif}figure{margin:0}svg{display:block}</style>${cells.join("")}`;
}

/** What the browser finds wrong with a sheet: the accessibility rules that it breaks, contents wider than the paper, and drawings too small to be read. */
async function findSheetFaults(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: Math.floor((190 / 25.4) * 96), height: 900 });
  await page.addScriptTag({ content: AXE });
  return page.evaluate<string[]>(`(async () => {
    const { violations } = await axe.run(document);
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const small = Array.from(document.querySelectorAll("svg"), (svg) => svg.clientWidth / svg.viewBox.baseVal.width).filter((scale) => scale < 0.75);
    return [
      ...violations.map(({ id, help }) => id + ": " + help),
      ...(wide > 0 ? ["wider than the paper by " + wide] : []),
      ...small.map((scale) => "a drawing is reduced to " + scale),
    ];
  })()`);
}

/** Texts that the browser draws wider than they were taken for. */
async function findWideTexts(page: Page, cases: readonly Case[]): Promise<string[]> {
  const taken = cases.flatMap(({ drawing }) => readDrawing(drawing).texts);
  const drawn = await page.evaluate<number[]>(
    "Array.from(document.querySelectorAll('svg text'), (text) => text.getComputedTextLength())",
  );
  return taken.flatMap(({ text, x0, x1, y0, y1 }, index) => {
    const width = Math.max(x1 - x0, y1 - y0);
    return drawn[index]! > width + 0.01 ? [`"${text}" is ${drawn[index]!} wide, taken for ${width}`] : [];
  });
}

const cases = listCases();
const faults = cases.flatMap(({ kind, name, drawing }) =>
  layoutFaults(drawing).map((fault) => `${kind}, ${name}: ${fault}`),
);
mkdirSync(OUT, { recursive: true });
const browser = await openBrowser();
for (const kind of ["plan", "section", "stick", "cut", "cradle", "panel", "panel-cut", "stock"] as const) {
  const ofKind = cases.filter((one) => one.kind === kind);
  for (let start = 0, sheet = 1; start < ofKind.length; start += 16, sheet++) {
    const some = ofKind.slice(start, start + 16);
    const { page, complaints } = await browser.open(browser.serve(`${kind}-${sheet}.html`, pageOf(some)));
    await page.setViewportSize({ width: 1560, height: 900 });
    await page.screenshot({ path: join(OUT, `${kind}-${sheet}.png`), fullPage: true });
    faults.push(...complaints, ...(await findWideTexts(page, some)).map((fault) => `${kind}: ${fault}`));
    await page.close();
  }
}

/** The sheets, and on how many pages each must stay. */
const sheets: Readonly<Record<string, { readonly plan: FramePlan; readonly pages: number }>> = {
  "plain-square": {
    plan: tray({ sides: 4, profile: molding({ width: 42, thickness: 18 }), contents: [], clearance: 0 }),
    pages: 2,
  },
  "plain-hexagon": { plan: tray({ sides: 6, contents: [], clearance: 0 }), pages: 2 },
  "nine-sided-tray": { plan: tray({ sides: 9, slope: 20, sticks: [{ id: "larch", length: 2400 }] }), pages: 3 },
  "propped-dozen": {
    plan: tray({ sides: 12, slope: 45, lay: "propped", sticks: [{ id: "larch", length: 1200 }] }),
    pages: 4,
  },
  "steep-triangle": { plan: tray({ sides: 3, slope: 80, contents: [] }), pages: 3 },
  "level-measures": {
    plan: planFrame({ sides: 8, slope: -30, opening: { side: 200 }, measured: { levelWidth: 40, lap: 6, depth: 9 } }),
    pages: 3,
  },
};
for (const [name, { plan, pages }] of Object.entries(sheets)) {
  const fit = plan.job === undefined ? {} : { fit: fitStock(plan.job, { workLimit: 1e5 }) };
  const title = `Saltmarsh Observatory: ${name.replaceAll("-", " ")}`;
  const html = shopSheet(plan, { ...WORDS, ...fit, title, note: "For the tide-pool model on the long table." });
  writeFileSync(join(OUT, `${name}.html`), html);
  const { page, complaints } = await browser.open(browser.serve(`${name}.html`, html));
  faults.push(...complaints);
  for (const format of ["A4", "Letter"]) {
    const pdf = await page.pdf({ path: join(OUT, `${name}-${format}.pdf`), format, printBackground: true });
    const count = pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
    if (count < 1 || count > pages) faults.push(`sheet ${name} takes ${count} pages of ${format}, not ${pages}`);
  }
  faults.push(...(await findSheetFaults(page)).map((fault) => `sheet ${name}: ${fault}`));
  await page.close();
}
await browser.close();
for (const fault of faults) console.error(fault);
console.log(`${cases.length} drawings, ${Object.keys(sheets).length} sheets, ${faults.length} faults: ${OUT}`);
process.exitCode = faults.length === 0 ? 0 : 1;
