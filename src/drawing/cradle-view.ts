import { refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { surfaceLabel } from "../words/index.js";
import { drawBench } from "./bench.js";
import { canvasBox, drawLine, drawShape, finishDrawing, startCanvas } from "./canvas.js";
import { levelDimension, plumbDimension } from "./dimension.js";
import { checkDrawingOptions, type DrawingOptions } from "./drawing-options.js";
import type { Drawing } from "./drawing.js";
import { drawHatch } from "./hatch.js";
import { drawKey, type KeyEntry } from "./key.js";
import { boxAround, boxCorners } from "./paper.js";
import { placeLabel } from "./place-label.js";
import { readSawing, type SawingToDraw } from "./read-frame.js";

/** Greatest height of wedge and stick together. */
const HIGHEST: number = 170;
/** Room beside the figure. */
const BESIDE: number = 90;
/** Thickness of the ledge that keeps the stick from sliding. */
const LEDGE: number = 7;
/** From the figure to a dimension. */
const LANE: number = 22;

/**
 * Draws the section of the cradle that holds a stick at its slope, with the stick on it. It shows level run, rise, top and angle, the ledge at the thin end,
 * and the stick's center of gravity.
 *
 * @param plan - a plan whose lay needs a cradle; also one that was read back from JSON
 * @param options - how to write lengths and angles, and the width to aim at (default 320)
 * @returns the drawing
 * @throws {InputError} when the plan needs no cradle or lacks its geometry or saw plan, or an option is not sound
 * @example
 * ```ts
 * import { drawCradle } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 42, thickness: 18 });
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, profile, lay: "propped" });
 * const drawing = drawCradle(plan, { length: (value) => `${value.toFixed(1)} mm`, angle: (degrees) => `${degrees.toFixed(1)}°` });
 * drawing.title; //=> "Cradle of 20.0°, cut across"
 * ```
 */
export function drawCradle(plan: SawingToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 320);
  const { cradle } = readSawing(plan).sawing;
  if (cradle === null) return refuse("impossible", "sawing.cradle", cradle, "a cradle, which this plan needs none of");
  const { levelRun, rise, top, angle, base: dip, stick } = cradle;
  const high = surfaceLabel(cradle.high);
  const box = boxAround([...stick, ...cradle.outline, { x: 0, y: 0 }, { x: levelRun, y: rise }]);
  const scale = Math.min((ready.width - BESIDE) / (box.x1 - box.x0), HIGHEST / (box.y1 - box.y0));
  const toPaper = ({ x, y }: Point): Point => ({ x: x * scale, y: -y * scale });
  const wedge = cradle.outline.map(toPaper);
  const [thin, thick, tip] = wedge as [Point, Point, Point];
  const slope = { x: cosDeg(angle), y: -sinDeg(angle) };
  const at = (along: number, off: number): Point => ({
    x: along * slope.x + off * slope.y,
    y: along * slope.y - off * slope.x,
  });

  const canvas = startCanvas();
  const table = dip * scale;
  if (dip > 0) drawShape(canvas, "base", "saw", boxCorners(thin.x, 0, thick.x, table));
  drawShape(canvas, "wedge", "end-grain", wedge);
  drawHatch(canvas, "wedge", wedge);
  const foot = at(0, 1.5 * LEDGE);
  drawShape(canvas, "ledge", "saw", [thin, foot, { x: foot.x - LEDGE, y: foot.y }, { x: foot.x - LEDGE, y: 0 }]);
  const shape = stick.map(toPaper);
  drawShape(canvas, "section", "section", shape);
  drawLine(canvas, "gravity", "phantom", [
    { x: cradle.centerFromThinEnd * scale, y: boxAround(shape).y0 - 4 },
    { x: cradle.centerFromThinEnd * scale, y: table },
  ]);
  const drawn = canvasBox(canvas);
  drawBench(canvas, drawn.x0 - 8, Math.max(drawn.x1, levelRun * scale) + 12, table);
  plumbDimension(canvas, {
    from: thick,
    to: tip,
    at: Math.max(drawn.x1, thick.x) + 10 + LANE,
    label: `rise ${ready.length(rise)}`,
  });
  levelDimension(canvas, {
    from: thin,
    to: thick,
    at: canvasBox(canvas).y1 + LANE - 4,
    label: `run ${ready.length(levelRun)}`,
  });
  placeLabel(canvas, { at: { x: foot.x - LEDGE, y: foot.y / 2 }, lines: ["ledge"], toward: 150, turn: 100, reach: 5 });
  const gravity = cradle.steady
    ? "The stick's center of gravity is above the wedge."
    : `The stick's center of gravity is not above the wedge: widen its base by ${ready.length(cradle.widenBy)} at least, or clamp the stick.`;
  const base =
    dip > 0
      ? ` The stick reaches ${ready.length(dip)} below the wedge's thin end: set the wedge on a base as high, with the stick's edge free beside it.`
      : "";
  const key: KeyEntry[] = [
    {
      text: `Wedge of ${ready.angle(angle)}, its sloping top ${ready.length(top)} wide, with a ledge at its thin end. The stick's ${high} is the higher.${base}`,
    },
    { sign: { look: "phantom" }, text: gravity },
  ];
  const all = canvasBox(canvas);
  if (ready.key) drawKey(canvas, key, all.x0, all.y1 + 8, Math.max(ready.width - 12, all.x1 - all.x0));
  return finishDrawing(
    canvas,
    `Cradle of ${ready.angle(angle)}, cut across`,
    `A wedge that holds the stick at its slope with its ${high} above: run ${ready.length(levelRun)}, rise ${ready.length(rise)}, sloping top ${ready.length(top)}, with a ledge at its thin end.${base} ${gravity}`,
  );
}
