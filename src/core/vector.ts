/** A vector of space as a bare triple, for kernels. */
export type Vector = readonly [number, number, number];

/** Scalar product. */
export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product. */
export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length of a vector, safe from overflow. */
export function norm(a: Vector): number {
  return Math.hypot(a[0], a[1], a[2]);
}

/** A vector times a number. */
export function scale(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}
