import { checkInteger, checkObject } from "../core/check.js";
import { readStored } from "../core/stored.js";
import type { Point } from "../core/geometry-types.js";
import { sideNumber } from "../core/side-number.js";
import type { PanelCut, PanelPlan } from "../panel/index.js";
import { panelPlan } from "../panel/internal.js";
import { englishCutDrawing, englishPanelCutDrawing } from "../words/internal.js";
import { canvasBox, drawLine, drawShape, drawText, finishDrawing, startCanvas } from "./canvas.js";
import { checkDrawingOptions, type DrawingOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { LABEL_RISE, LINE_HEIGHT, SMALL_SIZE } from "./looks.js";
import { placeLabel } from "./place-label.js";
import { textWidth } from "./text-width.js";

/** Options of {@link drawPanelCut}. */
export interface PanelCutOptions extends DrawingOptions {
  /** Which cut, by its place in the order of work; from 1 to the number of cuts. */
  readonly step: number;
}

/** Thickness of the gauge's face. */
const GAUGE: number = 8;
/** How far the blade's path reaches beyond the panel. */
const BEYOND: number = 14;
/** How far the gauge reaches beyond the side that lies against it, away from the blade. */
const GAUGE_REACH: number = 40;

/** Distance of a side's number from the side. */
const NUMBER_INSIDE: number = 11;

const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + share * (b.x - a.x),
  y: a.y + share * (b.y - a.y),
});

/** The panel as it lies for a cut, on paper: the new side along the blade, which runs straight away from you, and the kept part to its left. */
function layPanel(panel: PanelPlan, cut: PanelCut, size: number): Point[] {
  const count = panel.corners.length;
  // With the back up the panel is its own mirror image.
  const flip = cut.up === "back" ? -1 : 1;
  const seen = panel.corners.map(({ point }) => ({ x: flip * point.x, y: point.y }));
  const [a, b] = [seen[cut.side]!, seen[(cut.side + 1) % count]!];
  const [from, to] = flip === 1 ? [a, b] : [b, a];
  const side = Math.hypot(to.x - from.x, to.y - from.y);
  const [cosine, sine] = [(to.y - from.y) / side, (to.x - from.x) / side];
  const rotated = seen.map(({ x, y }) => ({ x: x * cosine - y * sine, y: x * sine + y * cosine }));
  const [xs, ys] = [rotated.map(({ x }) => x), rotated.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.max(...ys)];
  const scale = size / Math.max(Math.max(...xs) - left, top - Math.min(...ys));
  return rotated.map(({ x, y }) => ({ x: (x - left) * scale, y: (top - y) * scale }));
}

/**
 * Draws one cut of a panel at the miter gauge: which side lies against it, which way it is swung, and where the blade goes.
 *
 * @param panel - from `planPanel` or a frame's plan; also one that was read back from JSON
 * @param options - which cut, formatters, words, and the width to aim at (default 200)
 * @returns the drawing
 * @throws {InputError} when the panel is not a plan of one, it has no such cut, or an option is not sound
 * @example
 * ```ts
 * import { drawPanelCut } from "miterwright/drawing";
 * import { planPanel } from "miterwright/panel";
 * import { formatters } from "miterwright/units";
 *
 * const panel = planPanel({ polygon: { sides: 9, apothem: 150 }, clearance: 1 });
 * drawPanelCut(panel, { step: 1, formats: formatters({ unit: "mm" }) }).title; //=> "Cut 1 of the panel at the miter gauge"
 * ```
 */
export function drawPanelCut(panel: PanelPlan, options: PanelCutOptions): Drawing {
  const ready = checkDrawingOptions(options, 200);
  const { cuts } = readStored(panel, "panel", panelPlan);
  const step = checkInteger(checkObject(options)["step"], "step", 1, cuts.length);
  const cut = cuts[step - 1]!;
  const words = ready.words?.drawings.panelCut ?? englishPanelCutDrawing;
  const { kept, youStandHere } = ready.words?.drawings.cut ?? englishCutDrawing;
  const outline = layPanel(panel, cut, ready.width - 90);
  const count = outline.length;
  const sideOf = (side: number): readonly [Point, Point] => [outline[side]!, outline[(side + 1) % count]!];

  const canvas = startCanvas();
  drawShape(canvas, "panel", "layer", outline);
  const [one, other] = sideOf(cut.against);
  const [start, end] = one.x < other.x ? [one, other] : [other, one];
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const below = { x: (-(end.y - start.y) * GAUGE) / length, y: ((end.x - start.x) * GAUGE) / length };
  const [g0, g1] = [between(start, end, -GAUGE_REACH / length), between(start, end, 1 - GAUGE / length)];
  drawShape(canvas, "gauge", "saw", [
    g0,
    g1,
    { x: g1.x + below.x, y: g1.y + below.y },
    { x: g0.x + below.x, y: g0.y + below.y },
  ]);
  const box = canvasBox(canvas);
  const blade = sideOf(cut.side)[0].x;
  for (const side of [cut.against, cut.side]) drawLine(canvas, { part: "side", side }, "fine", sideOf(side));
  drawLine(canvas, { part: "blade", side: cut.side }, "blade", [
    { x: blade, y: box.y0 - BEYOND },
    { x: blade, y: box.y1 + BEYOND },
  ]);

  const middle = {
    x: outline.reduce((sum, { x }) => sum + x, 0) / count,
    y: outline.reduce((sum, { y }) => sum + y, 0) / count,
  };
  const number = (side: number): void => {
    const [a, b] = sideOf(side);
    const half = between(a, b, 0.5);
    const inward = Math.hypot(middle.x - half.x, middle.y - half.y);
    const at = between(half, middle, NUMBER_INSIDE / inward);
    drawText(canvas, { x: at.x, y: at.y + 3.4 }, String(sideNumber(side)), {
      is: { part: "number", side },
      anchor: "middle",
      size: SMALL_SIZE,
    });
  };
  number(cut.against);
  number(cut.side);
  const lines = [kept, words.up[cut.up]];
  const half = Math.max(...lines.map((word) => textWidth(word, SMALL_SIZE).width)) / 2;
  // In the middle where there is room, else at the free place nearest to it.
  placeLabel(canvas, { at: middle, lines, toward: 180, reach: -half, size: SMALL_SIZE });
  // In two lines, since one of them would reach far to the right of the blade, where nothing else is.
  const swung = [words.swing[cut.swing], words.setting({ value: ready.angle(cut.setting) })];
  for (const [index, line] of swung.entries()) {
    const y = box.y0 - BEYOND - LABEL_RISE - index * LINE_HEIGHT;
    drawText(canvas, { x: blade, y }, line, {
      is: { part: "label", measure: "setting" },
      anchor: "middle",
      accent: true,
    });
  }
  drawText(canvas, { x: blade, y: box.y1 + BEYOND + 13 }, youStandHere, {
    anchor: "middle",
    size: SMALL_SIZE,
    remark: true,
  });
  const done = words.done({
    against: sideNumber(cut.against),
    side: sideNumber(cut.side),
    up: cut.up,
    setting: ready.angle(cut.setting),
    swing: cut.swing,
  });
  return finishDrawing(canvas, { figure: "panel-cut", step, title: words.title({ step }), sentences: [done] });
}
