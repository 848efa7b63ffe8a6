import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readJobs, readMoldings } from "../../examples/sheets-from-csv/read-jobs.js";
import { readProjectFile } from "../house/project.js";
import { runExample, type ScriptRun } from "./run-example.js";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "miterwright-sheets-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

const SCRIPT = "sheets-from-csv/sheets-from-csv.ts";
const HEAD = "job,frames,sides,slope,width,height,clearance,molding";
const GOOD = "Good one,1,4,0,300,300,,birch 40";
const MOLDINGS = readProjectFile("examples/sheets-from-csv/moldings.csv");

/** Runs the script on tables of the test's own. */
function runOn(jobs: readonly string[], moldings: string = MOLDINGS): ScriptRun {
  writeFileSync(join(folder, "jobs.csv"), [HEAD, ...jobs].join("\r\n"));
  writeFileSync(join(folder, "moldings.csv"), moldings);
  return runExample(SCRIPT, folder, ["jobs.csv", "moldings.csv", "made"]);
}

const made = (file: string): string => readFileSync(join(folder, "made", file), "utf8");

/** The index's cuts: the setting, and the cells of each row below it. */
function cutsOf(html: string): { readonly setting: string; readonly cells: readonly string[] }[] {
  return [...html.matchAll(/<h3>([^<]+)<\/h3><p>Sticks lie[\s\S]*?<tbody>([\s\S]*?)<\/tbody>/g)].flatMap(
    ([, setting, body]) =>
      [...body!.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row]) => ({
        setting: setting!,
        cells: [...row!.matchAll(/<td>(.*?)<\/td>/g)].map(([, cell]) => cell!),
      })),
  );
}

test("the batch of the example is done without a complaint", () => {
  const { status, stdout, stderr } = runExample(SCRIPT, folder);
  expect([status, stderr, stdout]).toEqual([0, "", "5 sheets and an index written to out/sheets\n"]);
  const files = readdirSync(join(folder, "out/sheets"));
  expect(files.sort()).toEqual([
    "2-tide-chart-east-wall.html",
    "3-moth-study.html",
    "4-clock-old-pier.html",
    "5-seed-tray.html",
    "6-fern-print.html",
    "index.html",
  ]);
  const sheet = readFileSync(join(folder, "out/sheets/4-clock-old-pier.html"), "utf8");
  expect(sheet).toContain("<h1>Clock &quot;Old Pier&quot;</h1>");
  const index = readFileSync(join(folder, "out/sheets/index.html"), "utf8");
  for (const file of files.slice(0, -1)) expect(index).toContain(`href="${file}"`);
  const cuts = cutsOf(index);

  // Every piece gets one rough and two ends: sides times frames.
  const pieces = {
    "Tide chart, east wall": 16,
    "Moth study": 6,
    'Clock "Old Pier"': 36,
    "Seed tray": 24,
    "Fern print": 4,
  };
  for (const [name, count] of Object.entries(pieces)) {
    const own = cuts.filter(({ cells }) => cells[0] === name.replaceAll('"', "&quot;"));
    expect(own.map(({ cells }) => cells.slice(1, 3))).toEqual([
      ["crosscut the blank", `${count} times`],
      ["first end", `${count} times`],
      ["second end", `${count} times`],
    ]);
  }

  // Flat frames have half the turn as their miter; for 6 sides at 25, tan m = cos 25 tan 30 and sin b = sin 25 sin 30.
  const settings = [...new Set(cuts.map(({ setting }) => setting))];
  expect(settings.sort()).toEqual([
    "miter 15° to the left, blade upright",
    "miter 15° to the right, blade upright",
    "miter 22.5° to the left, blade upright",
    "miter 22.5° to the right, blade upright",
    "miter 27.62° to the left, blade 12.2° to the left",
    "miter 27.62° to the right, blade 12.2° to the left",
    "miter 45° to the left, blade upright",
    "miter 45° to the right, blade upright",
    "square, blade upright",
  ]);
  // By hand: 4 x 511 + 16 x 260.3 + 36 x 183.4 mm and 56 cuts of 3.2 mm are 12,990 mm, so more than 5 sticks of 2400 mm; and 7 roughs of
  // 261.5 mm or more go into 2100 mm, but not 8, so 30 take 5 sticks.
  expect(index).toContain("Sticks: 6 of birch 40 (no cheaper way exists).");
  expect(index).toContain("Sticks: 5 of ash tray (no cheaper way exists).");
  // What is set anew is said in words, never by its code.
  expect(index).toContain("Set anew: the saw, ");
  expect(index).toMatch(/Set anew: [^.]*how the sticks lie/);
  expect(index).not.toMatch(/Set anew: [^.]*\blay\b/);
  // Two jobs of one setting are cut together, and the print of 297 x 420 mm with 1.5 mm of room is a square one.
  expect(cuts.filter(({ setting }) => setting.includes("27.62")).map(({ cells }) => cells[0])).toEqual([
    "Moth study",
    "Seed tray",
    "Moth study",
    "Seed tray",
  ]);
  const fern = cuts.find(({ cells }) => cells[0] === "Fern print" && cells[1] === "second end")!;
  // 423 mm at the wall, and at either side 34 mm of molding beyond the lip of 6 mm.
  expect(fern.cells[3]).toBe("491\u00a0mm along the outer edge at the face");
});

