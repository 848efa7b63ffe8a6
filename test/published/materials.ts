/** Published values of glass and acrylic. */

/**
 * EN 572-1, soda-lime silicate glass, general properties. Read in handbook pages and technical bulletins of the glass trade that quote it; the standard itself was
 * not opened.
 */
export const FLOAT_GLASS = {
  kilogramsPerCubicMeter: 2500,
  kilogramsPerSquareMeterAndMillimeter: 2.5,
  expansionPerKelvin: 9e-6,
} as const;

/**
 * Technical bulletin ATS-129 (2013-01-14), Properties of soda-lime silica float glass: the density in both systems, and an expansion smaller than the standard's, also
 * in both. Read.
 */
export const GLASS_BULLETIN = {
  kilogramsPerCubicMeter: 2500,
  poundsPerCubicFoot: 156,
  expansionPerKelvin: 8.3e-6,
  expansionPerDegreeFahrenheit: 4.6e-6,
} as const;

/** Acrylic sheet: specific gravity by ASTM D792 and expansion by ASTM D696, read in data sheets of such sheet. */
export const ACRYLIC = {
  specificGravity: 1.19,
  expansionPerDegreeFahrenheit: 0.00004,
  expansionPerKelvin: 7.2e-5,
} as const;

/** EN 572-2, float glass: nominal thicknesses in millimeters, and how much thicker or thinner a pane may be. Values from memory. */
export const GLASS_TOLERANCES: readonly (readonly [nominal: number, tolerance: number])[] = [
  [2, 0.2],
  [3, 0.2],
  [4, 0.2],
  [5, 0.2],
  [6, 0.2],
  [8, 0.3],
  [10, 0.3],
  [12, 0.3],
  [15, 0.5],
  [19, 1],
  [25, 1],
];

/** A pound in kilograms, exactly (NIST Special Publication 811, 2008, appendix B.8; value from memory). */
export const POUND: number = 0.45359237;
