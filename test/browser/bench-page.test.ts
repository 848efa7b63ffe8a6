import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { planFrame, type FramePlan } from "miterwright/frame";
import { molding } from "miterwright/profile";
import { formatAngle, formatLength } from "miterwright/units";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FIELDS, LISTS } from "../../docs/bench/field-table.js";
import type { FieldName } from "../../docs/bench/fields.js";
import { jobToFile } from "../../docs/bench/job-file.js";
import { LANGUAGE } from "../../docs/bench/language.js";
import { jobOf, TRAY } from "../bench-page/jobs.js";
import { meaningOf, tradeWordsIn } from "../bench-page/trade-words.js";
import {
  choose,
  fill,
  openBenchSite,
  printFrom,
  readPrinted,
  SPLAYED,
  until,
  type BenchSite,
  settledStatus,
} from "./bench-page-site.js";

let site: BenchSite;
beforeAll(async () => {
  site = await openBenchSite();
});
afterAll(() => site.close());

/** The same job as {@link SPLAYED}, written for the library. */
function splayedPlan(): FramePlan {
  return planFrame({
    sides: 7,
    slope: 25,
    opening: { contains: { width: 300, height: 220 } },
    profile: molding({ width: 55, thickness: 20, rabbet: { width: 8, depth: 12 } }),
  });
}

/** A length as the page writes it at first: to half a millimeter. */
const length = (value: number): string => formatLength(Math.round(value * 2) / 2, "mm", { digits: 1 });

describe("from the empty form to a printed plan", () => {
  test("takes at most ten fields, and what is printed is right", async () => {
    const { page, complaints } = await site.open();
    expect(Object.keys(SPLAYED).length).toBeLessThanOrEqual(10);
    expect(await page.isDisabled("#print-sheet")).toBe(true);
    await fill(page, SPLAYED);
    const { geometry, sawing } = splayedPlan();
    const { miter, bevel } = sawing.lay!.first;
    const piece = geometry.pieces[0];
    const said = [length(piece.longest.length), formatAngle(miter.reading), formatAngle(bevel.reading)];
    const answer = (await page.innerText("#card-glance")).replaceAll("\u00a0", " ");
    for (const number of said) expect(answer).toContain(number);
    await page.waitForSelector("#card-stock .body svg");

    for (const format of ["A4", "Letter"] as const) {
      const printed = readPrinted(await printFrom(site, page, "print-sheet", format));
      for (const number of said) expect(printed).toContain(number);
      for (const size of Object.values(piece.lengths)) expect(printed).toContain(length(size));
      expect(printed).toContain("Cut list");
      expect(printed).toContain("Warning");
    }
    expect(complaints).toEqual([]);
  });

  test("meets no trade word that the page does not explain", async () => {
    const { page } = await site.open();
    await fill(page, SPLAYED);
    await page.waitForSelector("#card-stock .body svg");
    const text = await page.evaluate<string>("document.body.textContent");
    const explained = await page.evaluate<string[]>("[...document.querySelectorAll('dt')].map((dt) => dt.textContent)");
    const met = tradeWordsIn(text);
    expect(met.length).toBeGreaterThan(20);
    expect(explained).toEqual(expect.arrayContaining(met.map(meaningOf)));
  });

  test("the page itself prints too, without its form", async () => {
    const { page } = await site.open();
    await fill(page, SPLAYED);
    for (const format of ["A4", "Letter"] as const) {
      const path = join(site.scratch, `page-${format}.pdf`);
      await page.pdf({ path, format });
      const printed = readPrinted(path);
      expect(printed).toContain("Step by step");
      expect(printed).toContain(length(splayedPlan().geometry.pieces[0].longest.length));
      expect(printed).not.toContain("What goes in?");
    }
  });

  test("two level measures are enough", async () => {
    const { page, complaints } = await site.open();
    await choose(page, "known", "level");
    await fill(page, { width: "300", height: "220", sides: "7", slope: "25", levelWidth: "47", lap: "6" });
    expect(await settledStatus(page)).toMatch(/^The plan is ready: 7 pieces of/);
    await page.click("#print-section");
    expect(await page.innerText("#done")).toBe("The profile can be drawn when the molding is known by its dimensions.");
    expect(complaints).toEqual([]);
  });

  test("a gap at the dry fit becomes a new setting", async () => {
    const { page } = await site.open();
    await fill(page, { ...SPLAYED, seenGap: "1" });
    expect(await page.innerText("#card-dry-fit .body")).toMatch(
      /Open outside[\s\S]*The miter scale then shows [\d.]+° instead of [\d.]+°\./,
    );
    await fill(page, { seenGap: "much" });
    expect(await page.innerText("#seenGap-error")).toBe("This can't be read as a length: a number is missing.");
  });
});

