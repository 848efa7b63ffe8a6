import { cosDeg, sinDeg } from "../core/degrees.js";
import type { Point } from "../core/geometry-types.js";
import { drawLine, drawText, type Canvas } from "./canvas.js";
import { LINE_HEIGHT, TEXT_SIZE } from "./looks.js";
import { boxesMeet, strokeMeetsBox, type PaperBox } from "./paper.js";
import type { Meaning } from "./parts.js";
import { textWidth } from "./text-width.js";

/** What a label says and where it would like to be. */
export interface LabelOptions {
  /** What it is; default a label. */
  readonly is?: Meaning;
  /** The point that it names. */
  readonly at: Point;
  /** Its lines of text. */
  readonly lines: readonly string[];
  /** In which direction it would best stand, in degrees counter-clockwise from the right; default 0. */
  readonly toward?: number;
  /** By how much it may stand in another direction, in degrees up to 180; default 180. */
  readonly turn?: number;
  /** How far from the point it would best stand; default 4. */
  readonly reach?: number;
  /** Height of its letters; default that of ordinary labels. */
  readonly size?: number;
  /** Whether it belongs to a dimension and takes its color. */
  readonly accent?: boolean;
}

/** Room between a label and other labels. */
const TEXT_GAP: number = 2.5;
/** Room between a label and lines. */
const STROKE_GAP: number = 1.5;
/** By how much the reach grows from one try to the next. */
const STEP: number = 5;
/** A label this far away gets a line that leads to it. */
const LEADER: number = 12;
/** Directions that are tried, away from the wished one. */
const DIRECTIONS: readonly number[] = [
  0, 15, -15, 30, -30, 45, -45, 60, -60, 80, -80, 100, -100, 120, -120, 150, -150, 180,
];
/** Beyond this reach a label may stand in any direction, and its line may pass under other labels. */
const FAR: number = 70;
/** Beyond this reach there is nothing any more that a label could meet. */
const FARTHEST: number = 4000;

function isFree(canvas: Canvas, box: PaperBox, leader: readonly [Point, Point] | null): boolean {
  return (
    !canvas.texts.some((text) => boxesMeet(text, box, TEXT_GAP)) &&
    !canvas.strokes.some((stroke) => strokeMeetsBox(stroke, box, STROKE_GAP)) &&
    (leader === null || !canvas.texts.some((text) => strokeMeetsBox(leader, text, 1)))
  );
}

/** The point of a box that is nearest to a point outside it. */
function nearestOf(box: PaperBox, { x, y }: Point): Point {
  return { x: Math.min(Math.max(x, box.x0), box.x1), y: Math.min(Math.max(y, box.y0), box.y1) };
}

/** Writes a label at the free spot nearest to where it is wished: where it meets no other label and no line. */
export function placeLabel(canvas: Canvas, options: LabelOptions): void {
  const { at, lines, toward = 0, turn = 180, reach = 4, size = TEXT_SIZE, accent = false } = options;
  const { is = "label" } = options;
  const height = (LINE_HEIGHT * size) / TEXT_SIZE;
  const width = Math.max(...lines.map((line) => textWidth(line, size).width));
  for (let distance = reach; ; distance += STEP) {
    for (const aside of DIRECTIONS) {
      if (Math.abs(aside) > turn && distance < FAR) continue;
      const dx = cosDeg(toward + aside);
      const dy = -sinDeg(toward + aside);
      const middle = {
        x: at.x + dx * (distance + width / 2),
        y: at.y + dy * (distance + (lines.length * height) / 2),
      };
      const half = (lines.length * height) / 2 - 1.5;
      const box = { x0: middle.x - width / 2, x1: middle.x + width / 2, y0: middle.y - half, y1: middle.y + half };
      const leader = distance < LEADER ? null : ([at, nearestOf(box, at)] as const);
      if (distance < FARTHEST && !isFree(canvas, box, distance < FAR ? leader : null)) continue;
      if (leader !== null) drawLine(canvas, "leader", accent ? "dimension" : "thin", leader);
      lines.forEach((line, index) => {
        const y = middle.y + (index - lines.length / 2) * height + 0.78 * height;
        drawText(canvas, { x: middle.x, y }, line, { is, anchor: "middle", size, accent });
      });
      return;
    }
  }
}
