import type { Point } from "./pad.js";

/** A vector: along the ring at a corner, outward on its bisector, up. */
export type Vector = readonly [along: number, out: number, up: number];

export function plus(...vectors: readonly Vector[]): Vector {
  return vectors.reduce((sum, [a, b, c]): Vector => [sum[0] + a, sum[1] + b, sum[2] + c], [0, 0, 0]);
}

export function times(factor: number, [a, b, c]: Vector): Vector {
  return [factor * a, factor * b, factor * c];
}

export function dotProduct(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Someone who looks at the corner from inside the frame, from above and a little from the side. */
export interface View {
  /** From the corner toward the eye, of length 1. */
  readonly toEye: Vector;
  /** Parallel projection: x to the right, y up. */
  readonly project: (vector: Vector) => Point;
}

/**
 * A view of the corner.
 *
 * @param around - by how many degrees the eye is moved round the corner, away from its bisector
 * @param above - by how many degrees it looks down
 * @returns the view
 */
export function viewFrom(around: number, above: number): View {
  const [a, b] = [(around * Math.PI) / 180, (above * Math.PI) / 180];
  // On the bisector the eye stands at the frame's center and looks outward, so the ring runs to the left.
  const toEye: Vector = [Math.sin(a) * Math.cos(b), -Math.cos(a) * Math.cos(b), Math.sin(b)];
  const right: Vector = [-Math.cos(a), -Math.sin(a), 0];
  // Along, outward and up are a left-handed set of axes: so is the order of the product.
  const up = cross(right, toEye);
  return { toEye, project: (vector) => ({ x: dotProduct(vector, right), y: dotProduct(vector, up) }) };
}