describe("a job is kept", () => {
  const fragmentOf = async (fields: Readonly<Record<string, string>>): Promise<string> => {
    const { page } = await site.open();
    await fill(page, fields);
    // The last field is typed after the slope, and the link follows a while behind.
    await until(page, `location.hash.includes("${Object.keys(fields).at(-1)!}=")`);
    return new URL(page.url()).hash.slice(1);
  };

  test("in its link", async () => {
    const fragment = await fragmentOf(SPLAYED);
    const { page, complaints } = await site.open(fragment);
    for (const [key, text] of Object.entries(SPLAYED)) expect(await page.inputValue(`[id="${key}"]`)).toBe(text);
    expect(await settledStatus(page)).toMatch(/^The plan is ready: 7 pieces/);
    await page.click("#copy-link");
    expect(await page.inputValue("#link")).toContain(`#${fragment}`);
    await page.evaluate('location.hash = "#v=1&sides=5"');
    await until(page, "document.getElementById('sides').value === '5'");
    expect(await page.inputValue("#width")).toBe("");
    expect(complaints).toEqual([]);
  });

  test("in a file", async () => {
    const { page, complaints } = await site.open(await fragmentOf(SPLAYED));
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save-file")]);
    expect(download.suggestedFilename()).toBe("frame.json");
    const path = join(site.scratch, "frame.json");
    await download.saveAs(path);
    await page.click("#clear");
    expect(await page.inputValue("#width")).toBe("");
    await page.setInputFiles("#open-file", path);
    await until(page, "document.getElementById('width').value === '300'");
    expect(await page.inputValue('[id="sticks.0.length"]')).toBe("2400");
    expect(complaints).toEqual([]);
  });

  test("and a broken link or file is said, and changes nothing", async () => {
    const { page } = await site.open("v=9&sides=5");
    expect(await page.innerText("#notice")).toMatch(/^This link was made by a newer bench page \(version 9\)/);
    await fill(page, { sides: "8" });
    await page.setInputFiles("#open-file", { name: "x.json", mimeType: "application/json", buffer: Buffer.from("{") });
    await until(page, "document.getElementById('notice').textContent.includes('not JSON')");
    expect(await page.inputValue("#sides")).toBe("8");
  });
});

describe("bad input", () => {
  /** Choices under which every field is asked once, and what makes a plan of them. */
  const ROUNDS: readonly (readonly [
    choices: Partial<Record<FieldName, string>>,
    sound: Readonly<Record<string, string>>,
  ])[] = [
    [
      { holds: "contains", known: "dimensions", rough: "square", species: "white ash", hangs: "wire" },
      { sides: "6", thickness: "20", moldingWidth: "50", width: "300", height: "200" },
    ],
    [
      { holds: "measure", known: "level", rough: "square" },
      { sides: "6", levelWidth: "40", size: "200" },
    ],
  ];

  test("is said in words beside every field that can be typed wrong, and goes when it is put right", async () => {
    const { page, complaints } = await site.open();
    const seen = new Set<string>();
    for (const [choices, sound] of ROUNDS) {
      await page.click("#clear");
      await page.evaluate("document.querySelectorAll('details.finer').forEach((fold) => { fold.open = true; })");
      for (const [field, value] of Object.entries(choices)) await choose(page, field as FieldName, value);
      await fill(page, sound);
      await fill(page, { "sticks.0.length": "2400", "layers.0.thickness": "2", roughAllowance: "10" });
      const ids = await page.evaluate<string[]>(
        "[...document.querySelectorAll('.field input')].filter((input) => input.offsetParent !== null).map((input) => input.id)",
      );
      for (const id of ids) {
        const [list, , column] = id.split(".");
        const { kind } = column === undefined ? FIELDS[id as FieldName] : LISTS[list as "sticks" | "layers"][column]!;
        if (kind === "text" || kind === "lines") continue;
        seen.add(id);
        const before = await page.inputValue(`[id="${id}"]`);
        await fill(page, { [id]: "?!" });
        const error = page.locator(`[id="${id}-error"]`);
        expect(await error.isVisible(), id).toBe(true);
        expect(await error.innerText(), id).toMatch(/^This .*\.$/);
        expect(await page.getAttribute(`[id="${id}"]`, "aria-invalid"), id).toBe("true");
        await fill(page, { [id]: before });
        expect(await error.isVisible(), id).toBe(false);
        expect(await page.getAttribute(`[id="${id}"]`, "aria-invalid"), id).toBe(null);
      }
    }
    const typed = Object.entries(FIELDS).filter(([, { kind }]) => !["choice", "text", "lines"].includes(kind));
    expect([...seen]).toEqual(expect.arrayContaining(typed.map(([name]) => name)));
    expect(seen).toContain("sticks.0.cost");
    expect(complaints).toEqual([]);
  });

  test("is listed, and leads to its field", async () => {
    const { page } = await site.open();
    await fill(page, { ...SPLAYED, sides: "2" });
    expect(await settledStatus(page)).toBe("Something in the form can't be used yet:");
    expect(await page.innerText("#sides-error")).toBe("This has to be a whole number from 3 to 1000.");
    await page.click("#needed button");
    expect(await page.evaluate("document.activeElement.id")).toBe("sides");
    expect(await page.isDisabled("#print-sheet")).toBe(true);
  });
});

