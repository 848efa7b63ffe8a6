import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Page } from "playwright-core";
import { choose, fill, openBenchSite, SPLAYED, until, type BenchSite, settledStatus } from "./bench-page-site.js";

let site: BenchSite;
beforeAll(async () => {
  site = await openBenchSite();
});
afterAll(() => site.close());

const valuesOf = async (page: Page, keys: readonly string[]): Promise<Record<string, string>> =>
  Object.fromEntries(
    await Promise.all(keys.map(async (key) => [key, await page.inputValue(`[id="${key}"]`)] as const)),
  );

describe("what was typed", () => {
  test("is converted when the unit changes, and comes back as it was", async () => {
    const { page, complaints } = await site.open();
    await page.evaluate("document.querySelectorAll('details.finer').forEach((fold) => { fold.open = true; })");
    await fill(page, { ...SPLAYED, "layers.0.thickness": "2.54", kerf: "3.2", title: "300" });
    const keys = [...Object.keys(SPLAYED), "layers.0.thickness", "kerf", "title"];
    const typed = await valuesOf(page, keys);
    await choose(page, "unit", "in");
    expect(await valuesOf(page, keys)).toEqual({
      ...typed,
      width: "11.811",
      height: "8.6614",
      moldingWidth: "2.1654",
      thickness: "0.7874",
      rabbetWidth: "0.31496",
      rabbetDepth: "0.4724",
      kerf: "0.12598",
      "sticks.0.length": "94.4882",
      "layers.0.thickness": "0.1",
    });
    // Where the frame is 300 mm and a little more, it is 11 13/16 in and a little more.
    expect(await settledStatus(page)).toMatch(/^The plan is ready: 7 pieces of 8\s\d+\/\d+"/);
    await until(page, "location.hash.includes('width=11.811')");
    for (const unit of ["ft", "cm", "mm"]) await choose(page, "unit", unit);
    expect(await valuesOf(page, keys)).toEqual(typed);
    expect(complaints).toEqual([]);
  });

  test("is not converted by a job that is opened in another unit", async () => {
    const { page } = await site.open();
    await fill(page, SPLAYED);
    await page.evaluate('location.hash = "#v=1&unit=in&width=12"');
    await until(page, "document.getElementById('unit').value === 'in'");
    expect(await page.inputValue("#width")).toBe("12");
    await choose(page, "unit", "mm");
    expect(await page.inputValue("#width")).toBe("304.8");
  });

  test("is explained as it is meant: a slope has its own help and default off plumb and as a spring angle", async () => {
    const { page } = await site.open();
    const said = async (): Promise<unknown> => [
      await page.textContent("#slope-explain"),
      await page.getAttribute("#slope", "placeholder"),
    ];
    const slope = await said();
    expect(slope).toEqual([expect.stringMatching(/^0 lies flat, 90 stands upright/), "0, it lies flat"]);
    await page.evaluate("document.querySelectorAll('details.finer').forEach((fold) => { fold.open = true; })");
    await choose(page, "slopeAs", "plumb");
    expect(await said()).toEqual([
      expect.stringMatching(/^Degrees off plumb: 0 stands upright like a box, 90 lies flat/),
      "90, it lies flat",
    ]);
    await choose(page, "slopeAs", "spring");
    expect(await said()).toEqual([expect.stringMatching(/^The spring angle/), "90, it lies flat"]);
    // What the empty field says is what is taken.
    await fill(page, { ...SPLAYED, slope: "" });
    const flat = await settledStatus(page);
    await fill(page, { slope: "90" });
    expect(await settledStatus(page)).toBe(flat);
    await choose(page, "slopeAs", "slope");
    expect(await said()).toEqual(slope);
  });
});

describe("a plan that can't be made", () => {
  test.each([
    ["kerf", "1e99"],
    ["kerf", "1e100"],
    ["moldingWidth", "1e99"],
  ])("leaves nothing of the former one on the page (%s %s)", async (key, text) => {
    const { page } = await site.open();
    await fill(page, SPLAYED);
    await page.waitForSelector("#card-stock .body svg");
    const former = await page.innerText("#plan");
    await fill(page, { [key]: text });
    await page.waitForTimeout(700);
    if ((await page.innerText("#essence")) !== "No plan yet") {
      // Then it is another plan, of what stands in the fields now.
      expect(former).not.toContain(await page.innerText("#card-glance .facts"));
      return;
    }
    expect(await settledStatus(page)).not.toMatch(/ready/);
    expect(await page.locator(".card:visible svg").count()).toBe(0);
    expect(await page.isDisabled("#print-sheet")).toBe(true);
    expect(await page.locator("[aria-invalid='true']").count()).toBeLessThan(3);
    await fill(page, { [key]: SPLAYED[key] ?? "3" });
    expect(await settledStatus(page)).toMatch(/^The plan is ready/);
  });

  test("by a fault of the page itself is said, and the next one is planned", async () => {
    const { page, complaints } = await site.open();
    await fill(page, SPLAYED);
    // A browser in which one step of the drawing fails.
    await page.evaluate("globalThis.hypot = Math.hypot; Math.hypot = () => { throw new Error('planted'); }");
    await fill(page, { sides: "9" });
    expect(await settledStatus(page)).toMatch(/^No plan: this page failed/);
    expect(await page.innerText("#essence")).toBe("No plan yet");
    expect(await page.locator(".card:visible svg").count()).toBe(0);
    expect(await page.isDisabled("#print-sheet")).toBe(true);
    expect(complaints.join()).toContain("planted");
    await page.evaluate("Math.hypot = globalThis.hypot");
    await fill(page, { sides: "8" });
    expect(await settledStatus(page)).toMatch(/^The plan is ready: 8 pieces/);
  });
});

describe("the way back", () => {
  test("leads to the job that was there before the form was emptied or another job opened", async () => {
    const { page, complaints } = await site.open();
    await fill(page, SPLAYED);
    await page.click("#clear");
    expect(await page.inputValue("#width")).toBe("");
    await page.goBack();
    await until(page, "document.getElementById('width').value === '300'");
    expect(await page.inputValue('[id="sticks.0.length"]')).toBe("2400");
    expect(await settledStatus(page)).toMatch(/^The plan is ready: 7 pieces/);
    await page.goForward();
    await until(page, "document.getElementById('width').value === ''");
    await fill(page, { width: "111" });
    await page.click("#example");
    expect(await page.inputValue("#width")).toBe("340");
    await page.goBack();
    await until(page, "document.getElementById('width').value === '111'");
    expect(complaints).toEqual([]);
  });
});

test("a junk link of a megabyte is not echoed", async () => {
  const { page } = await site.open();
  const junk = "'#v=1&sides=5&width=300&' + 'x'.repeat(1e6) + '=1&a=1&b=1&c=1&d=1&e=1&f=1'";
  await page.evaluate(`location.hash = ${junk}`);
  await until(page, "document.getElementById('width').value === '300'");
  expect(await page.innerText("#notice")).toMatch(
    /^Left out, since this page can't take it: x{40}…, a, b, c, d and 2 more\.$/,
  );
});

describe("at 380 pixels", () => {
  /** Every number with its fraction or its unit that is broken over two lines, as Chromium lays it out. */
  const BROKEN = `(() => {
    const broken = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (node.parentElement.closest("svg, style, form, [hidden]") !== null) continue;
      for (const { 0: text, index } of node.data.matchAll(/\\d+\\s\\d+\\/\\d+"?|\\d+'\\s\\d[\\d/\\s]*"|[\\d.]+\\s(?:mm|cm|kg|lb|lbf|N)\\b/g)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + text.length);
        if (new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1) broken.push(text);
      }
    }
    return broken;
  })()`;

  test.each(["in", "ft", "mm"])(
    "no number is parted from its fraction or its unit, on page and sheet (%s)",
    async (unit) => {
      const { page } = await site.open();
      await page.setViewportSize({ width: 380, height: 800 });
      await fill(page, { ...SPLAYED, title: "A tray" });
      await choose(page, "unit", unit);
      await until(page, "document.querySelector('#card-stock .body svg') !== null");
      expect(await page.evaluate(BROKEN)).toEqual([]);
      const [paper] = await Promise.all([page.waitForEvent("popup"), page.click("#print-sheet")]);
      await paper.waitForLoadState();
      for (const width of [380, 718]) {
        await paper.setViewportSize({ width, height: 900 });
        expect(await paper.evaluate(BROKEN)).toEqual([]);
      }
    },
  );

  test("a square frame that misses its picture is not ready, and says first by how much", async () => {
    const { page } = await site.open();
    await page.setViewportSize({ width: 380, height: 800 });
    await choose(page, "unit", "in");
    await fill(page, { width: "16", height: "20", sides: "4", moldingWidth: "1 1/2", thickness: "3/4" });
    await fill(page, { rabbetWidth: "1/4", rabbetDepth: "3/8" });
    const status = await settledStatus(page);
    expect(status).toMatch(/^Not ready to cut\. /);
    expect(status).toContain('1 3/4"');
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(380);
  });

  test("a rack that runs short is not ready", async () => {
    const { page } = await site.open();
    await fill(page, { ...SPLAYED, "sticks.0.count": "1", "sticks.0.length": "500" });
    expect(await settledStatus(page)).toMatch(/^Not ready to cut\. The sticks can't give all pieces/);
  });
});
