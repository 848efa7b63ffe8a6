import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { seriousViolations } from "./access.js";
import { fill } from "./bench-page-site.js";
import { serveExample } from "./example-page.js";
import { openBrowser, type OpenBrowser, type OpenPage } from "./open-browser.js";

let browser: OpenBrowser;
const addresses = new Map<string, string>();
beforeAll(async () => {
  browser = await openBrowser();
  for (const name of ["frame-form", "polygon-slider"]) addresses.set(name, await serveExample(browser, name));
});
afterAll(() => browser.close());

const open = (name: string): Promise<OpenPage> => browser.open(addresses.get(name)!);

/** What stands beside a term of a list. */
const fact = (page: Page, term: string): Locator =>
  page.locator("dt", { hasText: new RegExp(`^${term}`) }).locator("xpath=following-sibling::dd[1]");

describe.each(["frame-form", "polygon-slider"])("%s", (name) => {
  test.each([380, 1600])("fits into %i pixels, and has no serious fault of access in light and dark", async (width) => {
    const { page, complaints } = await open(name);
    await page.setViewportSize({ width, height: 900 });
    const wrong = page.locator(name === "frame-form" ? "#width" : "#size");
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      await page.locator("svg").waitFor();
      expect(await seriousViolations(page)).toEqual([]);
      const sound = await wrong.inputValue();
      await wrong.fill("seven and a bit");
      await page.locator("svg").waitFor({ state: "detached" });
      expect(await seriousViolations(page)).toEqual([]);
      expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
      await wrong.fill(sound);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });
});

