import { describe, expect, test } from "vitest";
import { drawPanel, drawPanelCut } from "miterwright/drawing";
import { planPanel } from "miterwright/panel";
import { EXACT, SAY } from "./frames.js";
import { readDrawing } from "./read-drawing.js";
import { expectSimilar } from "./shapes.js";

describe.each([3, 4, 5, 6, 8, 9, 12])("the panel of %d sides", (sides) => {
  const panel = planPanel({ polygon: { sides, apothem: 150 }, clearance: 1 });
  const read = readDrawing(drawPanel(panel, EXACT));

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

  test("has its sides numbered, and those that exist drawn in bold", () => {
    const texts = read.texts.map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(panel.corners.map((_, side) => String(side + 1))));
    expect(texts).not.toContain("0");
    const outline = read.parts("panel")[0]!;
    expect(read.parts("existing")).toEqual(panel.existing.map((side) => [outline[side], outline[(side + 1) % sides]]));
  });

  test("has the blank's size labelled", () => {
    const texts = read.texts.map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining([SAY.length(panel.blank.width), SAY.length(panel.blank.height)]));
  });
});

describe.each([5, 6, 7, 9, 12])("the cuts of the panel of %d sides", (sides) => {
  const panel = planPanel({ polygon: { sides, apothem: 150 }, clearance: 1 });
  const read = readDrawing(drawPanel(panel, EXACT));
  const texts = read.texts.map(({ text }) => text);

  test("are numbered in the order of work", () => {
    expect(texts).toEqual(expect.arrayContaining(panel.cuts.map(({ step }) => `cut ${step}`)));
  });

  test("leave no corner inside the blank without its two distances", () => {
    const hidden = panel.corners.filter(({ inside }) => inside);
    expect(read.parts("corner")).toHaveLength(hidden.length);
    // No letter alone, which would name an arris.
    const names = texts.filter((text) => /^(?:[A-Za-z]|P\d+)$/.test(text));
    const expected = panel.corners.flatMap(({ inside }, index) => (inside ? [`P${index + 1}`] : []));
    expect([...new Set(names)].sort()).toEqual(expected.sort());
    const words = texts.join(" ");
    for (const { fromSide, fromBase } of hidden) {
      expect(words).toContain(`${SAY.length(fromSide.distance)} from the ${fromSide.edge} edge`);
      expect(words).toContain(SAY.length(fromBase.distance));
    }
  });

  test("are shown at the gauge: the side against it, the blade along the new side, and between them the angle of the plan", () => {
    for (const cut of panel.cuts) {
      const shown = readDrawing(drawPanelCut(panel, { ...EXACT, step: cut.step }));
      const outline = shown.parts("panel")[0]!;
      const blade = shown.parts("blade")[0]!;
      const edge = (side: number): readonly { x: number; y: number }[] => [
        outline[side]!,
        outline[(side + 1) % sides]!,
      ];
      for (const { x } of edge(cut.side)) expect(x).toBeCloseTo(blade[0]!.x, 1);
      expect(Math.max(...outline.map(({ x }) => x))).toBeCloseTo(blade[0]!.x, 1);
      const [a, b] = [...edge(cut.against)].sort((one, other) => one.x - other.x);
      // From square to the blade: how far the gauge's face rises or falls.
      const swung = (Math.atan2(Math.abs(b!.y - a!.y), b!.x - a!.x) * 180) / Math.PI;
      expect(swung).toBeCloseTo(cut.setting, 0);
      expect(shown.texts.map(({ text }) => text)).toEqual(
        expect.arrayContaining([
          `gauge ${SAY.angle(cut.setting)}`,
          `${cut.swing === "closed" ? "less" : "more"} than square`,
          `${cut.up} up`,
          String(cut.side + 1),
          String(cut.against + 1),
        ]),
      );
    }
  });
});

test("their descriptions count sides from 1 and say which is the first", () => {
  const panel = planPanel({ polygon: { sides: 9, apothem: 150 }, clearance: 1 });
  expect(drawPanel(panel, EXACT).description).toMatch(
    /Sides are numbered counter-clockwise from 1, the side at the bottom\. Its side 1 is an edge of the panel blank\.$/,
  );
  const standing = planPanel({ polygon: { sides: 9, apothem: 150 }, pose: "corner-down" });
  expect(drawPanel(standing, EXACT).description).toContain(
    "Sides are numbered counter-clockwise from 1, the side to the right of the bottom corner.",
  );
  const { against, side } = panel.cuts[0]!;
  expect([against, side]).toEqual([0, 2]);
  const { description } = drawPanelCut(panel, { ...EXACT, step: 1 });
  expect(description).toMatch(/^Side 1 of the panel lies against the gauge.*The blade makes side 3\.$/);
});

test("drawPanelCut refuses a cut that there is not", () => {
  const panel = planPanel({ polygon: { sides: 5, apothem: 150 } });
  expect(() => drawPanelCut(panel, { ...EXACT, step: 5 })).toThrow(
    "Expected `step` to be an integer from 1 to 4, got 5 (number)",
  );
  expect(() => drawPanelCut({} as never, { ...EXACT, step: 1 })).toThrow(
    "Expected `panel.panel` to be an object, got undefined",
  );
});
