import { describe, expect, test } from "vitest";
import {
  drawCradle,
  drawCut,
  drawPanel,
  drawPlanView,
  drawSection,
  drawPiece,
  drawStock,
  type DrawingOptions,
} from "miterwright/drawing";
import { isInputError } from "miterwright/errors";
import { planPanel } from "miterwright/panel";
import { tableSaw } from "miterwright/saw";
import { fitStock, type StockJob } from "miterwright/stock";
import { measuredPlan, plan, SHORT } from "./frames.js";

/** What an error says: its code, its path and its sentence. */
function refusal(run: () => unknown): readonly [code: string, path: string, message: string] {
  try {
    run();
  } catch (error) {
    if (isInputError(error)) return [error.code, error.path, error.message];
    throw error;
  }
  throw new Error("nothing was refused");
}

const loose = (options: unknown): DrawingOptions => options as DrawingOptions;
const frame = plan({ slope: 20, lay: "propped" });
const job: StockJob = { pieces: [{ id: "side", length: 240, count: 3 }], sticks: [{ id: "larch", length: 1200 }] };
const fit = fitStock(job);
const drawers: readonly (readonly [string, (options: DrawingOptions) => unknown])[] = [
  ["drawPlanView", (options) => drawPlanView(frame, options)],
  ["drawSection", (options) => drawSection(frame, options)],
  ["drawPiece", (options) => drawPiece(frame, options)],
  ["drawCut", (options) => drawCut(frame, { ...options, step: 1 })],
  ["drawCradle", (options) => drawCradle(frame, options)],
  ["drawPanel", (options) => drawPanel(planPanel({ polygon: { sides: 5, apothem: 100 } }), options)],
  ["drawStock", (options) => drawStock(job, fit, options)],
];

describe.each(drawers)("%s refuses", (_, draw) => {
  test("a formatter that is missing or none", () => {
    const { length, ...rest } = SHORT.formats;
    expect(refusal(() => draw(loose({ formats: rest })))).toEqual([
      "missing",
      "formats.length",
      "Expected `formats.length` to be a function that writes a length as text, got undefined",
    ]);
    expect(refusal(() => draw(loose({ formats: { ...rest, length, angle: "°" } })))).toEqual([
      "type",
      "formats.angle",
      'Expected `formats.angle` to be a function that writes an angle as text, got "°" (string)',
    ]);
  });

  test("a width out of range", () => {
    const message = "Expected `width` to be a number from 160 to 2000, got 100 (number)";
    expect(refusal(() => draw({ ...SHORT, width: 100 }))).toEqual(["range", "width", message]);
  });
});

