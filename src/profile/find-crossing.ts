import type { Point } from "../core/geometry-types.js";
import { turnOf } from "./orientation.js";

/** Whether a point known to be on the line through a and b lies between them, ends included. */
function between(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y)
  );
}

/** Whether two edges have a point in common, ends included. */
function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const atA = turnOf(c, d, a);
  const atB = turnOf(c, d, b);
  const atC = turnOf(a, b, c);
  const atD = turnOf(a, b, d);
  if (atA * atB < 0 && atC * atD < 0) return true;
  return (
    (atA === 0 && between(c, d, a)) ||
    (atB === 0 && between(c, d, b)) ||
    (atC === 0 && between(a, b, c)) ||
    (atD === 0 && between(a, b, d))
  );
}

/** Whether the edge b to c runs back over the edge a to b. */
function doublesBack(a: Point, b: Point, c: Point): boolean {
  return turnOf(a, b, c) === 0 && (between(a, b, c) || between(b, c, a));
}

/**
 * Two edges of a closed outline that cross, touch or run over each other. Edge k goes from point k to the next. Unchecked.
 *
 * Edges are visited by their leftmost end, so that only those that overlap sideways are compared. Of several such pairs it
 * is the first in the outline's order.
 *
 * @param outline - three or more points, no two in a row equal
 * @returns the two edges' indexes, the smaller first, or undefined when the outline is simple
 */
export function findCrossing(outline: readonly Point[]): readonly [number, number] | undefined {
  const n = outline.length;
  const at = (index: number): Point => outline[index % n]!;
  const left = (edge: number): number => Math.min(at(edge).x, at(edge + 1).x);
  const right = (edge: number): number => Math.max(at(edge).x, at(edge + 1).x);
  const edges = outline.map((_, index) => index).sort((i, j) => left(i) - left(j));
  let first: readonly [number, number] | undefined;
  for (let k = 0; k < n; k++) {
    const edge = edges[k]!;
    for (let l = k + 1; l < n && left(edges[l]!) <= right(edge); l++) {
      const i = Math.min(edge, edges[l]!);
      const j = Math.max(edge, edges[l]!);
      if (first !== undefined && (i > first[0] || (i === first[0] && j >= first[1]))) continue;
      const faulty =
        j === i + 1
          ? doublesBack(at(i), at(j), at(j + 1))
          : i === 0 && j === n - 1
            ? doublesBack(at(j), at(0), at(1))
            : meet(at(i), at(i + 1), at(j), at(j + 1));
      if (faulty) first = [i, j];
    }
  }
  return first;
}
