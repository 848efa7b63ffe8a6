import { afterAll, beforeAll, expect, test } from "vitest";
import { openBrowser, type OpenBrowser } from "./open-browser.js";

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const page = (body: string): string =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Sample</title><body>${body}</body></html>`;

/** What the tests ask of an element of a drawing; the compiler here knows no browser. */
interface Measured {
  getBBox(): { readonly width: number };
}

const DRAWING = `
  <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" width="400" height="200" font-family="sans-serif">
    <path d="M20 80L60 20H140L180 80Z" fill="none" stroke="black" stroke-width="2"/>
    <text id="narrow" x="20" y="95" font-size="8">iiiiii</text>
    <text id="wide" x="100" y="95" font-size="8">WWWWWW</text>
  </svg>`;

test("a drawing shows, with real letters and nothing to complain about", async () => {
  const { page: opened, complaints } = await browser.open(browser.serve("drawing.html", page(DRAWING)));
  const width = (id: string): Promise<number> =>
    opened.locator(`#${id}`).evaluate((text) => (text as unknown as Measured).getBBox().width);
  // A machine without fonts shows boxes of one width, or nothing.
  const [narrow, wide] = [await width("narrow"), await width("wide")];
  expect(narrow).toBeGreaterThan(0);
  expect(wide).toBeGreaterThan(2 * narrow);
  const outline = await opened.locator("path").evaluate((path) => (path as unknown as Measured).getBBox().width);
  expect(outline).toBe(160);
  expect(complaints).toEqual([]);
});

test("a page that fails complains", async () => {
  const body = `
    <script>console.error("said"); console.warn("warned"); console.log("told");</script>
    <script>throw new Error("thrown");</script>
    <img src="missing.png" alt="">`;
  const { complaints } = await browser.open(browser.serve("failing.html", page(body)));
  expect(complaints).toEqual(
    expect.arrayContaining([
      "error: said",
      "warning: warned",
      "uncaught: thrown",
      expect.stringMatching(/^failed: file:.*missing\.png$/),
    ]),
  );
  expect(complaints.join()).not.toContain("told");
});

test("a page that does what its policy forbids complains", async () => {
  const policy = "default-src 'none'; script-src 'unsafe-inline'; require-trusted-types-for 'script'";
  const forbidden = `<!doctype html><html lang="en"><head><meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}"><title>Sample</title></head>
    <body><p style="color: red">red</p><style>p { margin: 0 }</style>
    <script>document.body.innerHTML = "parsed";</script></body></html>`;
  const { complaints } = await browser.open(browser.serve("forbidden.html", forbidden));
  expect(complaints).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/^error: forbidden by the policy: style-src-attr inline/),
      expect.stringMatching(/^error: forbidden by the policy: style-src-elem inline/),
      expect.stringMatching(/^error: forbidden by the policy: require-trusted-types-for trusted-types-sink/),
    ]),
  );
});