describe("refused are", () => {
  test("a formatter that writes no text", () => {
    const message =
      "Expected `formats.length` to be a function that writes a length as text, but its result was not one, got 5 (number)";
    const formats = { ...SHORT.formats, length: () => 5 };
    expect(refusal(() => drawPlanView(frame, loose({ formats })))).toEqual(["type", "formats.length", message]);
  });

  test("things that are no frame", () => {
    expect(refusal(() => drawPlanView(null as never, SHORT))).toEqual([
      "type",
      "frame",
      "Expected `frame` to be an object, got null",
    ]);
    expect(refusal(() => drawSection({} as never, SHORT))).toEqual([
      "missing",
      "geometry.sides",
      "Expected `geometry.sides` to be an integer from 3 to 1000, got undefined",
    ]);
    const rest = { ...frame.geometry, pieces: undefined };
    expect(refusal(() => drawPlanView(rest as never, SHORT))).toEqual([
      "missing",
      "geometry.pieces",
      "Expected `geometry.pieces` to be an array, got undefined",
    ]);
    expect(refusal(() => drawPlanView({ ...frame.geometry, pieces: [{ longest: {} }] } as never, SHORT))).toEqual([
      "missing",
      "geometry.pieces[0].side",
      "Expected `geometry.pieces[0].side` to be an integer from 0 to 1000000000, got undefined",
    ]);
    expect(refusal(() => drawPlanView({ ...frame.geometry, levelWidth: NaN }, SHORT))).toEqual([
      "range",
      "geometry.levelWidth",
      "Expected `geometry.levelWidth` to be a finite number, got NaN (number)",
    ]);
  });

  test("numbers that can't be drawn", () => {
    const { geometry } = frame;
    const endless = {
      ...geometry,
      overall: { ...geometry.overall, polygon: { ...geometry.overall.polygon, apothem: 0 } },
      opening: { ...geometry.opening, apothem: 0 },
    };
    const message = "Expected the numbers of what is drawn to be finite and of a size that can be computed with";
    expect(refusal(() => drawPlanView(endless, SHORT))).toEqual(["impossible", "drawing", message]);
  });

  test("plans without a saw plan, and steps that they don't have", () => {
    expect(refusal(() => drawPiece({ geometry: frame.geometry } as never, SHORT))).toEqual([
      "missing",
      "sawing",
      "Expected `sawing` to be an object, got undefined",
    ]);
    expect(refusal(() => drawCut(frame, { ...SHORT, step: 3 }))).toEqual([
      "range",
      "step",
      "Expected `step` to be an integer from 1 to 2, got 3 (number)",
    ]);
    expect(refusal(() => drawCut(frame, { ...SHORT, step: 1.5 }))).toEqual([
      "integer",
      "step",
      "Expected `step` to be an integer from 1 to 2, got 1.5 (number)",
    ]);
    const blunt = tableSaw({
      miter: { left: 1, right: 1, reads: "from-square", step: 1 },
      bevel: { left: 1, right: 1, reads: "from-vertical", step: 1 },
    });
    expect(refusal(() => drawCut(plan({ saw: blunt }), { ...SHORT, step: 1 }))).toEqual([
      "impossible",
      "step",
      "Expected `step` to be a step of a plan that has some, but no lay suits its saw, got 1 (number)",
    ]);
  });

  test("cradles of plans that need none", () => {
    const message = "Expected `sawing.cradle` to be a cradle, which this plan needs none of, got null";
    expect(refusal(() => drawCradle(plan(), SHORT))).toEqual(["impossible", "sawing.cradle", message]);
    expect(refusal(() => drawCradle(measuredPlan(), SHORT))).toEqual(["impossible", "sawing.cradle", message]);
  });

  test("panels that are none", () => {
    expect(refusal(() => drawPanel({} as never, SHORT))).toEqual([
      "missing",
      "panel.panel",
      "Expected `panel.panel` to be an object, got undefined",
    ]);
  });

  test("fits of another job", () => {
    const layout = fit.layouts[0]!;
    expect(refusal(() => drawStock(job, { layouts: [{ ...layout, stick: "oak" }] }, SHORT))).toEqual([
      "unknown",
      "fit.layouts[0].stick",
      'Expected `fit.layouts[0].stick` to be the id of a stick of the job, got "oak" (string)',
    ]);
    expect(
      refusal(() =>
        drawStock(job, { layouts: [{ ...layout, pieces: [{ piece: "lid", start: 0, end: 9, count: 1 }] }] }, SHORT),
      ),
    ).toEqual([
      "unknown",
      "fit.layouts[0].pieces[0].piece",
      'Expected `fit.layouts[0].pieces[0].piece` to be the id of a piece of the job, got "lid" (string)',
    ]);
    const sequences: StockJob = { ...job, pieces: [{ id: "side", sequence: [100, 50] }] };
    expect(
      refusal(() =>
        drawStock(
          sequences,
          { layouts: [{ ...layout, pieces: [{ piece: "side", part: 2, start: 0, end: 9, count: 1 }] }] },
          SHORT,
        ),
      ),
    ).toEqual([
      "range",
      "fit.layouts[0].pieces[0].part",
      "Expected `fit.layouts[0].pieces[0].part` to be an integer from 0 to 1, got 2 (number)",
    ]);
    expect(refusal(() => drawStock(job, {} as never, SHORT))).toEqual([
      "missing",
      "fit.layouts",
      "Expected `fit.layouts` to be an array of layouts, got undefined",
    ]);
    expect(refusal(() => drawStock({} as never, fit, SHORT))).toEqual([
      "missing",
      "job.pieces",
      "Expected `job.pieces` to be an array of pieces, got undefined",
    ]);
  });
});

test("options that no drawing knows are ignored", () => {
  expect(drawPlanView(frame, { ...SHORT, color: "red" } as DrawingOptions).svg).toBe(drawPlanView(frame, SHORT).svg);
});
