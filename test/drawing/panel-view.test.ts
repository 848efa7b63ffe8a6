import { describe, expect, test } from "vitest";
import { drawPanel } from "miterwright/drawing";
import { planPanel } from "miterwright/panel";
import { WORDS } from "./frames.js";
import { readDrawing } from "./read-drawing.js";
import { expectSimilar } from "./shapes.js";

describe.each([3, 4, 5, 6, 8, 9, 12])("the panel of %d sides", (sides) => {
  const panel = planPanel({ polygon: { sides, apothem: 150 }, clearance: 1 });
  const read = readDrawing(drawPanel(panel, WORDS));

  test("lies in its blank, in proportion", () => {
    const { width, height } = panel.blank;
    const blank = [
      { x: 0, y: height },
      { x: width, y: height },
      { x: width, y: 0 },
      { x: 0, y: 0 },
    ];
    expectSimilar(
      [...read.parts("blank")[0]!, ...read.parts("panel")[0]!],
      [...blank, ...panel.corners.map(({ point }) => point)],
    );
  });

  test("has its sides numbered and those that exist marked", () => {
    const texts = read.texts.map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(panel.corners.map((_, side) => String(side))));
    const outline = read.parts("panel")[0]!;
    expect(read.parts("existing")).toEqual(panel.existing.map((side) => [outline[side], outline[(side + 1) % sides]]));
  });

  test("has the blank's size labelled", () => {
    const texts = read.texts.map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining([WORDS.length(panel.blank.width), WORDS.length(panel.blank.height)]));
  });
});
