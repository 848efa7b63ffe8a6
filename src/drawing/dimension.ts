import type { Point } from "../core/geometry-types.js";
import { drawLine, drawShape, drawText, type Canvas } from "./canvas.js";
import { TEXT_SIZE } from "./looks.js";
import type { DrawingMeasure, DrawingPart, Meaning } from "./parts.js";
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

/** What a dimension states. */
export interface Stated {
  /** Which measure it is. */
  readonly measure: DrawingMeasure;
  /** The arris along which it is taken, where that has a name. */
  readonly arris?: string | null;
}

/** A dimension between two points, measured level or plumb. */
export interface DimensionOptions extends Stated {
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

/** A part of a dimension. */
export function meaningOf(part: DrawingPart, { measure, arris = null }: Stated): Meaning {
  return { part, measure, arris };
}

/** Draws an arrowhead, with its tip at a point; `from` is any other point of its line, on the side of its shaft. */
export function drawArrow(canvas: Canvas, tip: Point, from: Point, stated: Stated): void {
  const size = Math.hypot(from.x - tip.x, from.y - tip.y);
  const [x, y] = [(from.x - tip.x) / size, (from.y - tip.y) / size];
  const base = { x: tip.x + ARROW * x, y: tip.y + ARROW * y };
  drawShape(canvas, meaningOf("arrow", stated), "arrow", [
    tip,
    { x: base.x - ARROW_HALF * y, y: base.y + ARROW_HALF * x },
    { x: base.x + ARROW_HALF * y, y: base.y - ARROW_HALF * x },
  ]);
}

/** Draws a line with an arrowhead at each end. */
export function drawSpan(canvas: Canvas, from: Point, to: Point, stated: Stated): void {
  drawLine(canvas, meaningOf("dimension", stated), "dimension", [from, to]);
  drawArrow(canvas, from, to, stated);
  drawArrow(canvas, to, from, stated);
}

/** A dimension without its label, level or plumb: the lines that lead to it, and its own; where that is short, with arrows from outside. */
function drawMeasured(canvas: Canvas, options: DimensionOptions, axis: "x" | "y"): void {
  const { from, to, at } = options;
  const put = (along: number, across: number): Point =>
    axis === "x" ? { x: along, y: across } : { x: across, y: along };
  const place = (along: number): Point => put(along, at);
  for (const point of [from, to]) {
    const [along, across] = axis === "x" ? [point.x, point.y] : [point.y, point.x];
    const side = Math.sign(at - across);
    if (Math.abs(at - across) <= GAP) continue;
    const ends = [put(along, across + side * GAP), put(along, at + side * PAST)];
    drawLine(canvas, meaningOf("extension", options), "dimension", ends);
  }
  const [low, high] = [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])];
  if (high - low >= NARROW) {
    drawSpan(canvas, place(low), place(high), options);
    return;
  }
  const tail = 2 * ARROW;
  drawLine(canvas, meaningOf("dimension", options), "dimension", [place(low - tail), place(high + tail)]);
  drawArrow(canvas, place(low), place(low - tail), options);
  drawArrow(canvas, place(high), place(high + tail), options);
}

/** Dimensions the level distance of two points. */
export function levelDimension(canvas: Canvas, options: DimensionOptions): void {
  const { from, to, at, label, outside = "after" } = options;
  const is = meaningOf("label", options);
  const low = Math.min(from.x, to.x);
  const high = Math.max(from.x, to.x);
  const narrow = high - low < NARROW;
  drawMeasured(canvas, options, "x");
  const width = textWidth(label, TEXT_SIZE).width;
  if (!narrow && width <= high - low) {
    drawText(canvas, { x: (low + high) / 2, y: at - LIFT }, label, { is, anchor: "middle", accent: true });
    return;
  }
  const off = (narrow ? 2 * ARROW : 0) + PAST + 1;
  const place = outside === "after" ? { x: high + off, y: at + PAST } : { x: low - off, y: at + PAST };
  drawText(canvas, place, label, { is, anchor: outside === "after" ? "start" : "end", accent: true });
}

/** Dimensions the plumb distance of two points; the label runs upward where it has room, else it stands level beside the line. */
export function plumbDimension(canvas: Canvas, options: DimensionOptions): void {
  const { from, to, at, label, outside = "after" } = options;
  const is = meaningOf("label", options);
  const low = Math.min(from.y, to.y);
  const high = Math.max(from.y, to.y);
  drawMeasured(canvas, options, "y");
  const width = textWidth(label, TEXT_SIZE).width;
  if (width <= high - low) {
    drawText(canvas, { x: at - LIFT, y: (low + high) / 2 }, label, {
      is,
      anchor: "middle",
      accent: true,
      upward: true,
    });
    return;
  }
  const side = outside === "after" ? 1 : -1;
  const place = { x: at + side * (PAST + 2), y: (low + high) / 2 + PAST };
  drawText(canvas, place, label, { is, anchor: side > 0 ? "start" : "end", accent: true });
}
