import { isolate } from "../core/isolate.js";
import type { RabbetHold } from "../profile/index.js";
import { drawLine, drawShape, drawText } from "./canvas.js";
import type { ReadyOptions } from "./drawing-options.js";
import { LINE_HEIGHT, TEXT_SIZE } from "./looks.js";
import type { SectionSheet } from "./section-sheet.js";
import { textWidth, wrapText } from "./text-width.js";
import { boxCorners } from "./paper.js";

/** How far contents are drawn beyond the section, toward the frame's center. */
const STUB: number = 28;
/** From their drawn end to their names. */
const AWAY: number = 14;
/** Widest line of a name. */
const NAME_WIDTH: number = 108;

/** Moves the names of layers apart so that none meets the next; their order stays. */
function spread(heights: readonly number[], wished: readonly number[]): number[] {
  const total = heights.reduce((sum, height) => sum + height, 0);
  const middle = wished.reduce((sum, y) => sum + y, 0) / wished.length;
  let top = Math.min(...wished.map((y, index) => y - heights[index]! / 2));
  // Centered on the layers when they are too many for their places.
  top = Math.min(top, middle - total / 2);
  return heights.map((height, index) => {
    const place = Math.max(top, wished[index]! - height / 2);
    // What follows still has to fit evenly; a later layer lies lower, so its own wish is never above this.
    top = place + height;
    return place;
  });
}

/** The names and thicknesses of what lies in a rabbet, broken into lines. */
function nameLayers(seating: RabbetHold, options: ReadyOptions): string[][] {
  return seating.layers.map(({ name, front, back }) => {
    // A thickness is never broken: it stands on a line of its own where it does not fit on the name's last one.
    const lines = wrapText(name, TEXT_SIZE, NAME_WIDTH).map(isolate);
    const thickness = options.length(front - back);
    const last = `${lines.at(-1)!} ${thickness}`;
    if (textWidth(last, TEXT_SIZE).width > NAME_WIDTH) lines.push(thickness);
    else lines[lines.length - 1] = last;
    return lines;
  });
}

/** How much room contents and their names take beside the section. */
export function contentsWidth(seating: RabbetHold, options: ReadyOptions): number {
  const widths = nameLayers(seating, options)
    .flat()
    .map((line) => textWidth(line, TEXT_SIZE).width);
  return widths.length === 0 ? 0 : STUB + AWAY + Math.max(...widths);
}

/** Draws what lies in the rabbet, layer by layer, with names and thicknesses. */
export function drawContents(sheet: SectionSheet, seating: RabbetHold, edge: number, inner: number): void {
  const { canvas, toPaper, options } = sheet;
  const names = nameLayers(seating, options).map((lines, index) => {
    const { front, back } = seating.layers[index]!;
    const corner = toPaper(edge, front);
    const low = toPaper(edge, back);
    const left = toPaper(inner, front).x - STUB;
    const look = index % 2 === 0 ? "layer" : "next-layer";
    drawShape(canvas, { part: "layer", layer: index }, look, boxCorners(left, corner.y, low.x, low.y));
    return { lines, left, y: (corner.y + low.y) / 2 };
  });
  if (names.length === 0) return;
  const heights = names.map(({ lines }) => lines.length * LINE_HEIGHT + 3);
  const tops = spread(
    heights,
    names.map(({ y }) => y),
  );
  names.forEach(({ lines, left, y }, index) => {
    const top = tops[index]!;
    const x = left - AWAY;
    drawLine(canvas, { part: "leader", layer: index }, "thin", [
      { x: left, y },
      { x: x + 2, y: top + heights[index]! / 2 },
    ]);
    lines.forEach((line, row) => {
      drawText(canvas, { x, y: top + row * LINE_HEIGHT + 12.5 }, line, {
        is: { part: "label", layer: index },
        anchor: "end",
      });
    });
  });
}
