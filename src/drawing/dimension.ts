import type { Point } from "../core/geometry-types.js";
import { drawLine, drawShape, drawText, type Canvas } from "./canvas.js";
import { TEXT_SIZE } from "./looks.js";
import { textWidth } from "./text-width.js";

/** Length of an arrowhead. */
const ARROW: number = 7;
/** Half its width. */
const ARROW_HALF: number = 2;
/** Space between a thing and the line that leads from it to a dimension. */
const GAP: number = 3;
/** How far that line runs past the dimension. */
const PAST: number = 4;
/** Distance of letters from the line below them. */
const LIFT: number = 3.5;
/** A dimension shorter than this has its arrows outside, pointing at each other. */
const NARROW: number = 2 * ARROW + 4;

/** A dimension between two points, measured level or plumb. */
export interface DimensionOptions {
  /** One point. */
  readonly from: Point;
  /** The other point. */
  readonly to: Point;
  /** Where the dimension's line runs: its height for a level dimension, its distance from the left for a plumb one. */
  readonly at: number;
  /** What is written at it. */
  readonly label: string;
  /** On which side the label stands when there is no room for it between the points; default after the greater coordinate. */
  readonly outside?: "before" | "after";
}

/**
 * Draws an arrowhead.
 *
 * @param canvas - the picture
 * @param tip - its point
 * @param from - any other point of its line, on the side of its shaft
 */
export function drawArrow(canvas: Canvas, tip: Point, from: Point): void {
  const size = Math.hypot(from.x - tip.x, from.y - tip.y);
  const [x, y] = [(from.x - tip.x) / size, (from.y - tip.y) / size];
  const base = { x: tip.x + ARROW * x, y: tip.y + ARROW * y };
  drawShape(canvas, "arrow", "arrow", [
    tip,
    { x: base.x - ARROW_HALF * y, y: base.y + ARROW_HALF * x },
    { x: base.x + ARROW_HALF * y, y: base.y - ARROW_HALF * x },
  ]);
}

/**
 * Draws a line with an arrowhead at each end.
 *
 * @param canvas - the picture
 * @param from - one end
 * @param to - the other end, some way off
 */
export function drawSpan(canvas: Canvas, from: Point, to: Point): void {
  drawLine(canvas, "dimension", "dimension", [from, to]);
  drawArrow(canvas, from, to);
  drawArrow(canvas, to, from);
}

/** Arrows from outside that point at a narrow gap; `turn` makes points from a place along and a place across. */
function drawNarrow(canvas: Canvas, low: number, high: number, turn: (along: number) => Point): void {
  const tail = 2 * ARROW;
  drawLine(canvas, "dimension", "dimension", [turn(low - tail), turn(high + tail)]);
  drawArrow(canvas, turn(low), turn(low - tail));
  drawArrow(canvas, turn(high), turn(high + tail));
}

/**
 * Dimensions the level distance of two points.
 *
 * @param canvas - the picture
 * @param options - the points, the height of the dimension's line and its label
 */
export function levelDimension(canvas: Canvas, options: DimensionOptions): void {
  const { from, to, at, label, outside = "after" } = options;
  for (const { x, y } of [from, to]) {
    const side = Math.sign(at - y);
    if (Math.abs(at - y) > GAP)
      drawLine(canvas, "extension", "dimension", [
        { x, y: y + side * GAP },
        { x, y: at + side * PAST },
      ]);
  }
  const low = Math.min(from.x, to.x);
  const high = Math.max(from.x, to.x);
  const narrow = high - low < NARROW;
  if (narrow) drawNarrow(canvas, low, high, (x) => ({ x, y: at }));
  else drawSpan(canvas, { x: low, y: at }, { x: high, y: at });
  const width = textWidth(label, TEXT_SIZE).width;
  if (!narrow && width <= high - low) {
    drawText(canvas, { x: (low + high) / 2, y: at - LIFT }, label, { anchor: "middle", accent: true });
    return;
  }
  const off = (narrow ? 2 * ARROW : 0) + PAST + 1;
  const place = outside === "after" ? { x: high + off, y: at + PAST } : { x: low - off, y: at + PAST };
  drawText(canvas, place, label, { anchor: outside === "after" ? "start" : "end", accent: true });
}

/**
 * Dimensions the plumb distance of two points; the label runs upward where it has room, else it stands level beside the line.
 *
 * @param canvas - the picture
 * @param options - the points, the place of the dimension's line from the left and its label
 */
export function plumbDimension(canvas: Canvas, options: DimensionOptions): void {
  const { from, to, at, label, outside = "after" } = options;
  for (const { x, y } of [from, to]) {
    const side = Math.sign(at - x);
    if (Math.abs(at - x) > GAP)
      drawLine(canvas, "extension", "dimension", [
        { x: x + side * GAP, y },
        { x: at + side * PAST, y },
      ]);
  }
  const low = Math.min(from.y, to.y);
  const high = Math.max(from.y, to.y);
  const narrow = high - low < NARROW;
  if (narrow) drawNarrow(canvas, low, high, (y) => ({ x: at, y }));
  else drawSpan(canvas, { x: at, y: low }, { x: at, y: high });
  const width = textWidth(label, TEXT_SIZE).width;
  if (width <= high - low) {
    drawText(canvas, { x: at - LIFT, y: (low + high) / 2 }, label, { anchor: "middle", accent: true, upward: true });
    return;
  }
  const side = outside === "after" ? 1 : -1;
  const place = { x: at + side * (PAST + 2), y: (low + high) / 2 + PAST };
  drawText(canvas, place, label, { anchor: side > 0 ? "start" : "end", accent: true });
}
