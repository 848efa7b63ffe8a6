import { drawLine, type Canvas } from "./canvas.js";

/** From one line of the hatching to the next. */
const PITCH: number = 9;
/** Its depth. */
const DEPTH: number = 5;

/** Draws a bench or table as a line with hatching below it. */
export function drawBench(canvas: Canvas, x0: number, x1: number, y: number): void {
  drawLine(canvas, "bench", "edge", [
    { x: x0, y },
    { x: x1, y },
  ]);
  for (let x = x0 + DEPTH; x <= x1; x += PITCH) {
    drawLine(canvas, "ground", "thin", [
      { x, y },
      { x: x - DEPTH, y: y + DEPTH },
    ]);
  }
}
