import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readNavigation, readSearchRows, type NavigationEntry } from "../docs/site-data.js";
import { linkFaults, readSite, SITE, type SitePage } from "../docs/site.js";
import { listEntries } from "../house/project.js";
import { openBrowser, type OpenBrowser } from "./open-browser.js";

const pages: ReadonlyMap<string, SitePage> = new Map(readSite().map((page) => [page.path, page]));

/** A public function or class, and where its page is. */
interface Findable {
  readonly name: string;
  readonly page: string;
}

async function listFindable(): Promise<Findable[]> {
  const found: Findable[] = [];
  for (const entry of listEntries().filter((name) => name !== "miterwright")) {
    const module = entry.replace("miterwright/", "");
    const exported = (await import(/* @vite-ignore */ entry)) as Record<string, unknown>;
    for (const [name, value] of Object.entries(exported)) {
      if (typeof value !== "function") continue;
      const isClass = /^class\b/.test(Function.prototype.toString.call(value));
      found.push({ name, page: `${isClass ? "classes" : "functions"}/${module}.${name}.html` });
    }
  }
  return found;
}
const functions = await listFindable();

/** The pages that a page's own text links to, by their paths from the site's root. */
function linksOf(path: string): string[] {
  const base = new URL(path, "https://site/");
  return [...pages.get(path)!.html.matchAll(/<a\b[^>]*?\shref="([^"#]+)/g)].map(([, href]) =>
    decodeURI(new URL(href!, base).pathname.slice(1)),
  );
}

const everyEntry = (entries: readonly NavigationEntry[]): NavigationEntry[] =>
  entries.flatMap((entry) => [entry, ...everyEntry(entry.children ?? [])]);

test("every function and class has a page, which names it", () => {
  expect(functions.length).toBeGreaterThan(80);
  const nameless = functions.filter(({ name, page }) => !(pages.get(page)?.html ?? "").includes(name));
  expect(nameless).toEqual([]);
});

test("every one is two clicks from the front page at most: on a module, which all pages list, and on its name", () => {
  const oneClick = new Set([...readNavigation().flatMap(({ path }) => path ?? []), ...linksOf("index.html")]);
  const twoClicks = new Set([...oneClick, ...[...oneClick].filter((path) => pages.has(path)).flatMap(linksOf)]);
  expect(functions.filter(({ page }) => !twoClicks.has(page))).toEqual([]);
});

test("the front page's own text leads to every guide and to the bench page", () => {
  const [, text = ""] = /<div class="tsd-panel tsd-typography">(.*)/s.exec(pages.get("index.html")!.html) ?? [];
  const targets = [...text.matchAll(/<a href="([^"]+)"/g)].map(([, href]) => href!);
  const guides = [...pages.keys()].filter((path) => path.startsWith("documents/"));
  expect(guides.length).toBeGreaterThan(15);
  expect([...guides, "bench/index.html"].filter((path) => !targets.includes(path))).toEqual([]);
});

test("what scripts write links to leads somewhere too", () => {
  const navigation = everyEntry(readNavigation()).flatMap(({ path }) => path ?? []);
  const targets = [...new Set([...navigation, ...readSearchRows().map(({ url }) => url)])];
  expect(targets.length).toBeGreaterThan(500);
  const html = targets.map((target) => `<a href="${target.replaceAll('"', "&quot;")}">x</a>`).join("");
  const written: SitePage = { path: "written.html", html };
  expect(linkFaults([...pages.values(), written], () => false).filter(({ page }) => page === "written.html")).toEqual(
    [],
  );
});

describe("in the browser", () => {
  let browser: OpenBrowser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  const front = pathToFileURL(join(SITE, "index.html")).href;

  test("the search finds every one by its name, as the first of its results", async () => {
    const { page, complaints } = await browser.open(front);
    await page.click("#tsd-search-trigger");
    const input = page.locator("#tsd-search-input");
    const lost: string[] = [];
    for (const { name, page: path } of functions) {
      await input.fill(name);
      const found = page.locator(`#tsd-search-results li:first-child a[href$="/${path}"]`);
      await found.waitFor({ state: "attached", timeout: 3000 }).catch(() => lost.push(name));
    }
    expect(lost).toEqual([]);
    expect(complaints).toEqual([]);
  }, 180_000);

  test.each([
    ["dry fit", "documents/When_the_last_joint_gapes.html", 3],
    ["rabbet", "documents/Sections_and_rabbets.html", 1],
    ["cradle", "documents/From_a_brief_to_a_sheet.html", 10],
    ["kerf", "documents/Fitting_stock.html", 10],
    ["offcuts", "documents/Fitting_stock.html", 3],
    ["shop sheet", "documents/From_a_brief_to_a_sheet.html", 2],
    ["bench", "bench/index.html", 1],
    ["dry fit", "bench/index.html", 5],
  ])("the search for %j leads to %s, among the first %i", async (words, path, first) => {
    const { page, complaints } = await browser.open(front);
    await page.click("#tsd-search-trigger");
    await page.locator("#tsd-search-input").fill(words);
    const results = page.locator("#tsd-search-results li a");
    await results.first().waitFor({ state: "attached" });
    const hrefs = `[...document.querySelectorAll("#tsd-search-results li a")].map(({ href }) => href)`;
    const found = await page.evaluate<string[]>(hrefs);
    expect(found.slice(0, first).filter((href) => href.endsWith(`/${path}`))).toHaveLength(1);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test.each([
    ["compoundMiter", "miter"],
    ["shopOrder", "frame"],
    ["precisePolygon", "precise"],
  ])("%s is reached by two clicks", async (name, module) => {
    const { page, complaints } = await browser.open(front);
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.locator(`.tsd-navigation a[href$="modules/${module}.html"]`).first().click();
    await page.locator(`.col-content a[href$="functions/${module}.${name}.html"]`).first().click();
    expect(await page.locator("h1").textContent()).toContain(name);
    // The navigation breaks off the link's own way to a module, to open its list first.
    expect(complaints.filter((complaint) => !/^failed: .*\/modules\//.test(complaint))).toEqual([]);
  });
});
