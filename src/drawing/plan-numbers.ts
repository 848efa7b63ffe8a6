import type { Point } from "../core/geometry-types.js";
import { sideNumber } from "../core/side-number.js";
import { drawText } from "./canvas.js";
import { SMALL_SIZE } from "./looks.js";
import { boxesMeet, strokeMeetsBox, type PaperBox } from "./paper.js";
import type { PlanSheet } from "./plan-sheet.js";
import { textWidth } from "./text-width.js";

/** A band of wood at least this wide carries its number; otherwise the number stands inside the frame. */
const BAND: number = 24;
/** Distance of a number inside the frame from the sight edge. */
const INSIDE: number = 10;
/** Where along a side its number may stand. */
const PLACES: readonly number[] = [0.5, 0.38, 0.62, 0.27, 0.73];

/** A number for this many sides each is enough when there are too many to number all. */
const STEPS: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 1e4, 1e5, 1e6];

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

/** Numbers the sides of a frame from 1, as many of them as there is room for. */
export function numberSides(sheet: PlanSheet): void {
  const { canvas, geometry, corners, sight, scale } = sheet;
  const { sides, overall } = geometry;
  const band = (overall.polygon.apothem - sight) * scale;
  const size = SMALL_SIZE;
  const middle = band >= BAND ? (overall.polygon.apothem + sight) / 2 : sight - INSIDE / scale;
  if (!(middle * scale > size)) return;
  const line = corners(middle);
  const side = Math.hypot(line[1]!.x - line[0]!.x, line[1]!.y - line[0]!.y);
  const width = textWidth(String(sideNumber(sides - 1)), size).width;
  const step = STEPS.find((every) => every * side >= width + 6) ?? sides;
  // Lines of dimensions that run through the figure; the frame's own lines may cross a number's rim.
  const crossing = canvas.strokes.filter(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y) > 60);
  for (let index = 0; index < sides; index += step) {
    const label = String(sideNumber(index));
    const half = textWidth(label, size).width / 2;
    const boxAt = ({ x, y }: Point): PaperBox => ({ x0: x - half, x1: x + half, y0: y - 4, y1: y + 4 });
    const places = PLACES.map((share) => between(line[index]!, line[(index + 1) % sides]!, share));
    const isFree = (place: Point): boolean =>
      !canvas.texts.some((text) => boxesMeet(text, boxAt(place), 1.5)) &&
      !crossing.some((stroke) => strokeMeetsBox(stroke, boxAt(place), 0.5));
    const place =
      places.find(isFree) ?? places.find((other) => !canvas.texts.some((text) => boxesMeet(text, boxAt(other), 1.5)));
    if (place !== undefined) {
      const is = { part: "number", side: index } as const;
      drawText(canvas, { x: place.x, y: place.y + 3.4 }, label, { is, anchor: "middle", size });
    }
  }
}
