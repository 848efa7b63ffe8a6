import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { regularPolygon } from "miterwright/polygon";
import { FIGURES } from "../../docs/figures/every-figure.js";
import { READERS, readerOf } from "../../docs/figures/reader.js";
import { readSite, SITE } from "../docs/site.js";
import { readXml } from "../drawing/read-xml.js";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

const guides = readSite()
  .filter(({ html }) => html.includes("<figure data-figure="))
  .map(({ path, html }) => ({ path, html }));
const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** What the tests ask of an element; the compiler here knows no browser. */
interface InPage {
  matches(selector: string): boolean;
}

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const open = (path: string): Promise<OpenPage> => browser.open(pathToFileURL(join(SITE, path)).href);
const openNarrow = async (path: string): Promise<Page> => {
  const { page } = await open(path);
  await page.setViewportSize({ width: 380, height: 800 });
  return page;
};
const POLYGONS = "documents/Regular_polygons_from_any_measure.html";
const LEVEL = "documents/Why_the_molding_s_width_is_taken_level.html";

const figure = (page: Page, name: string): Locator => page.locator(`figure[data-figure="${name}"]`);
const fact = (holder: Locator, name: string): Locator =>
  holder
    .locator(".figure-facts > div")
    .filter({ has: holder.page().getByText(name, { exact: true }) })
    .locator("dd");
const svgOf = (holder: Locator): Promise<string> => holder.locator(".figure-picture").innerHTML();

test("the built pages hold every figure, as a well-formed picture with a title", () => {
  const held = guides.flatMap(({ html }) => [
    ...html.matchAll(/<figure data-figure="([a-z-]+)"[^>]*><div class="figure-picture">(<svg .*?<\/svg>)<\/div>/g),
  ]);
  expect(new Set(held.map(([, name]) => name))).toEqual(new Set(FIGURES.keys()));
  for (const [, name, svg] of held) {
    const [title] = readXml(svg!).children;
    expect(typeof title === "object" && title.name, name).toBe("title");
  }
});

