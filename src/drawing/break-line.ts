import type { Point } from "../core/geometry-types.js";
import { drawLine, drawShape, type Canvas } from "./canvas.js";

/** Half the width of the gap. */
const HALF_GAP: number = 5;
/** How far the gap's edges run past what they break. */
const PAST: number = 4;
/** Half the size of the zigzag. */
const ZIGZAG: number = 4;

/** Takes a part out of what runs across the paper, to say that it is longer than drawn. */
export function drawBreak(canvas: Canvas, x: number, y0: number, y1: number): void {
  const middle = (y0 + y1) / 2;
  const edge = (side: number): Point[] => [
    { x: x + side, y: y0 - PAST },
    { x: x + side, y: middle - 2 * ZIGZAG },
    { x: x + side - ZIGZAG, y: middle - ZIGZAG / 2 },
    { x: x + side + ZIGZAG, y: middle + ZIGZAG / 2 },
    { x: x + side, y: middle + 2 * ZIGZAG },
    { x: x + side, y: y1 + PAST },
  ];
  const [left, right] = [edge(-HALF_GAP), edge(HALF_GAP)];
  drawShape(canvas, "left-out", "paper", [...left, ...right.slice().reverse()]);
  drawLine(canvas, "break", "edge", left);
  drawLine(canvas, "break", "edge", right);
}
