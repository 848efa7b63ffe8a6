import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { drawPlanView, drawingStyles } from "miterwright/drawing";
import { planFrame } from "miterwright/frame";
import { formatters } from "miterwright/units";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 } });
const { svg, width, height } = drawPlanView(plan, { formats: formatters({ unit: "mm" }), width: 700 });

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Opens a page with a drawing and a square of somebody else's that has one of our attributes. */
async function openPage(name: string, style: string): Promise<OpenPage["page"]> {
  const other =
    '<svg width="9" height="9" class="other"><rect data-fill="wood" width="9" height="9" fill="#010203"/></svg>';
  const html = `<!DOCTYPE html><meta charset="utf-8"><title>${name}</title><style>${style}</style>${svg}${other}`;
  const { page } = await browser.open(browser.serve(`${name}.html`, html));
  return page;
}

/** The colors as the browser computes them: of the paper, of a side, of letters and of their rims, of a joint, and of somebody else's square. */
const COLORS = `[
  ['[data-part="paper"]', "fill"],
  ['[data-part="side"]', "fill"],
  ['[data-part="number"]', "fill"],
  ['[data-part="number"]', "stroke"],
  ['[data-part="joint"]', "stroke"],
  [".other rect", "fill"],
].map(([selector, kind]) => getComputedStyle(document.querySelector(selector))[kind])`;
const SIDE = "getComputedStyle(document.querySelector('[data-part=side]')).fill";

const LIGHT = ["rgb(255, 255, 255)", "rgb(244, 235, 220)", "rgb(29, 29, 27)", "rgb(255, 255, 255)", "rgb(29, 29, 27)"];
const DARK = ["rgb(36, 37, 37)", "rgb(74, 63, 46)", "rgb(233, 232, 228)", "rgb(36, 37, 37)", "rgb(233, 232, 228)"];
const OTHER = "rgb(1, 2, 3)";

describe("the colors of a drawing in a page", () => {
  test("are its own without the style sheet", async () => {
    const page = await openPage("plain", ":root{color-scheme:light dark}");
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await page.evaluate(COLORS)).toEqual([...LIGHT, OTHER]);
  });

  test("are light or dark as the page's color scheme is, and light on paper", async () => {
    const page = await openPage("both", `:root{color-scheme:light dark}${drawingStyles()}`);
    expect(await page.evaluate(COLORS)).toEqual([...LIGHT, OTHER]);
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await page.evaluate(COLORS)).toEqual([...DARK, OTHER]);
    await page.emulateMedia({ colorScheme: "light", media: "print" });
    expect(await page.evaluate(COLORS)).toEqual([...LIGHT, OTHER]);
  });

  test("stay light in a page that has no dark theme", async () => {
    const page = await openPage("light", drawingStyles());
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await page.evaluate(COLORS)).toEqual([...LIGHT, OTHER]);
  });

  test("are those of the page's variables where it sets them", async () => {
    const set = ":root{--miterwright-wood:rgb(1, 20, 30);--miterwright-paper:rgb(40, 50, 60)}";
    const page = await openPage("set", `${drawingStyles()}${set}`);
    expect(await page.evaluate(COLORS)).toEqual([
      "rgb(40, 50, 60)",
      "rgb(1, 20, 30)",
      LIGHT[2],
      "rgb(40, 50, 60)",
      LIGHT[4],
      OTHER,
    ]);
  });
});

test("a file of it and an image show the colors that it has itself", async () => {
  const address = browser.serve("alone.svg", svg);
  const html = `<!DOCTYPE html><title>image</title><style>:root{color-scheme:dark}${drawingStyles()}</style><img src="${address}">`;
  const { page, complaints } = await browser.open(browser.serve("image.html", html));
  const size = "[document.images[0].naturalWidth, document.images[0].naturalHeight]";
  expect(await page.evaluate(size)).toEqual([width, height]);
  const { page: alone } = await browser.open(address);
  expect(await alone.evaluate(SIDE)).toBe(LIGHT[1]);
  expect(complaints).toEqual([]);
});

test("what is under a finger says which side it is", async () => {
  const page = await openPage("touch", "svg{display:block}");
  const sides = await page.evaluate(`[...document.querySelectorAll("[data-part=side]")].map((shape) => {
    const { x, y, width, height } = shape.getBoundingClientRect();
    return document.elementFromPoint(x + width / 2, y + height / 2).closest("[data-side]").dataset.side;
  })`);
  expect(sides).toEqual(["0", "1", "2", "3", "4", "5"]);
});

test("a page with a strict policy may adopt the style sheet", async () => {
  const policy = "default-src 'none'; style-src 'none'; script-src 'unsafe-inline'";
  const html = `<!DOCTYPE html><meta http-equiv="Content-Security-Policy" content="${policy}"><title>strict</title>${svg}`;
  const { page, complaints } = await browser.open(browser.serve("strict.html", html));
  await page.emulateMedia({ colorScheme: "dark" });
  await page.evaluate(`{
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(${JSON.stringify(`:root{color-scheme:light dark}${drawingStyles()}`)});
    document.adoptedStyleSheets.push(sheet);
  }`);
  expect(await page.evaluate(SIDE)).toBe(DARK[1]);
  expect(complaints).toEqual([]);
});