describe("the frame form", () => {
  test("plans a square picture frame as one does on paper", async () => {
    const { page, complaints } = await open("frame-form");
    await page.getByLabel("Lengths without a unit").selectOption("in");
    await fill(page, { width: "254 mm", height: '8"', clearance: "1/16", sides: "4", slope: "0" });
    await fill(page, { "level-width": "1 1/2", lap: "3/8 in" });
    // 10 in, 1/16 in of room and 1 1/2 in of molding at either side; the sight edge laps by 3/8 in.
    await expect.poll(() => fact(page, "Longest edge").textContent()).toBe('13\u00a01/8"');
    expect(await fact(page, "Shortest edge").textContent()).toBe('9\u00a03/8"');
    expect(await fact(page, "Whole frame").textContent()).toBe('13\u00a01/8" wide, 13\u00a01/8" high');
    expect(await fact(page, "Pieces").textContent()).toBe("4");
    expect([await fact(page, "Miter").textContent(), await fact(page, "Bevel").textContent()]).toEqual(["45°", "0°"]);
    expect(await page.locator("svg title").textContent()).toBe("Frame of 4 sides seen from above");
    const steps = await page.locator("ol > li").allTextContents();
    expect(steps).toHaveLength(2);
    expect(steps[1]).toContain('Length of the finished piece: 13\u00a01/8" along the outermost point');
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("gives both angles of a splayed one", async () => {
    const { page } = await open("frame-form");
    await fill(page, { sides: "6", slope: "20°" });
    // tan(miter) = cos 20 tan 30 and sin(bevel) = sin 20 sin 30.
    await expect.poll(() => fact(page, "Miter").textContent()).toBe("28.48°");
    expect(await fact(page, "Bevel").textContent()).toBe("9.85°");
    await page.close();
  });

  test.each([
    ["sides", "six", "Expected an integer from 3 to 1000."],
    ["sides", "2", "Expected an integer from 3 to 1000."],
    ["sides", "", "Expected an integer from 3 to 1000."],
    ["slope", "steep", "Expected an angle: a number is missing."],
    ["slope", "91", "Expected degrees from -90 to 90."],
    ["level-width", "", "Expected a positive length."],
    ["level-width", "2 in in", "Expected a length: a number is missing."],
    ["lap", "-1", "Expected zero or a positive length."],
    ["clearance", "1,500", "Expected a length: the comma could mark decimals or thousands; write 1.500 or 1500."],
    ["height", "", "Expected a positive length."],
    ["height", "0", "Expected a positive length."],
    ["height", "<img src=x>", "Expected a length: a number is missing."],
  ])("says beside %j what is wrong with %j", async (id, text, words) => {
    const { page, complaints } = await open("frame-form");
    const field = page.locator(`#${id}`);
    const sound = await field.inputValue();
    await field.fill(text);
    await page.locator("#plan svg").waitFor({ state: "detached" });
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    // The line stands right below its field, and is the only one.
    const line = page.locator(`#${id} + p`);
    expect(await line.textContent()).toBe(words);
    expect(await line.getAttribute("id")).toBe(await field.getAttribute("aria-describedby"));
    expect(await page.locator(".issue:not(:empty)").count()).toBe(1);
    expect(await page.locator("#status").textContent()).toContain(await page.locator(`label[for=${id}]`).textContent());
    await field.fill(sound);
    await page.locator("#plan svg").waitFor();
    expect([await field.getAttribute("aria-invalid"), await field.getAttribute("aria-describedby")]).toEqual([
      "false",
      null,
    ]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("says everything that is wrong at once, and a frame that cannot be at its first field", async () => {
    const { page } = await open("frame-form");
    await fill(page, { sides: "1", height: "high", slope: "100" });
    await expect.poll(() => page.locator("[aria-invalid=true]").count()).toBe(3);
    await fill(page, { sides: "3", width: "5", height: "5", slope: "0", lap: "40" });
    await expect
      .poll(() => page.locator("#width-issue").textContent())
      .toBe("The picture is too small for this molding: the sides would have no length at their inside.");
    await page.close();
  });

  test("says why the saw cannot make a cut", async () => {
    const { page } = await open("frame-form");
    await fill(page, { sides: "3" });
    await page.getByLabel("Saw").selectOption("miter saw");
    await expect.poll(() => page.locator("#plan").textContent()).toContain("This saw cannot make the cut:");
    expect(await page.locator("#plan > div li").allTextContents()).toEqual([
      "The miter to the left is more than this saw has: it goes to 50°, and the cut needs 58.43°.",
      "The miter to the right is more than this saw has: it goes to 50°, and the cut needs 58.43°.",
      "The miter to the left is more than this saw has: it goes to 50°, and the cut needs 60°.",
      "The miter to the right is more than this saw has: it goes to 50°, and the cut needs 60°.",
    ]);
    expect(await fact(page, "Miter").textContent()).toBe("none");
    await page.close();
  });

  test("is filled in with the keyboard alone", async () => {
    const { page, complaints } = await open("frame-form");
    for (const text of ["280", "210", "1", "5", "0", "40", "6"]) {
      await page.keyboard.press("Tab");
      await page.keyboard.type(text);
    }
    await page.keyboard.press("Enter");
    await expect.poll(() => fact(page, "Miter").textContent()).toBe("36°");
    expect(complaints).toEqual([]);
    await page.close();
  });
});

describe("the polygon slider", () => {
  test("redraws at every step of the keyboard, with measures that fit each other", async () => {
    const { page, complaints } = await open("polygon-slider");
    const slider = page.getByLabel("Sides", { exact: true });
    await slider.focus();
    await page.keyboard.press("ArrowLeft");
    expect(await page.locator("svg title").textContent()).toBe("Frame of 6 sides seen from above");
    expect(await slider.getAttribute("aria-valuetext")).toBe("6 sides");
    // A hexagon of 12 in across flats: side 12 / sqrt 3, corner to corner twice that, area 72 sqrt 3.
    expect(await fact(page, "Side").textContent()).toBe('6\u00a015/16"');
    expect(await fact(page, "Across corners").textContent()).toBe('13\u00a027/32"');
    expect(await fact(page, "Area").textContent()).toBe("124.7\u00a0in²");
    expect(await fact(page, "Angle inside").textContent()).toBe("120°");
    expect(await page.locator("#summary").textContent()).toBe('6 sides of 6\u00a015/16"');
    for (let sides = 7; sides <= 24; sides += 1) {
      await page.keyboard.press("ArrowRight");
      expect(await page.locator("svg title").textContent()).toBe(`Frame of ${sides} sides seen from above`);
    }
    expect(complaints).toEqual([]);
    await page.close();
  });

  test("follows the measure, the pose and the unit", async () => {
    const { page, complaints } = await open("polygon-slider");
    await page.getByLabel("Known measure").selectOption("side");
    await page.getByLabel("Sizes are written in").selectOption("mm");
    await page.getByLabel("Its size").fill("4 in");
    expect(await fact(page, "Side").textContent()).toBe("101.6\u00a0mm");
    expect(await page.locator("svg text").allTextContents()).toContain("side 101.6 mm");
    await page.getByLabel("It stands on").selectOption("corner-down");
    expect(await page.locator("svg desc").textContent()).toContain("stands on a corner");
    expect(complaints).toEqual([]);
    await page.close();
  });

  test.each([
    ["a yard", "This is no length: a number is missing."],
    ["0", "This is no length: it has to be more than zero."],
    ["", "This is no length: a number is missing."],
  ])("says what is wrong with %j, and shows nothing that is old", async (text, words) => {
    const { page } = await open("polygon-slider");
    const field = page.getByLabel("Its size");
    await field.fill(text);
    expect(await page.getByRole("alert").textContent()).toBe(words);
    expect([await field.getAttribute("aria-invalid"), await field.getAttribute("aria-describedby")]).toEqual([
      "true",
      "issue",
    ]);
    expect([await page.locator("svg").count(), await page.locator("dd").count()]).toEqual([0, 0]);
    await page.close();
  });
});
