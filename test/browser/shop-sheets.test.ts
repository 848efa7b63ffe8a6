import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listSheets, printedPages } from "../contact-sheet/sheets.js";
import { everyViolation } from "./access.js";
import { openBrowser, type OpenBrowser } from "./open-browser.js";

/** Width of a page between its margins, in pixels: A4, the narrower one, less 10 mm on either side. */
const BETWEEN_MARGINS = Math.floor((190 / 25.4) * 96);

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

describe.each(listSheets())("the shop sheet of a $name", ({ name, html, pages }) => {
  test("stays on its pages, fits the paper, and can be read by everyone", async () => {
    const { page, complaints } = await browser.open(browser.serve(`${name.replaceAll(" ", "-")}.html`, html));
    expect(await printedPages(page, "A4")).toBeLessThanOrEqual(pages.A4);
    expect(await printedPages(page, "Letter")).toBeLessThanOrEqual(pages.Letter);
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: BETWEEN_MARGINS, height: 900 });
    const wide = "document.documentElement.scrollWidth - document.documentElement.clientWidth";
    expect(await page.evaluate<number>(wide)).toBe(0);
    const scales = "Array.from(document.querySelectorAll('svg'), (svg) => svg.clientWidth / svg.viewBox.baseVal.width)";
    expect(Math.min(...(await page.evaluate<number[]>(scales)))).toBeGreaterThan(0.75);
    expect(await everyViolation(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });
});
