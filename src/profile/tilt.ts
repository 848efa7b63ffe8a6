/**
 * How far outward a section point stands once tilted: x cos s - y sin s. Unchecked.
 *
 * @param x - its abscissa, or the difference of two
 * @param y - its ordinate, or the difference of two
 * @param cos - cosine of the tilt
 * @param sin - sine of the tilt
 * @returns the level distance, never -0
 */
export function outOf(x: number, y: number, cos: number, sin: number): number {
  return x * cos - y * sin + 0;
}

/**
 * How high a section point stands once tilted: x sin s + y cos s. Unchecked.
 *
 * @param x - its abscissa, or the difference of two
 * @param y - its ordinate, or the difference of two
 * @param cos - cosine of the tilt
 * @param sin - sine of the tilt
 * @returns the height, never -0
 */
export function upOf(x: number, y: number, cos: number, sin: number): number {
  return x * sin + y * cos + 0;
}
