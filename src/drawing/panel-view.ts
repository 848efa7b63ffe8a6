import { readStored } from "../core/stored.js";
import { atan2Deg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { sideNumber } from "../core/side-number.js";
import type { PanelPlan } from "../panel/index.js";
import { panelPlan } from "../panel/internal.js";
import type { PanelDrawingWords } from "../words/index.js";
import { englishNumbering, englishPanelDrawing } from "../words/internal.js";
import { canvasBox, drawLine, drawShape, drawText, finishDrawing, startCanvas, type Canvas } from "./canvas.js";
import { levelDimension, plumbDimension } from "./dimension.js";
import { checkDrawingOptions, type DrawingOptions, type ReadyOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawKey, type KeyEntry } from "./key.js";
import { SMALL_SIZE } from "./looks.js";
import { hiddenCorners } from "./hidden-corners.js";
import { boxCorners, boxesMeet } from "./paper.js";
import { placeLabel } from "./place-label.js";
import { textWidth } from "./text-width.js";

/** Room for a dimension and its lane. */
const LANE: number = 20;
/** Distance of a side's number from the side. */
const INSIDE: number = 11;
/** With more cuts or hidden corners than this only some are labelled: the picture would be all labels. */
const MOST_LABELS: number = 16;

/** What the parts of a panel's drawing share. */
interface PanelSheet {
  readonly canvas: Canvas;
  readonly panel: PanelPlan;
  /** The panel's corners on the paper. */
  readonly outline: readonly Point[];
  readonly options: ReadyOptions;
  readonly words: PanelDrawingWords;
}

/** Direction in which a side faces, in degrees counter-clockwise from the right. */
function facing(from: Point, to: Point): number {
  return atan2Deg(-(to.x - from.x), -(to.y - from.y));
}

/** Numbers the cuts outside their sides, in the order of work. */
function numberCuts({ canvas, panel, outline, words }: PanelSheet): void {
  if (panel.cuts.length > MOST_LABELS) return;
  for (const { side, step } of panel.cuts) {
    const [from, to] = [outline[side]!, outline[(side + 1) % outline.length]!];
    const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    placeLabel(canvas, {
      at,
      is: { part: "label", side, step },
      lines: [words.cut({ step })],
      toward: facing(from, to),
      turn: 100,
      reach: 3,
      size: SMALL_SIZE,
      accent: true,
    });
  }
}

/** Draws the corners that no edge of the blank shows, and gives the key's line for each: the two distances that locate it. */
function locateHidden({ canvas, panel, outline, words, options }: PanelSheet): KeyEntry[] {
  const hidden = hiddenCorners(panel);
  if (hidden.length > MOST_LABELS) return [];
  for (const { index, name } of hidden) {
    const at = outline[index]!;
    drawShape(canvas, { part: "corner", corner: index }, "dot", [
      { x: at.x - 2, y: at.y },
      { x: at.x, y: at.y - 2 },
      { x: at.x + 2, y: at.y },
      { x: at.x, y: at.y + 2 },
    ]);
    placeLabel(canvas, {
      is: { part: "label", corner: index },
      at,
      lines: [name],
      toward: cornerDirection(outline, index),
      turn: 180,
      reach: 3,
      size: SMALL_SIZE,
    });
  }
  return hidden.map(({ name, fromSide, fromBase }) => ({
    sign: { name },
    text: words.corner({
      fromSide: { distance: options.length(fromSide.distance), edge: fromSide.edge },
      fromBase: { distance: options.length(fromBase.distance), edge: fromBase.edge },
    }),
  }));
}

/** The direction in which a corner of the outline points. */
function cornerDirection(outline: readonly Point[], index: number): number {
  const count = outline.length;
  const [before, here, after] = [outline[(index + count - 1) % count]!, outline[index]!, outline[(index + 1) % count]!];
  return atan2Deg(-(2 * here.y - before.y - after.y), 2 * here.x - before.x - after.x);
}

/**
 * Draws how a panel lies in its squared blank: its sides numbered as its cuts name them, the cuts in the order of work, and the corners that no edge of the
 * blank shows, with the two distances that locate each.
 *
 * @param panel - from `planPanel` or a frame's plan; also one that was read back from JSON
 * @param options - formatters, words, and the width to aim at (default 260)
 * @returns the drawing
 * @throws {InputError} when the panel is not a plan of one, or an option is not sound
 * @example
 * ```ts
 * import { drawPanel } from "miterwright/drawing";
 * import { planPanel } from "miterwright/panel";
 * import { formatters } from "miterwright/units";
 *
 * const panel = planPanel({ polygon: { sides: 9, apothem: 150 }, clearance: 1 });
 * drawPanel(panel, { formats: formatters({ unit: "mm" }) }).title; //=> "Panel of 9 sides in its panel blank"
 * ```
 */
export function drawPanel(panel: PanelPlan, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 260);
  const read = readStored(panel, "panel", panelPlan);
  const { blank, corners, existing, pose } = read;
  const { width, height } = blank;
  const scale = (ready.width - 2 * LANE - 12) / Math.max(width, height);
  const toPaper = ({ x, y }: Point): Point => ({ x: x * scale, y: (height - y) * scale });
  const outline = corners.map(({ point }) => toPaper(point));
  const [right, low] = [width * scale, height * scale];

  const canvas = startCanvas();
  const words = ready.words?.drawings.panel ?? englishPanelDrawing;
  const sheet: PanelSheet = { canvas, panel: read, outline, options: ready, words };
  drawShape(canvas, "blank", "phantom", boxCorners(0, 0, right, low));
  drawShape(canvas, "panel", "layer", outline);
  const sides = outline.length;
  outline.forEach((from, side) => {
    const isThere = existing.includes(side);
    const line = [from, outline[(side + 1) % sides]!];
    drawLine(canvas, { part: isThere ? "existing" : "sawn", side }, isThere ? "heavy" : "fine", line);
  });
  outline.forEach((from, side) => {
    const to = outline[(side + 1) % sides]!;
    const size = Math.hypot(to.x - from.x, to.y - from.y);
    // The outline goes counter-clockwise, so inside is to the left of its edges: with y down, (dy, -dx).
    const place = {
      x: (from.x + to.x) / 2 + (INSIDE * (to.y - from.y)) / size,
      y: (from.y + to.y) / 2 - (INSIDE * (to.x - from.x)) / size + 3.4,
    };
    // Where sides are short, only as many are numbered as there is room for.
    const number = String(sideNumber(side));
    const half = textWidth(number, SMALL_SIZE).width / 2;
    const box = { x0: place.x - half, x1: place.x + half, y0: place.y - 8, y1: place.y + 2 };
    if (canvas.texts.some((text) => boxesMeet(text, box, 4))) return;
    drawText(canvas, place, number, { is: { part: "number", side }, anchor: "middle", size: SMALL_SIZE });
  });
  numberCuts(sheet);
  const hiddenKey = locateHidden(sheet);
  const corner = { x: right, y: low };
  levelDimension(canvas, {
    from: { x: 0, y: low },
    to: corner,
    at: canvasBox(canvas).y1 + LANE,
    measure: "width",
    label: ready.length(width),
  });
  plumbDimension(canvas, {
    from: { x: right, y: 0 },
    to: corner,
    at: Math.max(right, canvasBox(canvas).x1) + LANE,
    measure: "height",
    label: ready.length(height),
  });
  const key: KeyEntry[] = [{ sign: { look: "phantom" }, text: words.blank }];
  if (existing.length > 0) key.push({ sign: { look: "heavy" }, text: words.existing });
  key.push(...hiddenKey);
  const box = canvasBox(canvas);
  if (ready.key) drawKey(canvas, key, { x: box.x0, y: box.y1 + 6, width: Math.max(ready.width - 12, box.x1 - box.x0) });
  return finishDrawing(canvas, {
    figure: "panel",
    title: words.title({ sides }),
    sentences: [
      words.seen({ sides, width: ready.length(width), height: ready.length(height) }),
      (ready.words?.labels.numbering ?? englishNumbering)[pose],
      words.onEdges({ sides: existing.map(sideNumber) }),
    ],
  });
}
