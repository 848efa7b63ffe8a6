import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { seriousViolations } from "./access.js";
import { fill, openBenchSite, readPrinted, SPLAYED, type BenchSite } from "./bench-page-site.js";

let site: BenchSite;
beforeAll(async () => {
  site = await openBenchSite();
});
afterAll(() => site.close());

describe.each([380, 1600])("%i pixels wide", (width) => {
  test("everything is on the page, nothing beside it", async () => {
    const { page } = await site.open();
    await page.setViewportSize({ width, height: 900 });
    const widest = (): Promise<unknown> => page.evaluate("document.documentElement.scrollWidth");
    expect(await widest()).toBeLessThanOrEqual(width);
    await page.click("#example");
    await page.waitForSelector("#card-stock .body svg");
    await page.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
    expect(await widest()).toBeLessThanOrEqual(width);
  });

  test.each(["light", "dark"] as const)("has no serious fault of access, %s", async (colorScheme) => {
    const { page } = await site.open();
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    expect(await seriousViolations(page)).toEqual([]);
    await page.click("#example");
    await fill(page, { seenGap: "1", kerf: "?" });
    await page.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
    expect(await seriousViolations(page)).toEqual([]);
    await fill(page, { kerf: "3" });
    await page.waitForSelector("#card-stock .body svg");
    await page.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
    expect(await seriousViolations(page)).toEqual([]);
  });
});

test("what axe finds would be seen", async () => {
  const { page } = await site.open();
  await page.evaluate("document.querySelector('label[for=sides]').remove()");
  expect((await seriousViolations(page)).join()).toContain("label");
});

test("a keyboard is enough, from the empty form to the printed sheet", async () => {
  const { page, complaints } = await site.open();
  const focused = (): Promise<unknown> => page.evaluate("document.activeElement.id");
  /** Goes on with the tab key until a field has the focus. */
  const tabTo = async (id: string): Promise<void> => {
    for (let presses = 0; presses < 80; presses += 1) {
      if ((await focused()) === id) return;
      await page.keyboard.press("Tab");
    }
    throw new Error(`The tab key never came to ${id}`);
  };
  for (const [key, text] of Object.entries(SPLAYED)) {
    await tabTo(key);
    await page.keyboard.type(text);
  }
  await page.waitForSelector("#card-stock .body svg");
  await tabTo("print-sheet");
  const [paper] = await Promise.all([page.waitForEvent("popup"), page.keyboard.press("Enter")]);
  await paper.waitForLoadState();
  const path = join(site.scratch, "keyboard.pdf");
  await paper.pdf({ path, format: "A4" });
  expect(readPrinted(path)).toContain("7 pieces");
  await paper.close();

  // Rows are added and removed from the keyboard too, and the focus goes where one would look next.
  await page.focus('[data-add="sticks"]');
  await page.keyboard.press("Enter");
  expect(await focused()).toBe("sticks.1.length");
  await page.keyboard.type("1200");
  await page.focus('[data-remove="sticks.0"]');
  await page.keyboard.press("Enter");
  expect(await page.inputValue('[id="sticks.0.length"]')).toBe("1200");
  expect(await page.evaluate("document.activeElement.dataset.add")).toBe("sticks");
  expect(complaints).toEqual([]);
});
