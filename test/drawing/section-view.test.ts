import { describe, expect, test } from "vitest";
import { drawSection } from "miterwright/drawing";
import type { Point } from "miterwright/errors";
import { sectionAt } from "miterwright/profile";
import { BATTEN, measuredPlan, plan, TRAY, EXACT, SAY } from "./frames.js";
import { readDrawing, type ReadDrawing } from "./read-drawing.js";
import { distance, expectSimilar } from "./shapes.js";

const contents = [
  { name: "acrylic", thickness: 2 },
  { name: "tide chart", thickness: 0.5 },
];
const wordsOf = ({ texts }: ReadDrawing): string[] => texts.map(({ text }) => text);
const upright = (points: readonly { readonly out: number; readonly up: number }[]): Point[] =>
  points.map(({ out, up }) => ({ x: out, y: up }));

describe.each([-60, -30, -5, 0, 5, 20, 45, 60, 85])("at slope %d", (slope) => {
  const read = readDrawing(drawSection(plan({ slope }), EXACT));
  const { geometry } = plan({ slope });

  test("the section stands as in the frame, its center to the left, the lowest point on the bench", () => {
    const [shape] = read.parts("section");
    expectSimilar(shape!, upright(sectionAt(TRAY, slope).outline));
    expect(Math.max(...shape!.map(({ y }) => y))).toBe(read.parts("bench")[0]![0]!.y);
  });

  test("the slope is the angle between a level line and the section's back", () => {
    if (slope === 0) {
      expect(read.parts("slope")).toEqual([]);
      return;
    }
    const [from, to] = read.parts("back")[0]!;
    const angle = (Math.atan2(from!.y - to!.y, Math.sign(slope) * (to!.x - from!.x)) * 180) / Math.PI;
    expect(angle).toBeCloseTo(Math.abs(slope), 1);
    // At the back's lower end: of the outline's corners the wall's mouth, or where the outer edge meets the back.
    const corner = TRAY.outline.findIndex(({ x, y }) => y === 0 && x === (slope > 0 ? 8 : 42));
    expect(from).toEqual(read.parts("section")[0]![corner]);
    const arc = read.parts("slope")[0]!;
    for (const point of arc) expect(distance(point, from!)).toBeCloseTo(distance(arc[0]!, from!), 1);
    expect(wordsOf(read)).toContain(`slope ${SAY.angle(slope)}`);
  });

  test("the level width is dimensioned from the deciding point to the outermost", () => {
    const scale = expectSimilar(read.parts("section")[0]!, upright(sectionAt(TRAY, slope).outline));
    const spans = read.parts("dimension").map(([a, b]) => Math.abs(a!.x - b!.x));
    expect(spans.some((span) => Math.abs(span - geometry.levelWidth * scale) < 0.03)).toBe(true);
    expect(wordsOf(read)).toContain(`width taken level ${SAY.length(geometry.levelWidth)}`);
    expect(wordsOf(read)).toContain(`height ${SAY.length(geometry.overall.height!)}`);
  });

  test("every arris has its letter, next to its dot", () => {
    const dots = read.parts("arris").map((dot) => ({
      x: dot.reduce((sum, { x }) => sum + x, 0) / dot.length,
      y: dot.reduce((sum, { y }) => sum + y, 0) / dot.length,
    }));
    const { arrises } = sectionAt(TRAY, slope);
    expectSimilar(dots, upright(Object.values(arrises)));
    dots.forEach((dot, index) => {
      const [label] = read.texts.filter(({ text }) => text === "abcdefg"[index]);
      const away = Math.hypot(
        Math.max(label!.x0 - dot.x, dot.x - label!.x1, 0),
        Math.max(label!.y0 - dot.y, dot.y - label!.y1, 0),
      );
      expect(away).toBeLessThan(12);
    });
  });
});

