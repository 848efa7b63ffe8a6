/*
 * How much a cut plane's unit normal, and the angles read off it, may suffer from the cancellation in its components. A
 * component that is a signed sum is allowed an error in proportion to the sum of its terms' magnitudes. That error is
 * carried on here to first order: into the unit normal by way of its length, and into the angles by way of the arc tangents.
 */

/** A normal by its components along, across and through a piece. */
export type Parts = readonly [along: number, across: number, through: number];

/** Cosine of an angle in degrees, good relative to itself near 90. */
export const cosine = (degrees: number): number => Math.sin(((90 - Math.abs(degrees)) * Math.PI) / 180);
/** Sine of an angle in degrees, good relative to itself near 0 and 180. */
export const sine = (degrees: number): number => {
  const magnitude = Math.abs(degrees);
  return Math.sign(degrees) * Math.sin(((magnitude > 90 ? 180 - magnitude : magnitude) * Math.PI) / 180);
};

const DEGREES = 180 / Math.PI;

/**
 * The sums of magnitudes for a unit normal.
 *
 * @param unit - its components
 * @param terms - for each component the sum of its terms' magnitudes, on the scale on which the normal has length 1
 * @returns the same with what the length's own error adds
 */
export function unitTerms(unit: Parts, terms: Parts): Parts {
  const length = Math.abs(unit[0]) * terms[0] + Math.abs(unit[1]) * terms[1] + Math.abs(unit[2]) * terms[2];
  const carried = (k: 0 | 1 | 2): number => terms[k] + Math.abs(unit[k]) * length;
  return [carried(0), carried(1), carried(2)];
}

/** How far the terms of two legs exceed the legs themselves, as an angle between them, in degrees. */
function directionTerms(y: number, x: number, excessY: number, excessX: number): number {
  const length = Math.hypot(x, y);
  return DEGREES * (Math.abs(x / length) * (excessY / length) + Math.abs(y / length) * (excessX / length));
}

/**
 * The same for miter and bevel, in degrees. Without cancellation both are 0.
 *
 * @param normal - along the piece, level across it, and up, as it lies
 * @param terms - for each component the sum of its terms' magnitudes
 * @returns what to allow for the two angles
 */
export function settingTerms(normal: Parts, terms: Parts): { readonly miter: number; readonly bevel: number } {
  const [along, out, up] = normal;
  const excess = (k: 0 | 1 | 2): number => Math.max(0, terms[k] - Math.abs(normal[k]));
  const level = Math.hypot(along, out);
  const levelExcess = Math.abs(along / level) * excess(0) + Math.abs(out / level) * excess(1);
  return {
    miter: directionTerms(out, along, excess(1), excess(0)),
    bevel: directionTerms(up, level, excess(2), levelExcess),
  };
}