describe("a long fit", () => {
  /** A rack of many odd lengths and costs, of which the cheapest choice takes long to prove. */
  function oddRack(): string {
    let seed = 1;
    const draw = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const sticks = Array.from({ length: 60 }, (_, index) => ({
      name: `s${index}`,
      length: String(2000 + Math.floor(draw() * 30000) / 10),
      count: String(1 + Math.floor(draw() * 3)),
      cost: String(2000 + Math.floor(draw() * 300000) / 100),
    }));
    return jobToFile(jobOf({ ...TRAY, frames: "120" }, { sticks }));
  }

  test("shows how it goes, leaves the page awake, and can be stopped", async () => {
    const { page, complaints } = await site.open();
    const path = join(site.scratch, "rack.json");
    writeFileSync(path, oddRack());
    await page.setInputFiles("#open-file", path);
    await page.waitForSelector("#stop:visible");
    await until(page, "document.getElementById('progress').textContent.includes('proven to')");
    await fill(page, { title: "Still awake" });
    expect(await page.isVisible("#stop")).toBe(true);
    await page.click("#print-sheet");
    expect(await page.innerText("#done")).toMatch(/^The sticks are still being fitted/);
    const [paper] = await Promise.all([page.waitForEvent("popup"), page.click("#stop")]);
    await paper.waitForLoadState();
    expect(await paper.title()).toBe("Still awake");
    expect(await paper.innerText("body")).toContain("Cut list");
    expect(await page.isVisible("#stop")).toBe(false);
    expect(await page.innerText("#card-stock .body")).toMatch(/The search was stopped\. A cheaper way may exist/);
    expect(complaints).toEqual([]);
  });

  test("of pieces that fit no stick says so", async () => {
    const { page } = await site.open();
    await fill(page, { ...SPLAYED, "sticks.0.length": "50" });
    await page.waitForSelector("#card-stock strong");
    expect(await page.innerText("#card-stock .body")).toBe(
      "The sticks don't suit: a piece is longer than every stick in the rack.",
    );
  });
});

/** The bytes of files of the page on their way, compressed. */
function weigh(files: readonly string[]): number {
  const weights = files.map((name) => gzipSync(readFileSync(join(site.folder, name)), { level: 9 }).length);
  return weights.reduce((sum, weight) => sum + weight, 0);
}

test("the page weighs at most 150 kB on its way, and the search 20 kB more, once sticks are typed", async () => {
  expect(weigh(["index.html", "bench.css", "bench.js"])).toBeLessThanOrEqual(150_000);
  expect(weigh(["stock.js"])).toBeLessThanOrEqual(20_000);
  const { page, complaints } = await site.open();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  const { "sticks.0.length": length, ...frame } = SPLAYED;
  await fill(page, frame);
  await page.waitForTimeout(500);
  expect(asked).toEqual([]);
  await fill(page, { "sticks.0.length": length! });
  await page.waitForSelector("#card-stock .body svg");
  await fill(page, { sides: "8" });
  await until(page, "document.querySelector('#card-stock .body').textContent.includes('8 × ')");
  expect(asked.filter((address) => address.endsWith("/stock.js")).length).toBe(1);
  expect(complaints).toEqual([]);
});

test("a search whose script is missing is said to have failed", async () => {
  const [script, away] = [join(site.folder, "stock.js"), join(site.scratch, "stock.js")];
  renameSync(script, away);
  try {
    const { page } = await site.open();
    await fill(page, SPLAYED);
    await page.waitForSelector("#card-stock strong");
    expect(await page.innerText("#card-stock .body")).toBe(LANGUAGE.page.rack.refused.failed);
    expect(await settledStatus(page)).toContain(LANGUAGE.page.rack.refused.failed);
  } finally {
    renameSync(away, script);
  }
});
