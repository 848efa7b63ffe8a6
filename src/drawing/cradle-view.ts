import { refuse } from "../core/check.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { surfaceLabel } from "../words/index.js";
import { englishCradleDrawing, englishSaws } from "../words/internal.js";
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
 * @param options - formatters, words, and the width to aim at (default 320)
 * @returns the drawing
 * @throws {InputError} when the plan needs no cradle or lacks its geometry or saw plan, or an option is not sound
 * @example
 * ```ts
 * import { drawCradle } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 * import { formatters } from "miterwright/units";
 *
 * const profile = molding({ width: 42, thickness: 18 });
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, profile, lay: "propped" });
 * drawCradle(plan, { formats: formatters({ unit: "mm" }) }).title; //=> "Cradle of 20°, cut across"
 * ```
 */
export function drawCradle(plan: SawingToDraw, options: DrawingOptions): Drawing {
  const ready = checkDrawingOptions(options, 320);
  const { cradle } = readSawing(plan).sawing;
  if (cradle === null) return refuse("impossible", "sawing.cradle", cradle, "a cradle, which this plan needs none of");
  const words = ready.words?.drawings.cradle ?? englishCradleDrawing;
  const { levelRun, rise, top, angle, base: dip, stick } = cradle;
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
    measure: "rise",
    label: words.rise({ value: ready.length(rise) }),
  });
  levelDimension(canvas, {
    from: thin,
    to: thick,
    at: canvasBox(canvas).y1 + LANE - 4,
    measure: "levelRun",
    label: words.levelRun({ value: ready.length(levelRun) }),
  });
  placeLabel(canvas, {
    is: "ledge",
    at: { x: foot.x - LEDGE, y: foot.y / 2 },
    lines: [words.ledge],
    toward: 150,
    turn: 100,
    reach: 5,
  });
  const say = (ready.words?.saws ?? englishSaws).cradle;
  const values = {
    angle: ready.angle(angle),
    levelRun: ready.length(levelRun),
    rise: ready.length(rise),
    top: ready.length(top),
    high: surfaceLabel(cradle.high, ready),
    base: dip > 0 ? ready.length(dip) : null,
    widenBy: cradle.steady ? null : ready.length(cradle.widenBy),
  };
  const made = [
    say.make(values),
    say.place(values),
    ...(values.base === null ? [] : [say.base({ base: values.base })]),
  ];
  const balance = say.balance(values);
  const key: KeyEntry[] = [{ text: made.join(" ") }, { sign: { look: "phantom" }, text: balance }];
  const { x0: x, x1, y1 } = canvasBox(canvas);
  if (ready.key) drawKey(canvas, key, { x, y: y1 + 8, width: Math.max(ready.width - 12, x1 - x) });
  const title = words.title({ angle: values.angle });
  return finishDrawing(canvas, { figure: "cradle", title, sentences: [...made, balance] });
}
