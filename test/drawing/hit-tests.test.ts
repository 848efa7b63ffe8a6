import { describe, expect, test } from "vitest";
import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPanelCut,
  drawPiece,
  drawPlanView,
  drawSection,
  drawStock,
  type Drawing,
} from "miterwright/drawing";
import { polygonCorners } from "miterwright/polygon";
import { fitStock, type StockJob } from "miterwright/stock";
import { EXACT, measuredPlan, plan, SAY } from "./frames.js";
import { readDrawing } from "./read-drawing.js";
import { elementsOf, textOf, type XmlElement } from "./read-xml.js";
import { expectSimilar } from "./shapes.js";

/** All elements with these attributes. */
function found(drawing: Drawing, wanted: Readonly<Record<string, string>>): XmlElement[] {
  return elementsOf(readDrawing(drawing).root).filter(({ attributes }) =>
    Object.entries(wanted).every(([name, value]) => attributes[`data-${name}`] === value),
  );
}

/** The texts with these attributes. */
function said(drawing: Drawing, wanted: Readonly<Record<string, string>>): string[] {
  return found(drawing, wanted)
    .filter(({ name }) => name === "text")
    .map(textOf);
}

/** Every value of an attribute, each once. */
function values(drawing: Drawing, name: string): string[] {
  const all = elementsOf(readDrawing(drawing).root).flatMap(({ attributes }) => attributes[`data-${name}`] ?? []);
  return [...new Set(all)].sort();
}

const contents = [
  { name: "acrylic", thickness: 2 },
  { name: "tide chart", thickness: 0.5 },
];
const frame = plan({ sides: 5, slope: 20, contents, lay: "propped" });
const { geometry } = frame;

test("every element of a drawing says what it is", () => {
  for (const drawing of [drawPlanView(frame, EXACT), drawPiece(frame, EXACT), drawPanel(frame.panel!, EXACT)]) {
    const silent = elementsOf(readDrawing(drawing).root).filter(({ attributes }) => !("data-part" in attributes));
    expect(silent.map(({ name }) => name)).toEqual(["svg", "title", "desc"]);
  }
});

describe("the frame from above", () => {
  const drawing = drawPlanView(frame, EXACT);

  test("has every side by its number in the data, with its corners in their places", () => {
    expect(values(drawing, "side")).toEqual(["0", "1", "2", "3", "4"]);
    const [outer, inner] = [
      polygonCorners(geometry.overall.polygon),
      polygonCorners({ sides: 5, apothem: frame.contents.visible.apothem }),
    ];
    const shapes = [0, 1, 2, 3, 4].map((side) => {
      const [{ attributes }, ...others] = found(drawing, { part: "side", side: String(side) }) as [XmlElement];
      expect(others).toEqual([]);
      return [...attributes["d"]!.matchAll(/[ML](\S+) ([^\sMLZ]+)/g)].map(([, x, y]) => ({
        x: Number(x),
        y: Number(y),
      }));
    });
    // All together, so that one side in another's place would be seen.
    expectSimilar(
      shapes.flat(),
      outer.flatMap((from, side) => [from, outer[(side + 1) % 5]!, inner[(side + 1) % 5]!, inner[side]!]),
    );
    for (let side = 0; side < 5; side++) {
      expect(said(drawing, { side: String(side) })).toEqual([String(side + 1)]);
    }
  });

  test("has its joints by corner, its arrises by name, its dimensions by measure", () => {
    expect(found(drawing, { part: "joint", corner: "3" })).toHaveLength(1);
    for (const arris of values(drawing, "arris")) expect(Object.keys(geometry.arrises)).toContain(arris);
    expect(values(drawing, "arris").length).toBeGreaterThan(1);
    expect(values(drawing, "measure")).toEqual(["acrossCorners", "acrossFlats", "opening", "side"]);
    const { polygon } = geometry.overall;
    expect(said(drawing, { measure: "side" })).toEqual([`side ${SAY.length(polygon.side)}`]);
    expect(said(drawing, { measure: "acrossFlats" })).toEqual([`across flats ${SAY.length(polygon.acrossFlats)}`]);
    expect(said(drawing, { measure: "acrossCorners" })).toEqual([
      `across corners ${SAY.length(polygon.acrossCorners)}`,
    ]);
    expect(found(drawing, { part: "dimension", measure: "side" })).toHaveLength(1);
    expect(found(drawing, { part: "arrow", measure: "side" })).toHaveLength(2);
  });
});

describe("the section", () => {
  test("has its arrises, layers and measures", () => {
    const drawing = drawSection(frame, EXACT);
    expect(values(drawing, "arris")).toEqual(Object.keys(geometry.arrises).sort());
    expect(said(drawing, { arris: "outerBack" })).toEqual(["d"]);
    expect(values(drawing, "layer")).toEqual(["0", "1"]);
    expect(said(drawing, { layer: "1" }).join(" ")).toContain("tide chart");
    expect(values(drawing, "measure")).toEqual(["height", "jointWidth", "lap", "levelWidth", "slope"]);
    expect(said(drawing, { measure: "levelWidth" })).toEqual([`width taken level ${SAY.length(geometry.levelWidth)}`]);
    expect(said(drawing, { measure: "slope" })).toEqual([`slope ${SAY.angle(20)}`]);
  });

  test("of level measures alone has theirs", () => {
    const drawing = drawSection(measuredPlan(), EXACT);
    expect(values(drawing, "measure")).toEqual(["depth", "lap", "levelWidth"]);
    expect(values(drawing, "arris")).toEqual(["outer", "sight", "wall"]);
  });
});

