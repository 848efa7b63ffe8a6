import type { Point } from "../core/geometry-types.js";
import { polygonExtent } from "../polygon/index.js";
import { drawLine, drawText, canvasBox } from "./canvas.js";
import { drawSpan, levelDimension, plumbDimension } from "./dimension.js";
import { LABEL_RISE } from "./looks.js";
import { boxAround } from "./paper.js";
import type { PlanSheet } from "./plan-sheet.js";

/** From the figure to the first dimension, and from one to the next. */
const LANE: number = 20;

/** A measure of the outermost edge, and its label. */
interface Said {
  readonly measure: "side" | "acrossFlats" | "acrossCorners";
  readonly label: string;
}

function midpoint(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** The length of side 0: level when the frame stands on it, else along it, with its label beside. */
function dimensionSide({ canvas, geometry }: PlanSheet, outer: readonly Point[], { measure, label }: Said): void {
  const is = { part: "label", measure } as const;
  const [from, to] = [outer[0]!, outer[1]!];
  if (geometry.pose === "side-down") {
    levelDimension(canvas, { measure, from, to, at: canvasBox(canvas).y1 + LANE, label });
    return;
  }
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  // Side 0 runs to the right and up, so this points outward: to the right and down.
  const normal = { x: -(to.y - from.y) / size, y: (to.x - from.x) / size };
  const shift = (point: Point, by: number): Point => ({ x: point.x + by * normal.x, y: point.y + by * normal.y });
  for (const point of [from, to]) {
    drawLine(canvas, { part: "extension", measure }, "dimension", [shift(point, 3), shift(point, 18)]);
  }
  drawSpan(canvas, shift(from, 14), shift(to, 14), { measure });
  const place = shift(midpoint(from, to), 18);
  drawText(canvas, { x: place.x + 2, y: place.y + 9 }, label, { is, accent: true });
}

/** The measure that is neither the figure's width nor its height, drawn across it. */
function dimensionDiagonal({ canvas, geometry }: PlanSheet, outer: readonly Point[], { measure, label }: Said): void {
  const n = geometry.sides;
  const ends: readonly [Point, Point][] = outer.map((corner, index) => {
    const opposite = outer[(index + n / 2) % n]!;
    if (geometry.pose === "side-down") return [corner, opposite];
    return [midpoint(corner, outer[(index + 1) % n]!), midpoint(opposite, outer[(index + n / 2 + 1) % n]!)];
  });
  // The one whose upper end is the highest, of two the right one.
  const [top, bottom] = ends.reduce((best, pair) => {
    const higher = best[0].y - pair[0].y;
    return higher > 1e-6 || (higher > -1e-6 && pair[0].x > best[0].x) ? pair : best;
  });
  drawSpan(canvas, top, bottom, { measure });
  const box = boxAround(outer);
  const elbow = { x: top.x + 5, y: canvasBox(canvas).y0 - LABEL_RISE };
  drawLine(canvas, { part: "leader", measure }, "dimension", [top, elbow]);
  const toLeft = top.x > (box.x0 + box.x1) / 2 + (box.x1 - box.x0) / 5;
  drawText(canvas, { x: elbow.x + (toLeft ? 2 : 3), y: elbow.y - 2 }, label, {
    is: { part: "label", measure },
    anchor: toLeft ? "end" : "start",
    accent: true,
  });
}

/** Puts the dimensions of a plan view round its figure. */
export function dimensionPlan(sheet: PlanSheet): string[] {
  const { canvas, geometry, corners, options, words } = sheet;
  const { overall, opening, pose } = geometry;
  const { polygon, extent } = overall;
  const outer = corners(polygon.apothem);
  const box = boxAround(outer);
  const say = (measure: Said["measure"], value: number): Said => ({
    measure,
    label: words[measure]({ value: options.length(value) }),
  });
  const sayAcross = (value: number): Said =>
    say(value === polygon.acrossFlats ? "acrossFlats" : "acrossCorners", value);
  const [width, height] = [sayAcross(extent.width), sayAcross(extent.height)];
  const side = say("side", polygon.side);
  dimensionSide(sheet, outer, side);

  // The label of a corner-down side may reach past the figure.
  const right = canvasBox(canvas).x1 + LANE;
  const left = canvasBox(canvas).x0 - LANE + 4;
  const openingBox = boxAround(corners(opening.apothem));
  const opened = polygonExtent(opening, pose).height;
  const lowest = (points: readonly Point[], y: number): Point =>
    points.filter((point) => Math.abs(point.y - y) < 1e-6).reduce((a, b) => (a.x < b.x ? a : b));
  const openingCorners = corners(opening.apothem);
  plumbDimension(canvas, {
    from: lowest(openingCorners, openingBox.y0),
    to: lowest(openingCorners, openingBox.y1),
    at: left,
    measure: "opening",
    label: words.opening({ value: options.length(opened) }),
    outside: "before",
  });
  const said = [side, width];
  const other = pose === "side-down" ? polygon.acrossCorners : polygon.acrossFlats;
  if (geometry.sides % 4 === 0) {
    const diagonal = sayAcross(other);
    dimensionDiagonal(sheet, outer, diagonal);
    said.push(diagonal);
  } else {
    const rightmost = (y: number): Point =>
      outer.filter((point) => Math.abs(point.y - y) < 1e-6).reduce((a, b) => (a.x > b.x ? a : b));
    plumbDimension(canvas, { from: rightmost(box.y0), to: rightmost(box.y1), at: right, ...height });
    said.push(height);
  }
  const leftmost = outer.reduce((a, b) => (b.x < a.x - 1e-6 || (Math.abs(b.x - a.x) < 1e-6 && b.y > a.y) ? b : a));
  const rightmost = outer.reduce((a, b) => (b.x > a.x + 1e-6 || (Math.abs(b.x - a.x) < 1e-6 && b.y > a.y) ? b : a));
  levelDimension(canvas, { from: leftmost, to: rightmost, at: canvasBox(canvas).y1 + LANE, ...width });
  return said.map(({ label }) => label);
}
