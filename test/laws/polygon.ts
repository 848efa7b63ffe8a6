import fc from "fast-check";
import type { Box, Point, Pose } from "miterwright";
import { POLYGON_MEASURES, type PolygonMeasure } from "miterwright/polygon";

/**
 * What holds of every polygon, and what to try it on. The checkers look at points and sides only; none of them uses a
 * formula of the library.
 */

/** Numbers of sides: mostly those people make, sometimes any up to the limit. */
export const anySides: fc.Arbitrary<number> = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: 3, max: 24 }) },
  { weight: 1, arbitrary: fc.integer({ min: 25, max: 1000 }) },
  { weight: 1, arbitrary: fc.integer({ min: 1001, max: 1_000_000 }) },
);

/** Numbers of sides few enough to look at every corner. */
export const fewSides: fc.Arbitrary<number> = fc.integer({ min: 3, max: 60 });

/** Lengths from one end of their range to the other, evenly by magnitude. */
export const anyLength: fc.Arbitrary<number> = fc
  .double({ min: -100, max: 100, noNaN: true })
  .map((power) => Math.min(Math.max(10 ** power, 1e-100), 1e100));

/** Lengths as found in a shop, in millimeters. */
export const shopLength: fc.Arbitrary<number> = fc.double({ min: 1, max: 5000, noNaN: true });

/** Both poses. */
export const anyPose: fc.Arbitrary<Pose> = fc.constantFrom("side-down", "corner-down");

/** Names of measures. */
export const anyMeasure: fc.Arbitrary<PolygonMeasure> = fc.constantFrom(...POLYGON_MEASURES);

/**
 * Every number inside a result.
 *
 * @param value - a number, or plain data
 * @returns the numbers, in no order
 */
export function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/**
 * The numbers of a result that no public function may return: NaN, infinite ones and -0.
 *
 * @param value - plain data
 * @returns the faulty numbers
 */
export function faultyNumbers(value: unknown): number[] {
  return numbersIn(value).filter((x) => !Number.isFinite(x) || Object.is(x, -0));
}

/**
 * By how many degrees a walk along the corners turns to the left at each of them.
 *
 * @param corners - the corners of a closed polygon
 * @returns one turn a corner, -180 to 180
 */
export function turnsAt(corners: readonly Point[]): number[] {
  return corners.map((corner, k) => {
    const before = corners.at(k - 1)!;
    const after = corners[(k + 1) % corners.length]!;
    const [ax, ay] = [corner.x - before.x, corner.y - before.y];
    const [bx, by] = [after.x - corner.x, after.y - corner.y];
    return (Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * 180) / Math.PI;
  });
}

/**
 * Length of each side.
 *
 * @param corners - the corners of a closed polygon
 * @returns the distance from each corner to the next
 */
export function sideLengths(corners: readonly Point[]): number[] {
  return corners.map((corner, k) => {
    const after = corners[(k + 1) % corners.length]!;
    return Math.hypot(after.x - corner.x, after.y - corner.y);
  });
}

/**
 * Area by the surveyor's rule.
 *
 * @param corners - the corners of a closed polygon, counter-clockwise
 * @returns its area
 */
export function areaInside(corners: readonly Point[]): number {
  return corners.reduce((sum, { x, y }, k) => {
    const after = corners[(k + 1) % corners.length]!;
    return sum + (x * after.y - y * after.x) / 2;
  }, 0);
}

/**
 * How far a point lies inside each side of a convex polygon.
 *
 * @param corners - its corners, counter-clockwise
 * @param point - the point
 * @returns the distances from the lines of the sides, negative where it lies outside
 */
export function depthsInside(corners: readonly Point[], point: Point): number[] {
  return corners.map((from, k) => {
    const to = corners[(k + 1) % corners.length]!;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    return (dx * (point.y - from.y) - dy * (point.x - from.x)) / Math.hypot(dx, dy);
  });
}

/**
 * The corners of an upright rectangle.
 *
 * @param box - its size
 * @param center - its center
 * @returns the corners, counter-clockwise from the lower left
 */
export function boxCorners({ width, height }: Box, { x, y }: Point): Point[] {
  return [
    { x: x - width / 2, y: y - height / 2 },
    { x: x + width / 2, y: y - height / 2 },
    { x: x + width / 2, y: y + height / 2 },
    { x: x - width / 2, y: y + height / 2 },
  ];
}

/**
 * How much room an upright rectangle has in a convex polygon: negative when it sticks out.
 *
 * @param corners - the polygon's corners, counter-clockwise
 * @param box - the rectangle's size
 * @param center - its center
 * @returns the least distance from a corner of the rectangle to the line of a side
 */
export function roomInside(corners: readonly Point[], box: Box, center: Point): number {
  return Math.min(...boxCorners(box, center).flatMap((point) => depthsInside(corners, point)));
}

/**
 * The upright box around some points.
 *
 * @param points - the points
 * @returns its size and center
 */
export function boxAround(points: readonly Point[]): Box & { readonly center: Point } {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { width: right - left, height: top - bottom, center: { x: (left + right) / 2, y: (bottom + top) / 2 } };
}

/**
 * Smallest apothem of a regular polygon that is rotated so and holds an upright rectangle anywhere, by nested searches
 * over the place: the apothem that is needed is convex in it.
 *
 * @param sides - number of sides
 * @param rotation - degrees counter-clockwise from standing on a side
 * @param box - the rectangle
 * @returns the apothem, to about 1e-12 of the rectangle's diagonal
 */
export function apothemBySearch(sides: number, rotation: number, { width, height }: Box): number {
  const normals = Array.from({ length: sides }, (_, k) => {
    const angle = ((rotation - 90 + (360 * k) / sides) * Math.PI) / 180;
    const [x, y] = [Math.cos(angle), Math.sin(angle)];
    return { x, y, support: (Math.abs(x) * width + Math.abs(y) * height) / 2 };
  });
  const needed = (x: number, y: number): number =>
    normals.reduce((most, u) => Math.max(most, u.support + u.x * x + u.y * y), 0);
  const reach = Math.hypot(width, height);
  const best = (x: number): number => leastOf((y) => needed(x, y), -reach, reach);
  return leastOf(best, -reach, reach);
}

/**
 * Least value of a convex function, by golden sections.
 *
 * @param of - the function
 * @param from - start of the interval
 * @param to - end of the interval
 * @returns the least value found
 */
export function leastOf(of: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [a, b] = [high - golden * (high - low), low + golden * (high - low)];
  let [atA, atB] = [of(a), of(b)];
  for (let step = 0; step < 64; step++) {
    if (atA < atB) {
      [high, b, atB] = [b, a, atA];
      a = high - golden * (high - low);
      atA = of(a);
    } else {
      [low, a, atA] = [a, b, atB];
      b = low + golden * (high - low);
      atB = of(b);
    }
  }
  return Math.min(atA, atB);
}
