/**
 * Published values of units, fractions and angles. Where a row was recalled instead of read, it says "value from memory".
 */

/**
 * Addendum (effective 1 July 1959) to National Bureau of Standards Circular 572: 1 yard = 0.9144 meter exactly, from which 1
 * inch = 25.4 millimeters. Read.
 */
export const YARD_1959 = { yardInMeters: 0.9144, inchInMillimeters: 25.4, inchesInYard: 36, feetInYard: 3 } as const;

/** NIST Special Publication 811 (2008), appendix B.8: the exact factors of length. Read. */
export const LENGTH_FACTORS = [
  { count: 1, unit: "in", meters: 0.0254 },
  { count: 1, unit: "ft", meters: 0.3048 },
  { count: 3, unit: "ft", meters: 0.9144 },
] as const;

/** NIST Special Publication 811 (2008), appendix B.8: radians in a unit of angle, to 7 digits. Read. */
export const ANGLE_FACTORS = [
  { text: "1°", radians: "1.745329e-2" },
  { text: "1'", radians: "2.908882e-4" },
  { text: '1"', radians: "4.848137e-6" },
] as const;

/**
 * NIST LC 1137, Metric Style Guide (2000), rule of reason: 36 inches are written 91 cm and not 91.44 cm,
 * 40.1 inches 101.9 cm and not 101.854. Read.
 */
export const RULE_OF_REASON = [
  { inches: 36, digits: 0, rounded: "91 cm", full: "91.44 cm" },
  { inches: 40.1, digits: 1, rounded: "101.9 cm", full: "101.854 cm" },
] as const;

/**
 * N. Hawkins, Self-Help Mechanical Drawing, Table of Decimal Equivalents, 8ths to 64ths: the fraction as it is printed, and the
 * decimal, to which zeros were added. Read.
 */
export const DECIMAL_EQUIVALENTS: readonly (readonly [fraction: string, decimal: string])[] = `
  1/64 0.015625  1/32 0.031250  3/64 0.046875  1/16 0.062500  5/64 0.078125  3/32 0.093750  7/64 0.109375  1/8 0.125000
  9/64 0.140625  5/32 0.156250  11/64 0.171875  3/16 0.187500  13/64 0.203125  7/32 0.218750  15/64 0.234375  1/4 0.250000
  17/64 0.265625  9/32 0.281250  19/64 0.296875  5/16 0.312500  21/64 0.328125  11/32 0.343750  23/64 0.359375  3/8 0.375000
  25/64 0.390625  13/32 0.406250  27/64 0.421875  7/16 0.437500  29/64 0.453125  15/32 0.468750  31/64 0.484375  1/2 0.500000
  33/64 0.515625  17/32 0.531250  35/64 0.546875  9/16 0.562500  37/64 0.578125  19/32 0.593750  39/64 0.609375  5/8 0.625000
  41/64 0.640625  21/32 0.656250  43/64 0.671875  11/16 0.687500  45/64 0.703125  23/32 0.718750  47/64 0.734375  3/4 0.750000
  49/64 0.765625  25/32 0.781250  51/64 0.796875  13/16 0.812500  53/64 0.828125  27/32 0.843750  55/64 0.859375  7/8 0.875000
  57/64 0.890625  29/32 0.906250  59/64 0.921875  15/16 0.937500  61/64 0.953125  31/32 0.968750  63/64 0.984375  1/1 1.000000
`
  .trim()
  .split(/\s{2,}/)
  .map((cell) => cell.split(" ") as [string, string]);

/**
 * Dihedral angles as they are printed, with the square of the cosine each has by geometry; all are obtuse. Of 51.8 and 8.2
 * seconds the encyclopedia prints the whole ones: digits that are dropped, not rounded. Read.
 */
export const PRINTED_DIHEDRALS = [
  // Encyclopedia article on the dodecahedron: 116 degrees 34 minutes.
  { solid: "dodecahedron", squaredCosine: 0.2, minutes: "116°34'" },
  // Encyclopedia article on the truncated cuboctahedron: 144 44 08 and 125 15 51.
  { solid: "truncated cuboctahedron, 4-6", squaredCosine: 0.6666666666666666, seconds: "144°44'08\"" },
  { solid: "truncated cuboctahedron, 6-8", squaredCosine: 0.3333333333333333, seconds: "125°15'51\"" },
] as const;

/** Machinery's Handbook, pages 121-122: angles as solutions of triangles print them, degrees and minutes. Read. */
export const PRINTED_ANGLES = [
  { text: "36° 0.9'", tenthsOfMinutes: 21_609 },
  { text: "53° 12'", tenthsOfMinutes: 31_920 },
  { text: "22° 38.6'", tenthsOfMinutes: 13_586 },
  { text: "35° 2.5'", tenthsOfMinutes: 21_025 },
] as const;
