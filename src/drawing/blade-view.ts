import { tanDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import type { CutPlacement } from "../saw/index.js";
import { canvasBox, drawLine, drawShape, drawText, type Canvas } from "./canvas.js";
import { drawHatch } from "./hatch.js";
import { SMALL_SIZE, TEXT_SIZE } from "./looks.js";
import { textWidth } from "./text-width.js";

/** Height of the wood, and half its width at the middle of its height. */
const HEIGHT: number = 34;
const HALF: number = 38;
/** Farthest that the blade's top leans over. */
const LEAN: number = 44;
/** How far the blade stands out above and below the wood. */
const ABOVE: number = 12;
const BELOW: number = 7;
/** From the view from above to this one. */
const APART: number = 20;

/** What is written above the blade, and which way one looks. */
interface BladeTexts {
  readonly labels: readonly string[];
  readonly remark: string;
}

/**
 * Draws the lean of the blade beside a view from above. One looks along the line of cut, away from the person at the saw, at the table, the blade, and the wood
 * on both sides, hatched where it is kept.
 */
export function drawBladeView(canvas: Canvas, placement: CutPlacement, { labels, remark }: BladeTexts): void {
  const { toward, degrees } = placement.bevel;
  const slant = (toward === "left" ? -1 : toward === "right" ? 1 : 0) * tanDeg(degrees);
  const height = Math.min(HEIGHT, LEAN / Math.max(1e-9, Math.abs(slant)));
  const box = canvasBox(canvas);
  const reach = HALF + Math.abs(slant) * height;
  const left = box.x1 + APART;
  const wide = [...labels.map((label) => textWidth(label, TEXT_SIZE).width), textWidth(remark, SMALL_SIZE).width];
  const middle = left + Math.max(reach, ...wide.map((width) => width / 2));
  const table = (box.y0 + box.y1) / 2 + height / 2 + 6;
  const at = (x: number, up: number): Point => ({ x: middle + x, y: table - up });
  const cutAt = (up: number): number => slant * (up - height / 2);
  const part = (hand: 1 | -1): Point[] => [
    at(cutAt(0) + hand * 2, 0),
    at(hand * reach, 0),
    at(hand * reach, height),
    at(cutAt(height) + hand * 2, height),
  ];
  const kept = part(placement.kept === "right" ? 1 : -1);
  drawShape(canvas, { part: "off-side", body: "offcut" }, "edge", part(placement.kept === "right" ? -1 : 1));
  drawShape(canvas, { part: "kept-side", body: "kept" }, "wood", kept);
  drawShape(canvas, { part: "kept-side", body: "kept" }, "edge", kept);
  drawHatch(canvas, { part: "kept", body: "kept" }, kept);
  drawLine(canvas, "table", "edge", [at(-reach - 6, 0), at(reach + 6, 0)]);
  if (toward !== "none") drawLine(canvas, "square", "thin", [at(cutAt(0), 0), at(cutAt(0), height + ABOVE)]);
  drawLine(canvas, { part: "blade", measure: "bevel" }, "blade", [
    at(cutAt(-BELOW), -BELOW),
    at(cutAt(height + ABOVE), height + ABOVE),
  ]);
  labels.forEach((label, index) => {
    const y = table - height - ABOVE - 6 - (labels.length - 1 - index) * 13;
    drawText(canvas, { x: middle, y }, label, {
      is: { part: "label", measure: "bevel" },
      anchor: "middle",
      accent: true,
    });
  });
  drawText(canvas, { x: middle, y: table + BELOW + 12 }, remark, {
    anchor: "middle",
    remark: true,
    size: SMALL_SIZE,
  });
}
