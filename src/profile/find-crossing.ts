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
  if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) return false;
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

/** Whether two edges, the first by its index first, have more in common than the corner that neighbors share. */
function areFaulty(outline: readonly Point[], i: number, j: number): boolean {
  const n = outline.length;
  const [a, b, c, d] = [outline[i]!, outline[i + 1]!, outline[j]!, outline[(j + 1) % n]!];
  if (j === i + 1) return doublesBack(a, b, d);
  return i === 0 && j === n - 1 ? doublesBack(c, a, b) : meet(a, b, c, d);
}

/**
 * Two edges of a closed outline that cross, touch or run over each other. Edge k goes from point k to the next. Unchecked.
 *
 * Edges are visited by their leftmost end, so that only those that overlap sideways are compared. Where several pairs cross, the first in the outline's order
 * is returned. Gives the smaller index first; `undefined` where the outline is simple.
 */
export function findCrossing(outline: readonly Point[]): readonly [number, number] | undefined {
  const n = outline.length;
  const lefts: number[] = [];
  const rights: number[] = [];
  const edges: number[] = [];
  for (let k = 0; k < n; k++) {
    const [x, next] = [outline[k]!.x, outline[(k + 1) % n]!.x];
    lefts.push(Math.min(x, next));
    rights.push(Math.max(x, next));
    edges.push(k);
  }
  edges.sort((i, j) => lefts[i]! - lefts[j]!);
  let first: readonly [number, number] | undefined;
  for (let k = 0; k < n; k++) {
    const edge = edges[k]!;
    const right = rights[edge]!;
    for (let l = k + 1; l < n && lefts[edges[l]!]! <= right; l++) {
      const i = Math.min(edge, edges[l]!);
      const j = Math.max(edge, edges[l]!);
      if (first !== undefined && (i > first[0] || (i === first[0] && j >= first[1]))) continue;
      if (areFaulty(outline, i, j)) first = [i, j];
    }
  }
  return first;
}
