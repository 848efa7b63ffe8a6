import { describe, expect, test } from "vitest";
import { arrisLabel } from "miterwright/words";
import { sectionAt } from "miterwright/profile";
import { fullSizeSection } from "../../docs/bench/full-size-section.js";
import { planJob } from "../../docs/bench/plan-job.js";
import { penOf, writersOf } from "../../docs/bench/writers.js";
import { jobOf, TRAY } from "./jobs.js";

const INCHES = {
  unit: "in",
  width: "12",
  height: "8",
  sides: "6",
  moldingWidth: "2 1/4",
  thickness: "3/4",
  slope: "25",
} as const;

function drawn(answers: Parameters<typeof jobOf>[0]): ReturnType<typeof fullSizeSection> {
  const state = jobOf(answers);
  return fullSizeSection(planJob(state).plan!, penOf(state.values));
}

describe("the full-size section", () => {
  test("is drawn in millimeters, from inches too", () => {
    const { page } = drawn(INCHES);
    const path = /data-part="section"\s+d="([^"]+)"/.exec(page!)![1]!;
    const points = [...path.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const { outline } = sectionAt(planJob(jobOf(INCHES)).plan!.geometry.profile!, 25);
    expect(points.length).toBe(outline.length);
    points.forEach(([x, y], index) => {
      expect(x - points[0]![0]).toBeCloseTo((outline[index]!.out - outline[0]!.out) * 25.4, 3);
      expect(y - points[0]![1]).toBeCloseTo(-(outline[index]!.up - outline[0]!.up) * 25.4, 3);
    });
    const [, width, height, box] = /width="([\d.]+)mm"\s+height="([\d.]+)mm"\s+viewBox="([^"]+)"/.exec(page!)!;
    expect(box).toBe(`0 0 ${width!} ${height!}`);
  });

  test("letters every arris beside its corner of the section, and says how long the pieces are there", () => {
    const state = jobOf(INCHES);
    const { geometry } = planJob(state).plan!;
    const { page } = drawn(INCHES);
    const path = /data-part="section"\s+d="([^"]+)"/.exec(page!)![1]!;
    const [first] = [...path.matchAll(/M([\d.]+) ([\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
    const origin = sectionAt(geometry.profile!, 25).outline[0]!;
    Object.entries(geometry.arrises).forEach(([arris, { out, up }], index) => {
      const letter = "abcdefgh"[index]!;
      const at = { x: first!.x + (out - origin.out) * 25.4, y: first!.y - (up! - origin.up) * 25.4 };
      const [, x, y] = new RegExp(`<text\\s+x="([\\d.]+)"\\s+y="([\\d.]+)"\\s*>${letter}</text>`).exec(page!)!;
      expect(Math.hypot(Number(x) - at.x, Number(y) - 1 - at.y)).toBeLessThan(2.7);
      const length = writersOf(state.values).length(geometry.pieces[0].lengths[arris]!).replaceAll('"', "&quot;");
      expect(page).toContain(`${letter} ${arrisLabel(arris)} ${length}`);
    });
  });

  test("comes with rulers of 100 mm and 4 in", () => {
    const { page } = drawn(TRAY);
    expect(page).toMatch(/data-part="millimeters" d="M0 6H100M/);
    expect(page).toMatch(/data-part="inches" d="M0 24H101\.6M/);
    expect(page).toMatch(/width="110mm"\s+height="30mm"\s+viewBox="-2 0 110 30"/);
  });

  test("says why it can't be drawn", () => {
    expect(drawn({ ...TRAY, known: "level", levelWidth: "40" })).toEqual({
      why: "The profile can be drawn when the molding is known by its dimensions.",
    });
    expect(drawn({ ...TRAY, moldingWidth: "200", slope: "" }).why).toBe(
      "At its full size the profile is 200\u00a0mm wide and 19\u00a0mm high; a sheet of A4 or Letter holds 174\u00a0mm by 190\u00a0mm.",
    );
  });
});

describe("numbers are written", () => {
  const loose = (text: string): string => text.replaceAll("\u00a0", " ");
  const write = (unit: string, fineness: string, value: number): string =>
    loose(writersOf({ unit, fineness }).length(value));

  test("on one line each, with their fractions and units", () => {
    const { length, small, mass, force, angle, smallAngle } = writersOf({ unit: "in", fineness: "usual" });
    expect(length(92.71875)).toBe('92\u00a023/32"');
    expect(writersOf({ unit: "ft", fineness: "usual" }).length(1.21)).toBe("1'\u00a02\u00a017/32\"");
    for (const text of [small(1.5), mass(2), force(3), angle(22.5), smallAngle(0.00012)])
      expect(text).not.toContain(" ");
    expect(smallAngle(0.00012)).toBe("0.0001°");
  });

  test("to the fineness that was asked for", () => {
    expect(["coarse", "usual", "fine"].map((fineness) => write("mm", fineness, 123.268))).toEqual([
      "123 mm",
      "123.5 mm",
      "123.3 mm",
    ]);
    expect(["coarse", "usual", "fine"].map((fineness) => write("in", fineness, 5.42))).toEqual([
      '5 7/16"',
      '5 13/32"',
      '5 27/64"',
    ]);
    expect(write("cm", "usual", 12.3268)).toBe("12.35 cm");
    expect(write("ft", "usual", 1.25)).toBe("1' 3\"");
    expect(write("mm", "unheard of", 0.2)).toBe("0 mm");
  });

  test("in degrees", () => {
    expect(
      ["mm", "cm", "m", "in", "ft"].map((unit) => loose(writersOf({ unit, fineness: "coarse" }).small(0.12345))),
    ).toEqual(["0.12 mm", "0.123 cm", "0.12345 m", '0.123"', "0.1235'"]);
    expect(writersOf({ unit: "mm", fineness: "usual" }).angle(16.60178)).toBe("16.6°");
    // NIST Special Publication 811 (2008), appendix B.8: 1 lb = 4.535924e-1 kg, 1 lbf = 4.448222 N. Value from memory.
    const weigh = (unit: string): string[] => {
      const { mass, force } = writersOf({ unit, fineness: "usual" });
      return [mass(2 * 0.4535924), force(2 * 4.448222), mass(1.2345), force(12.345)].map(loose);
    };
    expect(weigh("in")).toEqual(["2 lb", "2 lbf", "2.72 lb", "2.78 lbf"]);
    expect(weigh("ft")).toEqual(weigh("in"));
    expect(weigh("mm").slice(2)).toEqual(["1.23 kg", "12.3 N"]);
  });
});
