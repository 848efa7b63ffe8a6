import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundleProgram } from "../house/measure-bundle.js";
import { readProjectFile, ROOT } from "../house/project.js";
import { CROWN_SETTINGS } from "../published/compound.js";
import { runExample } from "./run-example.js";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "miterwright-examples-"));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function linesOf(script: string): string[] {
  const { status, stdout, stderr } = runExample(script, folder);
  expect([status, stderr]).toEqual([0, ""]);
  return stdout.trimEnd().split("\n");
}

/** The cells of the table row that begins with a word. */
function cellsOf(lines: readonly string[], word: string): string[] {
  return lines
    .find((line) => line.startsWith(`${word} `))!
    .trim()
    .split(/\s{2,}/);
}

describe("the calculator", () => {
  const script = "compound-miter-calculator.ts";

  test("prints the settings that every trade table has for a square corner (values from memory)", () => {
    const lines = linesOf(script);
    const { miter, bevel } = CROWN_SETTINGS.find(({ spring }) => spring === 38)!;
    expect(cellsOf(lines, "4").slice(0, 3)).toEqual(["4", `${miter}°`, `${bevel}°`]);
    expect(cellsOf(lines, "flat")).toEqual(["flat on its back", `${miter}°`, "far edge", `${bevel}°`, "below"]);
    // Standing against the fence at its spring angle it needs a plain miter; face down everything is the other way round.
    expect(cellsOf(lines, "propped")).toEqual(["propped at its slope", "45.00°", "far edge", "0.00°", "square"]);
    expect(cellsOf(lines, "face down")).toEqual(["face down", `${miter}°`, "near edge", `${bevel}°`, "above"]);
    expect(lines.join()).not.toMatch(/-\d/);
  });

  test("costs a page little: the miter module and the words for how a stick lies", async () => {
    const text = readProjectFile(`examples/${script}`);
    const imported = [...text.matchAll(/ from "([^"]+)"/g)].map(([, name]) => name);
    expect(imported).toEqual(["miterwright/words", "miterwright/miter"]);
    const { code, packages } = await bundleProgram("", { stdin: { contents: text, resolveDir: ROOT, loader: "ts" } });
    expect(packages).toEqual([]);
    expect(gzipSync(code, { level: 9 }).length).toBeLessThanOrEqual(4700);
  });
});

test("the lesson prints one side for every measure, and what is known of small polygons", () => {
  const lines = linesOf("polygons-for-a-lesson.ts");
  expect(lines.filter((line) => line.endsWith("gives the side 30.000000000"))).toHaveLength(7);
  // A hexagon of side 30 is 60 wide and 30 sqrt 3 high; a triangle 15 sqrt 3 high.
  expect(lines).toContain("  6 sides: 60.00 wide, 51.96 high");
  expect(lines).toContain("  3 sides: 30.00 wide, 25.98 high");
  // Four boxes' sides at 0: a picture frame.
  expect(lines).toContain("  4 sides at 0: miter 45.00, bevel 0.00, dihedral 180.00");
});

test("the size field answers a sound form with sizes, and a wrong one with every issue at once", () => {
  const lines = linesOf("size-field-in-an-app.ts");
  // A regular pentagon is 1.6180 of its side wide, the golden ratio, and 1.5388 high.
  expect(lines[0]).toBe('5 pieces of 10 1/4", the frame 16 9/16" wide and 15 3/4" high');
  expect(lines.slice(1).map((line) => line.split(":")[0])).toEqual(["sides", "opening.contains.height"]);
});

test("the main job plans, fits and writes its shop sheet", () => {
  const lines = linesOf("plan-a-frame.ts");
  expect(lines[0]).toBe("Nine sides at 35°, round 340\u00a0mm x 260\u00a0mm");
  expect(lines.some((line) => line.startsWith("  The stick lies face down. Miter "))).toBe(true);
  expect(lines.some((line) => /^ {2}sticks: .+ \(no cheaper way exists\)$/.test(line))).toBe(true);
  const path = lines.at(-1)!.replace("Shop sheet written to ", "");
  expect(existsSync(join(folder, path))).toBe(true);
  expect(readFileSync(join(folder, path), "utf8")).toContain("Nine-sided tray for the relief model");
});
