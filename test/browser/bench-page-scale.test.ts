import { execFileSync } from "node:child_process";
import { sectionAt } from "miterwright/profile";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planJob } from "../../docs/bench/plan-job.js";
import { jobOf } from "../bench-page/jobs.js";
import { choose, fill, openBenchSite, printFrom, type BenchSite } from "./bench-page-site.js";

let site: BenchSite;
beforeAll(async () => {
  site = await openBenchSite();
});
afterAll(() => site.close());

/** Dots for a millimeter: 254 to the inch. */
const DOTS: number = 10;

/** A printed page as dots. */
interface Dots {
  readonly width: number;
  readonly height: number;
  /** Whether the dot is of a color, give or take what smoothing does to it. */
  readonly is: (x: number, y: number, color: readonly [number, number, number]) => boolean;
}

/** Renders the first page of a printed file, and reads the picture: a header of text, then three bytes a dot. */
function render(path: string): Dots {
  const picture = execFileSync("pdftoppm", ["-r", String(25.4 * DOTS), "-f", "1", "-l", "1", path], {
    maxBuffer: 1e9,
  });
  const [header, width, height] = /^P6\s(\d+) (\d+)\s255\s/.exec(picture.subarray(0, 40).toString("latin1"))!;
  const at = (x: number, y: number): number => header.length + 3 * (y * Number(width) + x);
  return {
    width: Number(width),
    height: Number(height),
    is: (x, y, color) => color.every((part, index) => Math.abs(picture[at(x, y) + index]! - part) <= 12),
  };
}

/** The box round all dots of a color, in millimeters, in the rows from one to another. */
function boxOf(
  dots: Dots,
  color: readonly [number, number, number],
  rows: readonly [from: number, to: number],
): number[] {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let y = rows[0]; y < rows[1]; y += 1) {
    for (let x = 0; x < dots.width; x += 1) {
      if (!dots.is(x, y, color)) continue;
      [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x + 1), Math.min(y0, y), Math.max(y1, y + 1)];
    }
  }
  return [x0, x1, y0, y1].map((dot) => dot / DOTS);
}

/** The ruler's petrol, and the section's wood. */
const RULER = [0x0b, 0x55, 0x63] as const;
const WOOD = [0xf0, 0xe4, 0xcf] as const;

describe.each(["A4", "Letter"] as const)("the full-size section on %s", (format) => {
  test("is true, and so are its rulers", async () => {
    const { page } = await site.open();
    const answers = { sides: "6", moldingWidth: "3 1/8", thickness: "1 1/4", slope: "30", width: "20", height: "14" };
    await choose(page, "unit", "in");
    await fill(page, answers);
    const dots = render(await printFrom(site, page, "print-section", format));

    const { outline } = sectionAt(planJob(jobOf({ unit: "in", ...answers })).plan!.geometry.profile!, 30);
    const span = (values: readonly number[]): number => (Math.max(...values) - Math.min(...values)) * 25.4;
    const [left, right, top, bottom] = boxOf(dots, WOOD, [0, dots.height]) as [number, number, number, number];
    // The outline, 0.25 mm wide, lies half over the wood; at a corner a line covers more than half its width.
    expect(right - left).toBeGreaterThan(span(outline.map(({ out }) => out)) - 0.9);
    expect(right - left).toBeLessThan(span(outline.map(({ out }) => out)) + 0.1);
    expect(bottom - top).toBeGreaterThan(span(outline.map(({ up }) => up)) - 0.9);
    expect(bottom - top).toBeLessThan(span(outline.map(({ up }) => up)) + 0.1);

    const rulers = boxOf(dots, RULER, [0, dots.height]) as [number, number, number, number];
    const rows = [Math.round(rulers[2] * DOTS), Math.round(rulers[3] * DOTS)] as const;
    const middle = Math.round((rows[0] + rows[1]) / 2);
    const [from, to] = boxOf(dots, RULER, [rows[0], middle]) as [number, number];
    const [fromInch, toInch] = boxOf(dots, RULER, [middle, rows[1]]) as [number, number];
    // From the middle of the first line to the middle of the last, which are equally wide.
    expect(Math.abs(to - from - 0.25 - 100)).toBeLessThan(0.2);
    expect(Math.abs(toInch - fromInch - 0.25 - 101.6)).toBeLessThan(0.2);
  });
});