describe("a row that is not sound", () => {
  test.each([
    ["Bad,1,2,0,300,300,,birch 40", "sides: Expected `sides` to be an integer from 3 to 1000, got 2 (number)."],
    ["Bad,1,six,0,300,300,,birch 40", "sides: Expected a whole number from 1 to 999."],
    ["Bad,0,6,0,300,300,,birch 40", "frames: Expected a whole number from 1 to 999."],
    ["Bad,1,6,91,300,300,,birch 40", "slope: Expected `slope` to be degrees from -90 to 90, got 91 (number)."],
    [
      "Bad,1,6,steep,300,300,,birch 40",
      'slope: Expected `text` to be an angle, got "steep" (string): at character 1, a number is missing.',
    ],
    [
      "Bad,1,6,0,wide,300,,birch 40",
      'width: Expected `text` to be a length, got "wide" (string): at character 1, a number is missing.',
    ],
    [
      "Bad,1,6,0,300,,,birch 40",
      "height: Expected `opening.contains.height` to be a positive length (1e-100 to 1e100), got undefined.",
    ],
    [
      "Bad,1,6,0,300,300,-1,birch 40",
      "clearance: Expected `clearance` to be zero or a positive length (up to 1e100), got -1 (number).",
    ],
    ["Bad,1,6,0,300,300,,beech", "molding: Expected one of birch 40, ash tray."],
    [",1,6,0,300,300,,birch 40", "job: Expected a name."],
    ["Good one,1,6,0,300,300,,birch 40", "job: Expected a name that no row above has."],
  ])("is reported and left out: %s", (row, sentence) => {
    const moldings = readMoldings(MOLDINGS).sound;
    const text = [HEAD, GOOD, row, "Also good,2,5,10,300,200,1,ash tray"].join("\n");
    const { sound, issues } = readJobs(text, moldings);
    expect(issues.map((issue) => `${issue.row} ${issue.field!}: ${issue.sentence}.`)).toEqual([`3 ${sentence}`]);
    expect(sound.map(({ row: place, name }) => [place, name])).toEqual([
      [2, "Good one"],
      [4, "Also good"],
    ]);
  });

  test("does not keep the others from their sheets", () => {
    const { status, stdout, stderr } = runOn([
      GOOD,
      "Bad,1,2,0,300,300,,birch 40",
      "Also good,2,5,10,300,200,1,ash tray",
    ]);
    const sentence = "Jobs, row 3, sides: Expected `sides` to be an integer from 3 to 1000, got 2 (number).";
    expect([status, stderr]).toEqual([1, `${sentence}\n`]);
    expect(stdout).toBe("2 sheets and an index written to made\n");
    expect(readdirSync(join(folder, "made")).sort()).toEqual(["2-good-one.html", "4-also-good.html", "index.html"]);
    expect(made("index.html")).toContain(`<h2>Not done</h2><ul><li>${sentence}</li></ul>`);
  });

  test("is reported with all its fields, beside rows that are no rows", () => {
    const { status, stderr } = runOn(["Bad,x,2,y,z,300,,beech", "too short", "", GOOD]);
    expect(status).toBe(1);
    expect(stderr.split("\n").map((line) => line.split(":")[0])).toEqual([
      "Jobs, row 2, molding",
      "Jobs, row 2, width",
      "Jobs, row 2, slope",
      "Jobs, row 2, frames",
      "Jobs, row 2, sides",
      "Jobs, row 3",
      "",
    ]);
    expect(readdirSync(join(folder, "made"))).toContain("5-good-one.html");
  });

  test("may be a molding, and then its jobs are left out too", () => {
    const moldings = `${MOLDINGS}thin,10,5,12,2,2000,\nno stick,40,20,6,10,,\n`;
    const { stderr, status } = runOn([GOOD, "Lost,1,4,0,300,300,,thin"], moldings);
    expect(status).toBe(1);
    expect(stderr.split("\n")).toEqual([
      expect.stringMatching(/^Moldings, row 4, rabbet width: Expected `rabbet\.width` to be /),
      "Moldings, row 5, stick: Expected a length of more than zero.",
      "Jobs, row 3, molding: Expected one of birch 40, ash tray.",
      "",
    ]);
  });

  test("may ask for more sticks than there are", () => {
    const few = "molding,width,thickness,rabbet width,rabbet depth,stick,sticks\nbirch 40,40,20,6,10,1000,1\n";
    const { status, stdout, stderr } = runOn([GOOD], few);
    expect([status, stderr]).toEqual([1, "birch 40: there are not enough sticks.\n"]);
    expect(stdout).toBe("1 sheets and an index written to made\n");
    expect(made("index.html")).toContain("Not enough: no room for 2 of Good one.");
  });
});

test("names are anybody's words, on the page and in its files", () => {
  const { status, stderr } = runOn([
    '"<img src=x onerror=alert(1)> & ""co""",1,4,0,300,300,,birch 40',
    "日本,1,4,0,300,300,,birch 40",
  ]);
  expect([status, stderr]).toEqual([0, ""]);
  expect(readdirSync(join(folder, "made")).sort()).toEqual([
    "2-img-src-x-onerror-alert-1-co.html",
    "3.html",
    "index.html",
  ]);
  for (const file of readdirSync(join(folder, "made"))) expect(made(file)).not.toContain("<img");
  expect(made("index.html")).toContain("&lt;img src=x onerror=alert(1)&gt; &amp; &quot;co&quot;");
});

test("no rows make an index that says so", () => {
  const { status, stdout } = runOn([]);
  expect([status, stdout]).toEqual([0, "0 sheets and an index written to made\n"]);
});
