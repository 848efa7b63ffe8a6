import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { buildBenchPage } from "../../docs/bench/build.js";
import type { FieldName } from "../../docs/bench/fields.js";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

/** The bench page, built into a folder of its own, and a browser to open it with. */
export interface BenchSite {
  /** The folder with the page's files. */
  readonly folder: string;
  /** A folder for what tests write. */
  readonly scratch: string;
  /** Opens the page, with a link's fragment if wanted. */
  readonly open: (fragment?: string) => Promise<OpenPage>;
  /** The browser. */
  readonly browser: OpenBrowser;
  /** Ends the browser and deletes the files. */
  readonly close: () => Promise<void>;
}

/** Builds the page as the site does, in another language if one is named, and starts a browser. */
export async function openBenchSite(language?: string): Promise<BenchSite> {
  const scratch = mkdtempSync(join(tmpdir(), "miterwright-bench-page-"));
  await buildBenchPage(scratch, language);
  const browser = await openBrowser();
  const folder = join(scratch, "bench");
  const address = pathToFileURL(join(folder, "index.html")).href;
  return {
    folder,
    scratch,
    browser,
    open: (fragment = "") => browser.open(`${address}${fragment === "" ? "" : `#${fragment}`}`),
    close: async () => {
      await browser.close();
      rmSync(scratch, { recursive: true });
    },
  };
}

/** Types into fields, by their keys, in the order given. */
export async function fill(page: Page, fields: Readonly<Record<string, string>>): Promise<void> {
  for (const [key, text] of Object.entries(fields)) await page.fill(`[id="${key}"]`, text);
}

/** Waits until an expression is true in the page. Its policy lets no script of the page evaluate a text, so that it is asked from outside. */
export async function until(page: Page, expression: string): Promise<void> {
  await expect.poll(() => page.evaluate<boolean>(expression), { timeout: 30_000 }).toBe(true);
}

/** How far the plan is, once the sticks are fitted; its spaces untied. */
export async function settledStatus(page: Page): Promise<string> {
  await until(page, "!document.getElementById('status').textContent.startsWith('The sticks are still being fitted')");
  return (await page.innerText("#status")).replaceAll("\u00a0", " ");
}

/** Chooses an answer. */
export async function choose(page: Page, field: FieldName, value: string): Promise<void> {
  await page.selectOption(`#${field}`, value);
}

/** Presses a button that opens a window, prints what is in it to a file, and says which. */
export async function printFrom(
  site: BenchSite,
  page: Page,
  button: "print-sheet" | "print-section",
  format: "A4" | "Letter",
): Promise<string> {
  const [paper] = await Promise.all([page.waitForEvent("popup"), page.click(`#${button}`)]);
  await paper.waitForLoadState();
  const path = join(site.scratch, `${button}-${format}.pdf`);
  await paper.pdf({ path, format });
  await paper.close();
  return path;
}

/** The text of a printed file, in the order of reading. */
export function readPrinted(path: string): string {
  return execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" }).replace(/\s+/g, " ");
}

/** The fewest answers that make a splayed frame with a rabbet and sticks to cut up. */
export const SPLAYED: Readonly<Record<string, string>> = {
  width: "300",
  height: "220",
  sides: "7",
  moldingWidth: "55",
  thickness: "20",
  rabbetWidth: "8",
  rabbetDepth: "12",
  slope: "25",
  "sticks.0.length": "2400",
};
