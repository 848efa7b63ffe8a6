import type { Point } from "miterwright/errors";
import { expect } from "vitest";

/** Coordinates are written with two decimals, so shapes are read back to this. */
const READ = 0.02;

/** The angle of a line from plumb, in degrees: positive where it runs to the right as it goes up the paper. */
export function fromPlumb(a: Point, b: Point): number {
  const [low, high] = a.y > b.y ? [a, b] : [b, a];
  return (Math.atan2(high.x - low.x, low.y - high.y) * 180) / Math.PI;
}

/** The distance of two points. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/**
 * Expects a drawn shape to be a plan's shape, moved and enlarged but not turned nor mirrored: y runs down on the paper and up in the plan.
 *
 * @returns by how much it was enlarged
 */
export function expectSimilar(drawn: readonly Point[], wanted: readonly Point[]): number {
  expect(drawn).toHaveLength(wanted.length);
  const middle = (points: readonly Point[]): Point => ({
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  });
  const [from, to] = [middle(wanted), middle(drawn)];
  const size = (points: readonly Point[], center: Point): number =>
    Math.sqrt(points.reduce((sum, p) => sum + distance(p, center) ** 2, 0));
  const scale = size(drawn, to) / size(wanted, from);
  drawn.forEach(({ x, y }, index) => {
    expect(Math.abs(x - to.x - scale * (wanted[index]!.x - from.x))).toBeLessThan(READ);
    expect(Math.abs(y - to.y + scale * (wanted[index]!.y - from.y))).toBeLessThan(READ);
  });
  return scale;
}
