import type { Point } from "../core/geometry-types.js";

/** An upright rectangle on the paper; y runs down. */
export interface PaperBox {
  /** Left edge. */
  readonly x0: number;
  /** Upper edge. */
  readonly y0: number;
  /** Right edge. */
  readonly x1: number;
  /** Lower edge. */
  readonly y1: number;
}

/** A straight line on the paper. */
export type Stroke = readonly [from: Point, to: Point];

/** Whether two boxes have a point in common. */
export function boxesMeet(a: PaperBox, b: PaperBox, gap: number): boolean {
  return a.x0 < b.x1 + gap && b.x0 < a.x1 + gap && a.y0 < b.y1 + gap && b.y0 < a.y1 + gap;
}

/** Whether a line passes through a box: it is clipped by the box's four sides in turn, until nothing is left of it. */
export function strokeMeetsBox(stroke: Stroke, box: PaperBox, gap: number): boolean {
  const [from, to] = stroke;
  let start = 0;
  let end = 1;
  const clip = (position: number, step: number, low: number, high: number): boolean => {
    if (step === 0) return position > low && position < high;
    const a = (low - position) / step;
    const b = (high - position) / step;
    start = Math.max(start, Math.min(a, b));
    end = Math.min(end, Math.max(a, b));
    return start < end;
  };
  return (
    clip(from.x, to.x - from.x, box.x0 - gap, box.x1 + gap) && clip(from.y, to.y - from.y, box.y0 - gap, box.y1 + gap)
  );
}

/** The smallest box round points. */
export function boxAround(points: readonly Point[]): PaperBox {
  const box = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  for (const { x, y } of points) {
    box.x0 = Math.min(box.x0, x);
    box.x1 = Math.max(box.x1, x);
    box.y0 = Math.min(box.y0, y);
    box.y1 = Math.max(box.y1, y);
  }
  return box;
}

/** The corners of an upright rectangle. */
export function boxCorners(x0: number, y0: number, x1: number, y1: number): Point[] {
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}
