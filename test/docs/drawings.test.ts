import { describe, expect, test } from "vitest";
import {
  drawingStyles,
  drawPiece,
  drawSection,
  type Drawing,
  type DrawingInk,
  type DrawingMeasure,
  type DrawingPart,
  type FigureName,
} from "miterwright/drawing";
import { listCases } from "../contact-sheet/cases.js";
import { EXACT, measuredPlan, plan } from "../drawing/frames.js";
import { elementsOf, readXml } from "../drawing/read-xml.js";
import { readProjectFile } from "../house/project.js";

const guide = readProjectFile("docs/guides/drawings.md");

/** The rows of the table under a head, as cells without backticks. */
function rowsOf(head: RegExp): string[][] {
  const lines = guide.split("\n");
  const start = lines.findIndex((line) => head.test(line));
  const end = lines.findIndex((line, index) => index > start && !line.startsWith("|"));
  return lines.slice(start + 2, end).map((line) =>
    line
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim().replaceAll("`", "")),
  );
}

/** A drawing with pencil lines, which no case of the contact sheet has: its longest line is no named arris that a tape can hook. */
function rounded(): Drawing {
  const outline = [
    { x: 0, y: 0 },
    { x: 41, y: 0 },
    { x: 42, y: 1 },
    { x: 42, y: 18 },
    { x: 0, y: 18 },
  ];
  return drawPiece(plan({ profile: { outline, arrises: {} } }), EXACT);
}

const drawings = [...listCases().map(({ drawing }) => drawing), rounded(), drawSection(measuredPlan(), EXACT)];

/** What the drawings of a figure have in their data attributes, by attribute. */
const seen = new Map<string, Map<string, Set<string>>>();
for (const { svg } of drawings) {
  const root = readXml(svg);
  const figure = root.attributes["data-drawing"]!;
  const ofFigure = seen.get(figure) ?? new Map<string, Set<string>>();
  seen.set(figure, ofFigure);
  for (const { attributes } of elementsOf(root)) {
    for (const [name, value] of Object.entries(attributes)) {
      if (!name.startsWith("data-")) continue;
      if (!ofFigure.has(name)) ofFigure.set(name, new Set());
      ofFigure.get(name)!.add(value);
    }
  }
}

/** All values of an attribute, in all figures or in one. */
function valuesOf(name: string, figure?: string): string[] {
  const figures = figure === undefined ? [...seen.values()] : [seen.get(figure)!];
  return [...new Set(figures.flatMap((attributes) => [...(attributes.get(name) ?? [])]))].sort();
}

describe("the guide to drawings", () => {
  test("lists every ink with its variable and its colors", () => {
    const rows = rowsOf(/^\| ink /);
    const inks: readonly DrawingInk[] = rows.map(([ink]) => ink as DrawingInk);
    expect([...inks].sort()).toEqual([...new Set([...valuesOf("data-fill"), ...valuesOf("data-stroke")])].sort());
    for (const [ink, variable, light, dark] of rows) {
      expect(variable).toBe(`--miterwright-${ink!}`);
      expect(drawingStyles()).toContain(`var(${variable!}, light-dark(${light!}, ${dark!}))`);
    }
  });

  test("lists every attribute", () => {
    const names = new Set([...seen.values()].flatMap((attributes) => [...attributes.keys()]));
    expect(
      rowsOf(/^\| attribute /)
        .map(([name]) => name!)
        .sort(),
    ).toEqual([...names].sort());
  });

  test("lists every measure", () => {
    const measures: readonly DrawingMeasure[] = rowsOf(/^\| `data-measure`\s+\| what/).map(
      ([measure]) => measure as DrawingMeasure,
    );
    expect([...measures].sort()).toEqual(valuesOf("data-measure"));
  });

  test("lists the parts of every figure, and those that all share", () => {
    const rows = rowsOf(/^\| drawing /).map(([figure, parts]) => [figure!, parts!.split(", ").sort()] as const);
    const shared = rows.find(([figure]) => figure === "all")![1];
    const own = rows.filter(([figure]) => figure !== "all");
    expect(own.map(([figure]) => figure as FigureName).sort()).toEqual([...seen.keys()].sort());
    for (const [figure, parts] of own) {
      const found = valuesOf("data-part", figure) as DrawingPart[];
      expect([figure, found.filter((part) => !shared.includes(part))]).toEqual([figure, parts]);
    }
    expect(valuesOf("data-part")).toEqual(expect.arrayContaining([...shared]));
  });
});
