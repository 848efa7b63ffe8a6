import { afterAll, beforeAll, expect, test } from "vitest";
import { listCases } from "../contact-sheet/cases.js";
import { readDrawing } from "../drawing/read-drawing.js";
import { openBrowser, type OpenBrowser } from "./open-browser.js";

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

// The library knows no font: it takes widths from a table, and the browser is the judge of that table.
test("no text of any drawing is wider than the library takes it for", async () => {
  const drawings = listCases().map(({ drawing }) => drawing);
  const taken = drawings.flatMap((drawing) => readDrawing(drawing).texts);
  const html = `<!doctype html><meta charset="utf-8">${drawings.map(({ svg }) => svg).join("")}`;
  const { page, complaints } = await browser.open(browser.serve("drawings.html", html));
  const read = "Array.from(document.querySelectorAll('svg text'), (text) => text.getComputedTextLength())";
  const drawn = await page.evaluate<number[]>(read);
  expect(drawn).toHaveLength(taken.length);
  expect(taken.length).toBeGreaterThan(1000);
  const tooWide = taken.filter(({ x0, x1, y0, y1 }, index) => drawn[index]! > Math.max(x1 - x0, y1 - y0) + 0.01);
  expect(tooWide).toEqual([]);
  expect(complaints).toEqual([]);
});