describe("contents", () => {
  const frame = plan({ slope: 20, contents, clearance: 1 });
  const read = readDrawing(drawSection(frame, EXACT));
  const seating = frame.geometry.seating!;

  test("lie in the rabbet layer by layer, as thick as they are, up to the clearance", () => {
    if (!seating.possible) throw new Error("the tray holds its contents");
    const { arrises } = frame.geometry;
    const scale = expectSimilar(read.parts("section")[0]!, upright(sectionAt(TRAY, 20).outline));
    const bench = read.parts("bench")[0]![0]!.y;
    const low = Math.min(...sectionAt(TRAY, 20).outline.map(({ up }) => up));
    const left = Math.min(...read.parts("section")[0]!.map(({ x }) => x));
    const inner = Math.min(...sectionAt(TRAY, 20).outline.map(({ out }) => out));
    read.parts("layer").forEach((layer, index) => {
      const { front, back } = seating.layers[index]!;
      const ys = layer.map(({ y }) => (bench - y) / scale + low);
      expect(Math.max(...ys)).toBeCloseTo(front, 1);
      expect(Math.min(...ys)).toBeCloseTo(back, 1);
      const edge = (Math.max(...layer.map(({ x }) => x)) - left) / scale + inner;
      expect(edge).toBeCloseTo(arrises["sightBack"]!.out + seating.lap, 1);
      expect(edge).toBeCloseTo(frame.geometry.deciding.out - 1, 1);
    });
    expect(read.parts("layer")).toHaveLength(2);
  });

  test("are named with their thicknesses, and the lap and the rabbet with theirs", () => {
    if (!seating.possible) throw new Error("the tray holds its contents");
    const words = wordsOf(read).join(" ");
    expect(words).toContain(SAY.length(seating.layers[0]!.front - seating.layers[0]!.back));
    expect(words).toContain("tide chart");
    expect(words).toContain(`lap ${SAY.length(seating.lap)}`);
    expect(words).toContain(
      `Rabbet ${SAY.length(seating.depthUsed + seating.depthLeft)} deep along its wall (e–f), ${SAY.length(seating.depthLeft)} of it left behind its contents.`,
    );
  });

  test("that can't be held are not drawn, and the key says why", () => {
    const miss = readDrawing(drawSection(plan({ slope: 75, contents }), EXACT));
    expect(miss.parts("layer")).toEqual([]);
    expect(wordsOf(miss).join(" ")).toContain(
      "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents.",
    );
  });

  test("that stand proud of the rabbet are drawn as they are, and the key says by how much", () => {
    const words = wordsOf(readDrawing(drawSection(plan({ slope: 45, contents }), EXACT))).join(" ");
    expect(words).toMatch(/its contents stand L[\d.]+ proud of it\./);
  });
});

describe("the key", () => {
  test("explains every letter", () => {
    expect(wordsOf(readDrawing(drawSection(plan(), EXACT)))).toContain("outer edge at the back");
  });

  test("is left out on request", () => {
    expect(wordsOf(readDrawing(drawSection(plan(), { ...EXACT, key: false })))).not.toContain("outer edge at the back");
  });
});

test("arrises that share a point share a label, and an arris off the outline has one too", () => {
  const profile = {
    outline: BATTEN.outline,
    arrises: { one: { x: 0, y: 0 }, two: { x: 42, y: 18 }, three: { x: 0, y: 0 }, four: { x: 20, y: 9 } },
  };
  const words = wordsOf(readDrawing(drawSection(plan({ profile }), EXACT)));
  expect(words).toContain("a, c");
  expect(words).toContain("d");
});

describe("a molding of which only level measures are known", () => {
  test("is drawn as a dashed block, and said not to be known", () => {
    const read = readDrawing(drawSection(measuredPlan(), EXACT));
    expect(read.parts("section")).toEqual([]);
    expect(wordsOf(read)).toContain("profile not known");
    expect(wordsOf(read).join(" ")).toContain(`only its level measures are to scale. Slope ${SAY.angle(20)}.`);
  });

  test("has its level measures to scale", () => {
    const read = readDrawing(drawSection(measuredPlan(), EXACT));
    const xs = read.parts("unknown-section")[0]!.map(({ x }) => x);
    const [sight, wall, outer] = [Math.min(...xs), xs[0]!, Math.max(...xs)];
    expect((wall - sight) / (outer - wall)).toBeCloseTo(6 / 40, 3);
    expect(wordsOf(read)).toEqual(expect.arrayContaining(["width taken level L40", "lap L6", "depth L9"]));
  });

  test("may be known by its level width alone", () => {
    const words = wordsOf(readDrawing(drawSection(measuredPlan({ measured: { levelWidth: 40 } }), EXACT)));
    expect(words).toContain("width taken level L40");
    expect(words.filter((text) => /lap|depth/.test(text))).toEqual([]);
  });
});
