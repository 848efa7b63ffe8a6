import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { exampleJob } from "../../docs/bench/example-job.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { strays, straysOf } from "../bench-page/strays.js";
import { choose, fill, openBenchSite, SPLAYED, until, type BenchSite } from "./bench-page-site.js";

/** The page with every text of its catalogs in brackets. */
const PSEUDO = fileURLToPath(new URL("../bench-page/pseudo-language.ts", import.meta.url));

let site: BenchSite;
beforeAll(async () => {
  site = await openBenchSite(PSEUDO);
});
afterAll(() => site.close());

/** What the page holds now, but the names that the example typed into its fields. */
const markupOf = (page: Page): Promise<string> => page.evaluate<string>("document.documentElement.outerHTML");
/** Every hazard of the job that a page shows cites its source as it is printed. */
const HAZARDS = planJob(exampleJob()).plan!;

test("another language reaches every text of the page, whatever is done with it", async () => {
  const { page, complaints } = await site.open();
  expect(strays(await markupOf(page))).toEqual([]);
  await page.click("#example");
  await page.waitForSelector("#card-stock .body svg");
  await page.evaluate("document.querySelectorAll('details').forEach((fold) => { fold.open = true; })");
  for (const unit of ["mm", "in"] as const) {
    await choose(page, "unit", unit);
    await fill(page, { seenGap: "1 mm" });
    await until(page, "document.getElementById('card-stock').querySelector('.stale') === null");
    const markup = await markupOf(page);
    expect(straysOf(markup, HAZARDS)).toEqual([]);
    // Else the plan would not have been told.
    expect(markup.split("\u27e6").length).toBeGreaterThan(500);
  }
  await page.click('[data-add="layers"]');
  await page.click("#copy-link");
  await fill(page, { kerf: "?!", sides: "2", "sticks.0.length": "" });
  expect(await page.locator("#needed button").count()).toBeGreaterThan(2);
  // Hidden cards still hold the former plan.
  expect(straysOf(await markupOf(page), HAZARDS)).toEqual([]);
  await page.evaluate("location.hash = '#v=9'");
  await page.waitForSelector("#notice:visible");
  expect(strays(await page.innerText("#notice"))).toEqual([]);
  expect(complaints).toEqual([]);
});

test("and every text of what it prints", async () => {
  const { page } = await site.open();
  await fill(page, SPLAYED);
  await page.waitForSelector("#card-stock .body svg");
  for (const button of ["print-sheet", "print-section"]) {
    const [paper] = await Promise.all([page.waitForEvent("popup"), page.click(`#${button}`)]);
    await paper.waitForLoadState();
    const { plan } = planJob(exampleJob());
    expect(straysOf(await markupOf(paper), plan!)).toEqual([]);
    await paper.close();
  }
  expect(strays(await page.innerText("#done"))).toEqual([]);
});
