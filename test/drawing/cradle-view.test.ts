import { describe, expect, test } from "vitest";
import { drawCradle } from "miterwright/drawing";
import { BATTEN, plan, EXACT, SAY } from "./frames.js";
import { readDrawing } from "./read-drawing.js";
import { expectSimilar } from "./shapes.js";

describe.each([-70, -35, -5, 5, 20, 45, 70])("the cradle of slope %d", (slope) => {
  const frame = plan({ slope, lay: "propped", profile: BATTEN });
  const cradle = frame.sawing.cradle!;
  const drawing = drawCradle(frame, EXACT);
  const read = readDrawing(drawing);
  const wedge = read.parts("wedge")[0]!;

  test("is in its proportions, its thin end to the left", () => {
    expectSimilar(wedge, cradle.outline);
  });

  test("carries the stick on its sloping top, the higher edge at its high side", () => {
    const section = read.parts("section")[0]!;
    const [thin, , tip] = wedge;
    for (const end of [thin, tip]) {
      expect(section.some(({ x, y }) => Math.hypot(x - end!.x, y - end!.y) < 0.02)).toBe(true);
    }
    const sizes = section.map((point, index) =>
      Math.hypot(point.x - section.at(index - 1)!.x, point.y - section.at(index - 1)!.y),
    );
    expect(Math.max(...sizes) / Math.min(...sizes)).toBeCloseTo(42 / 18, 2);
    // All of the wood is above the top's line.
    for (const { x, y } of section) {
      expect((tip!.x - thin!.x) * (y - thin!.y) - (tip!.y - thin!.y) * (x - thin!.x)).toBeLessThan(2);
    }
  });

  test("names the higher edge in words", () => {
    const high = slope > 0 ? "outer edge" : "sight edge";
    expect(drawing.description).toContain(`The stick's ${high} lies at its high side.`);
    expect(drawing.description).not.toMatch(/(?:outer|sight)-edge/);
    expect(read.texts.map(({ text }) => text).join(" ")).toContain(`The stick's ${high} lies at its high side.`);
  });

  test("has its sizes labelled, and the center of gravity drawn where it is", () => {
    const texts = read.texts.map(({ text }) => text);
    expect(texts).toEqual(
      expect.arrayContaining([`run ${SAY.length(cradle.levelRun)}`, `rise ${SAY.length(cradle.rise)}`, "ledge"]),
    );
    expect(drawing.title).toBe(`Cradle of ${SAY.angle(Math.abs(slope))}, cut across`);
    const scale = (wedge[1]!.x - wedge[0]!.x) / cradle.levelRun;
    expect(read.parts("gravity")[0]![0]!.x - wedge[0]!.x).toBeCloseTo(cradle.centerFromThinEnd * scale, 1);
    const said = cradle.steady ? "is above the wedge." : `widen its base by ${SAY.length(cradle.widenBy)} at least`;
    expect(drawing.description).toContain(said);
  });
});

test.each([1e20, 1e150])("a wedge from a file with a corner at %d is drawn at once", (far) => {
  const { geometry, sawing } = plan({ slope: 25, lay: "propped" });
  const outline = [...sawing.cradle!.outline.slice(0, 2), { x: far, y: far }];
  const { svg } = drawCradle({ geometry, sawing: { ...sawing, cradle: { ...sawing.cradle!, outline } } }, EXACT);
  expect(svg.length).toBeLessThan(20_000);
});

test("a stick whose lip reaches below the wedge's thin end has a base under the wedge, and the key says how high", () => {
  const steep = drawCradle(plan({ slope: 70, lay: "propped" }), EXACT);
  const read = readDrawing(steep);
  const [base, wedge, section] = [read.parts("base")[0]!, read.parts("wedge")[0]!, read.parts("section")[0]!];
  const table = read.parts("bench")[0]![0]!.y;
  expect(Math.max(...section.map(({ y }) => y))).toBeCloseTo(table, 1);
  expect(Math.max(...base.map(({ y }) => y))).toBeCloseTo(table, 1);
  expect(Math.min(...base.map(({ y }) => y))).toBeCloseTo(wedge[0]!.y, 1);
  // The lip's lower arris is 8 along the back before the wall and 9 up from it.
  const dip = 8 * Math.sin((70 * Math.PI) / 180) - 9 * Math.cos((70 * Math.PI) / 180);
  const said = Number(/reaches L([\d.]+) below/.exec(steep.description)![1]);
  expect(said).toBeCloseTo(dip, 9);
  expect(readDrawing(drawCradle(plan({ slope: 25, lay: "propped" }), EXACT)).parts("base")).toEqual([]);
});

test("the key can be left out", () => {
  const [long, short] = [true, false].map((key) => drawCradle(plan({ slope: 20, lay: "propped" }), { ...EXACT, key }));
  expect(short!.height).toBeLessThan(long!.height);
});