describe.each(guides)("$path", ({ path, html }) => {
  test("becomes live without a complaint, and axe finds no fault in its figures", async () => {
    const { page, complaints } = await open(path);
    const count = html.split("<figure data-figure=").length - 1;
    await expect.poll(() => page.locator("figure fieldset.figure-controls").count()).toBe(count);
    await page.addScriptTag({ path: AXE });
    const violations = await page.evaluate<{ id: string; nodes: { html: string }[] }[]>(
      `axe.run("figure[data-figure]", { preload: false }).then((results) => results.violations.map(({ id, nodes }) => ({ id, nodes: nodes.map(({ html }) => ({ html })) })))`,
    );
    expect(violations).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("moves every slider by the keyboard, and the picture or its numbers follow", async () => {
    const { page, complaints } = await open(path);
    for (const holder of await page.locator("figure[data-figure]").all()) {
      const state = async (): Promise<string> => (await svgOf(holder)) + (await holder.locator("dl").innerHTML());
      const sliders = await holder.locator("input[type=range]").all();
      expect(sliders.length).toBeGreaterThan(0);
      for (const slider of sliders) {
        const before = await state();
        await slider.focus();
        // A single step of a thickness can be too small for two decimals.
        for (let step = 0; step < 4; step++) await page.keyboard.press("ArrowRight");
        expect(await state()).not.toBe(before);
        // The slider is still the same element and has kept the focus.
        expect(await slider.evaluate((element) => (element as unknown as InPage).matches(":focus"))).toBe(true);
      }
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("keeps its shape at every end of every slider", async () => {
    const { page } = await open(path);
    await page.setViewportSize({ width: 1280, height: 900 });
    for (const holder of await page.locator("figure[data-figure]").all()) {
      const height = async (): Promise<number | undefined> => (await holder.boundingBox())?.height;
      const start = await height();
      expect(start).toBeGreaterThan(100);
      for (const slider of await holder.locator("input[type=range]").all()) {
        for (const key of ["Home", "End"]) {
          await slider.press(key);
          expect(await height()).toBe(start);
        }
        await holder.getByRole("button", { name: "As it was" }).click();
      }
    }
    await page.close();
  });

  test("is not wider than a telephone", async () => {
    const page = await openNarrow(path);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(380);
    await page.close();
  });

  test("shows its pictures with scripts off", async () => {
    const page = await browser.context.newPage();
    const session = await browser.context.newCDPSession(page);
    await session.send("Emulation.setScriptExecutionDisabled", { value: true });
    await page.goto(pathToFileURL(join(SITE, path)).href);
    for (const holder of await page.locator("figure[data-figure]").all()) {
      expect(await holder.locator(".figure-picture > svg").isVisible()).toBe(true);
      expect(await holder.locator("dd").count()).toBeGreaterThan(0);
      expect(await holder.locator("fieldset").count()).toBe(0);
    }
    await page.close();
  });

  test("prints its pictures in dark ink, without menus and controls", async () => {
    const { page } = await open(path);
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await page.locator(".col-sidebar").isVisible()).toBe(false);
    expect(await page.evaluate("getComputedStyle(document.querySelector('.tsd-typography p')).color")).toBe(
      "rgb(0, 0, 0)",
    );
    for (const holder of await page.locator("figure[data-figure]").all()) {
      expect(await holder.locator(".figure-picture > svg").isVisible()).toBe(true);
      expect(await holder.locator("fieldset").isVisible()).toBe(false);
    }
    await page.close();
  });
});

describe.each(readSite().filter(({ path }) => path.startsWith("documents/")))("on a telephone $path", ({ path }) => {
  test("has no text in a picture that is too small to read", async () => {
    const page = await openNarrow(path);
    const small = await page.evaluate<[string, number][]>(`[...document.querySelectorAll("figure svg text")]
      .map((text) => [text.textContent, parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a])
      .filter(([, high]) => !(high >= 9))`);
    expect(small).toEqual([]);
    await page.close();
  });

  test("asks nobody to scroll a table sideways", async () => {
    const page = await openNarrow(path);
    const wide = await page.evaluate<string[]>(`[...document.querySelectorAll(".tsd-typography table")]
      .filter((table) => table.scrollWidth > table.clientWidth + 1)
      .map((table) => table.textContent.slice(0, 80))`);
    expect(wide).toEqual([]);
    await page.close();
  });

  test("gives no heading an empty line, and no trail that only repeats the title", async () => {
    const page = await openNarrow(path);
    const alone = await page.evaluate<string[]>(`[...document.querySelectorAll(".tsd-typography :is(h1, h2, h3)")]
      .filter((heading) => {
        const words = document.createRange();
        words.selectNodeContents(heading.firstChild);
        return heading.querySelector(".tsd-anchor-icon").getBoundingClientRect().top > words.getBoundingClientRect().bottom - 2;
      })
      .map((heading) => heading.textContent)`);
    expect(alone).toEqual([]);
    expect(await page.locator(".tsd-breadcrumb").isVisible()).toBe(false);
    await page.close();
  });
});

describe("a figure's controls", () => {
  test("compute with the library", async () => {
    const { page } = await open(POLYGONS);
    const holder = figure(page, "polygon");
    await holder.getByLabel("Sides", { exact: true }).press("ArrowRight");
    const { side, area } = regularPolygon({ sides: 8, acrossFlats: 400 });
    const mm = readerOf("mm");
    expect(await fact(holder, "side").textContent()).toBe(mm.length(side));
    expect(await fact(holder, "area").textContent()).toBe(mm.area(area));
    await holder.getByLabel("Known measure").selectOption("perimeter");
    expect(await fact(holder, "perimeter").textContent()).toBe("400 mm");
    await holder.getByRole("button", { name: "As it was" }).click();
    expect(await fact(holder, "across flats").textContent()).toBe("400 mm");
    await page.close();
  });

  test("take lengths as people type them, and say what is wrong with others", async () => {
    const { page } = await open(POLYGONS);
    const holder = figure(page, "polygon");
    const field = holder.getByLabel("Its length, typed");
    await field.fill("1' 2 1/2\"");
    await field.press("Enter");
    expect(await fact(holder, "across flats").textContent()).toBe("368.3 mm");
    expect(await field.inputValue()).toBe("368.3 mm");

    const picture = await svgOf(holder);
    for (const [text, problem] of [
      ["1,234", "could mark decimals or thousands"],
      ["5 km", "Expected"],
      ["3 m", "Expected from 50 mm to 2000 mm"],
    ] as const) {
      await field.fill(text);
      await field.press("Enter");
      expect(await field.getAttribute("aria-invalid")).toBe("true");
      expect(await holder.getByRole("alert").filter({ hasText: /./ }).textContent()).toContain(problem);
      expect(await svgOf(holder)).toBe(picture);
    }
    await field.press("Escape");
    expect(await field.inputValue()).toBe("368.3 mm");
    expect(await field.getAttribute("aria-invalid")).toBe(null);

    const sides = holder.getByLabel("Sides, typed");
    await sides.fill("6.5");
    await sides.press("Enter");
    expect(await holder.getByRole("alert").filter({ hasText: /./ }).textContent()).toBe(
      "Expected a whole number from 3 to 24",
    );
    await page.close();
  });

  test("keep a typed value that is finer than what is written", async () => {
    const { page } = await open(POLYGONS);
    const holder = figure(page, "polygon");
    await holder.getByLabel("Known measure").selectOption("side");
    const field = holder.getByLabel("Its length, typed");
    await field.fill("100.04 mm");
    await field.press("Enter");
    expect(await field.inputValue()).toBe("100 mm");
    await field.press("Enter");
    await holder.getByLabel("Known measure").selectOption("perimeter");
    await holder.getByLabel("Known measure").selectOption("side");
    expect(await fact(holder, "perimeter").textContent()).toBe(readerOf("mm").length(7 * 100.04));
    await page.close();
  });

  test("have one choice of units for the whole page", async () => {
    const { page } = await open(LEVEL);
    const [first, second] = [figure(page, "level-width"), figure(page, "measures")];
    expect(await first.getByLabel("Units").locator("option").allTextContents()).toEqual(Object.values(READERS));
    expect(await fact(first, "flat width").textContent()).toBe("52 mm");
    await first.getByLabel("Units").selectOption("in-32");
    expect(await fact(first, "flat width").textContent()).toBe("2 1/16 in");
    expect(await second.getByLabel("Units").inputValue()).toBe("in-32");
    expect(await fact(second, "center to contents' edge").textContent()).toBe(readerOf("in-32").length(130));
    expect(await second.getByLabel("Molding's width", { exact: true }).getAttribute("aria-valuetext")).toBe(
      readerOf("in-32").length(60),
    );
    await page.close();
  });

  test("tell a screen reader the new numbers once nothing changes any more", async () => {
    const { page } = await open(POLYGONS);
    const holder = figure(page, "polygon");
    const spoken = holder.locator("[aria-live=polite]");
    expect(await spoken.textContent()).toBe("");
    await holder.getByLabel("Sides", { exact: true }).press("ArrowRight");
    await expect.poll(() => spoken.textContent(), { timeout: 5000 }).toContain("plan miter: 22.5°");
    await page.close();
  });
});