test("the piece has its ends, its measures and the arris along which the tape goes", () => {
  const drawing = drawPiece(frame, EXACT);
  expect(values(drawing, "body")).toEqual(["piece"]);
  expect(said(drawing, { end: "start" })[0]).toBe("start");
  expect(said(drawing, { end: "end" })[0]).toBe("end");
  const cutsOf = (end: string): number[] =>
    found(drawing, { part: "cut", end }).map(({ attributes }) => Number(/M(-?[\d.]+)/.exec(attributes["d"]!)![1]));
  expect(Math.max(...cutsOf("start"))).toBeLessThan(Math.min(...cutsOf("end")));
  const { longest, shortest } = geometry.pieces[0];
  expect(said(drawing, { measure: "longest", arris: longest.arris! })).toEqual([
    `longest ${SAY.length(longest.length)}`,
  ]);
  expect(said(drawing, { measure: "shortest" })).toEqual([`shortest ${SAY.length(shortest.length)}`]);
  const { arris } = frame.sawing.operations.at(-1)!.measure!;
  expect(found(drawing, { part: "tape", measure: "tape", arris: arris! }).length).toBeGreaterThan(0);
});

test("a cut says its step, and which part of the stick is kept", () => {
  const drawing = drawCut(frame, { ...EXACT, step: 2 });
  expect(readDrawing(drawing).root.attributes).toMatchObject({ "data-drawing": "cut", "data-step": "2" });
  expect(values(drawing, "body")).toEqual(["kept", "offcut"]);
  expect(said(drawing, { body: "kept" })).toEqual(["kept"]);
  expect(said(drawing, { body: "offcut" })).toEqual(["offcut"]);
  expect(said(drawing, { measure: "miter" })[0]).toContain(
    SAY.angle(frame.sawing.operations[1]!.placement.miter.degrees),
  );
  expect(values(drawing, "measure")).toEqual(["bevel", "miter"]);
  expect(values(drawing, "end")).toEqual([]);
});

test("the cradle has its measures", () => {
  const { rise, levelRun } = frame.sawing.cradle!;
  const drawing = drawCradle(frame, EXACT);
  expect(said(drawing, { measure: "rise" })).toEqual([`rise ${SAY.length(rise)}`]);
  expect(said(drawing, { measure: "levelRun" })).toEqual([`run ${SAY.length(levelRun)}`]);
});

describe("the panel", () => {
  const panel = frame.panel!;

  test("has its sides, cuts, hidden corners and the blank's size", () => {
    const drawing = drawPanel(panel, EXACT);
    const sides = panel.corners.map((_, side) => side);
    for (const side of sides) {
      const part = panel.existing.includes(side) ? "existing" : "sawn";
      expect(found(drawing, { part, side: String(side) })).toHaveLength(1);
      expect(said(drawing, { part: "number", side: String(side) })).toEqual([String(side + 1)]);
    }
    for (const { side, step } of panel.cuts) {
      expect(said(drawing, { side: String(side), step: String(step) })).toEqual([`cut ${step}`]);
    }
    const hidden = panel.corners.flatMap(({ inside }, corner) => (inside ? [String(corner)] : []));
    expect(values(drawing, "corner")).toEqual(hidden);
    expect(said(drawing, { measure: "width" })).toEqual([SAY.length(panel.blank.width)]);
    expect(said(drawing, { measure: "height" })).toEqual([SAY.length(panel.blank.height)]);
  });

  test("at the gauge has the side that is cut and the side at the gauge", () => {
    const { against, side, setting } = panel.cuts[0]!;
    const drawing = drawPanelCut(panel, { ...EXACT, step: 1 });
    expect(readDrawing(drawing).root.attributes).toMatchObject({ "data-drawing": "panel-cut", "data-step": "1" });
    expect(values(drawing, "side")).toEqual([String(against), String(side)].sort());
    expect(found(drawing, { part: "blade", side: String(side) })).toHaveLength(1);
    expect(said(drawing, { measure: "setting" })).toContain(`gauge ${SAY.angle(setting)}`);
  });
});

describe("the sticks", () => {
  const job: StockJob = {
    pieces: [
      { id: 'a "wide" side', length: 246, count: 7 },
      { id: "lid", length: 171, count: 4 },
    ],
    sticks: [{ id: "larch", length: 1200 }],
    kerf: 3,
    keep: 60,
  };
  const fit = fitStock(job);
  const drawing = drawStock(job, fit, EXACT);

  test("have their layouts, ids and pieces, and so have the labels", () => {
    expect(values(drawing, "layout")).toEqual(fit.layouts.map((_, index) => String(index)));
    expect(values(drawing, "stick")).toEqual(["larch"]);
    expect(values(drawing, "piece")).toEqual(['a "wide" side', "lid"]);
    fit.layouts.forEach(({ pieces }, layout) => {
      const count = pieces.filter(({ piece }) => piece === "lid").reduce((sum, placed) => sum + placed.count, 0);
      const wanted = { part: "piece", layout: String(layout), piece: "lid" };
      expect(found(drawing, wanted).filter(({ name }) => name === "path")).toHaveLength(count);
    });
    expect(new Set(said(drawing, { part: "piece", piece: "lid" }))).toEqual(new Set(["lid L171"]));
  });

  test("carry no id that is too long for every piece of a stick", () => {
    const long: StockJob = { ...job, pieces: [{ id: "x".repeat(401), length: 100, count: 3 }] };
    expect(values(drawStock(long, fitStock(long), EXACT), "piece")).toEqual([]);
  });
});
