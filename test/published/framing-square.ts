/**
 * Figures for laying out polygons and angles with the steel square: so many inches on one arm against so many on the
 * other. They were meant to be read off a square, in whole, half or thirty-second inches; where a figure is coarser
 * than it looks, its error stands beside it.
 */

/** Inches on both arms for the miter of a polygon. */
export interface SquareFigure {
  /** Number of sides. */
  readonly sides: number;
  /** Inches on the first arm. */
  readonly first: number;
  /** Inches on the second arm; second over first is the tangent of the angle. */
  readonly second: number;
  /** Which angle it is: the plan miter, or what it lacks to a right angle (the same figure read from the other arm). */
  readonly angle: "miter" | "complement";
  /** By how many degrees the figures miss the true angle, to three decimals. */
  readonly error: number;
  /** Where it is printed. */
  readonly source: string;
}

const HODGSON = "Fred T. Hodgson, ABC of the Steel Square and its Uses, Frederick J. Drake, division A, figure 21";
const CYCLOPEDIA =
  "Cyclopedia of Architecture, Carpentry and Building, American Technical Society, The Steel Square, p. 345";
const RADFORD = "Radford's Cyclopedia of Construction, volume 8, Steel Square, Miscellaneous Rules, figure 177";

/** Whole and half inches by rule of thumb. */
export const RULES_OF_THUMB: readonly SquareFigure[] = [
  { sides: 4, first: 12, second: 12, angle: "miter", error: 0, source: HODGSON },
  { sides: 8, first: 12, second: 5, angle: "miter", error: 0.12, source: HODGSON },
  { sides: 6, first: 12, second: 7, angle: "miter", error: 0.256, source: HODGSON },
  { sides: 3, first: 7, second: 4, angle: "complement", error: -0.255, source: CYCLOPEDIA },
  { sides: 5, first: 11, second: 8, angle: "miter", error: 0.027, source: CYCLOPEDIA },
  { sides: 6, first: 4, second: 7, angle: "complement", error: 0.255, source: CYCLOPEDIA },
  { sides: 7, first: 12.5, second: 6, angle: "miter", error: -0.073, source: CYCLOPEDIA },
  { sides: 8, first: 17, second: 7, angle: "miter", error: -0.12, source: CYCLOPEDIA },
  { sides: 9, first: 22.5, second: 9, angle: "miter", error: 1.801, source: CYCLOPEDIA },
  { sides: 10, first: 9.5, second: 3, angle: "miter", error: -0.474, source: CYCLOPEDIA },
  { sides: 7, first: 14, second: 7, angle: "miter", error: 0.851, source: RADFORD },
];

/** Inches against 12, finely printed: Hodgson gives these as "the exact figures". */
export const HODGSON_EXACT: readonly (readonly [sides: number, printed: number])[] = [
  [8, 4 + 31 / 32],
  [6, 6 + 15 / 16],
];

/**
 * Figures commonly printed in early twentieth-century steel-square books for 12 inches on one arm (values from memory,
 * no book seen). `coarse`: off by more than a thirty-second, by so many inches.
 */
export const TWELVE_INCH: readonly { readonly sides: number; readonly printed: number; readonly coarse?: number }[] = [
  { sides: 3, printed: 20 + 7 / 8, coarse: 0.0904 },
  { sides: 4, printed: 12 },
  { sides: 5, printed: 8 + 25 / 32, coarse: 0.0627 },
  { sides: 6, printed: 6 + 15 / 16 },
  { sides: 7, printed: 5 + 25 / 32 },
  { sides: 8, printed: 4 + 31 / 32 },
  { sides: 9, printed: 4 + 3 / 8 },
  { sides: 10, printed: 3 + 7 / 8 },
  { sides: 11, printed: 3 + 17 / 32 },
  { sides: 12, printed: 3 + 7 / 32 },
];

/** An angle laid out by so many inches on one arm against `base` on the other. */
export interface AngleFigure {
  /** The angle in degrees. */
  readonly degrees: number;
  /** Inches on the first arm. */
  readonly base: number;
  /** Inches on the other, as printed. */
  readonly printed: number;
  /** Off by more than half of a thirty-second, by so many inches. */
  readonly coarse?: number;
}

/**
 * International Correspondence Schools, The Building Trades Pocketbook, "Laying Out Angles - By Steel Square". The
 * 10-degree figure is printed 2 3/32; the nearest thirty-second is 2 1/8.
 */
export const POCKETBOOK_ANGLES: readonly AngleFigure[] = [
  { degrees: 5, base: 12, printed: 1 + 1 / 16 },
  { degrees: 10, base: 12, printed: 2 + 3 / 32, coarse: -0.0222 },
  { degrees: 15, base: 12, printed: 3 + 7 / 32 },
  { degrees: 18 + 25 / 60, base: 12, printed: 4 },
  { degrees: 20, base: 12, printed: 4 + 3 / 8 },
  { degrees: 22 + 30 / 60, base: 12, printed: 4 + 31 / 32 },
  { degrees: 25, base: 12, printed: 5 + 19 / 32 },
  { degrees: 26 + 33 / 60, base: 12, printed: 6 },
  { degrees: 30, base: 12, printed: 6 + 15 / 16 },
  { degrees: 33 + 42 / 60, base: 12, printed: 8 },
  { degrees: 35, base: 12, printed: 8 + 13 / 32 },
  { degrees: 40, base: 12, printed: 10 + 1 / 16 },
  { degrees: 45, base: 12, printed: 12 },
  { degrees: 50, base: 12, printed: 14 + 5 / 16 },
  { degrees: 53 + 7 / 60, base: 12, printed: 16 },
  { degrees: 55, base: 12, printed: 17 + 1 / 8 },
  { degrees: 60, base: 12, printed: 20 + 25 / 32 },
  { degrees: 65, base: 3, printed: 6 + 7 / 16 },
  { degrees: 67 + 30 / 60, base: 3, printed: 7 + 1 / 4 },
  { degrees: 70, base: 3, printed: 8 + 1 / 4 },
  { degrees: 75, base: 3, printed: 11 + 3 / 16 },
  { degrees: 80, base: 3, printed: 17 },
];

/** Length of a brace between equal legs, that is the diagonal of a square. Some are cut off after two decimals. */
export const BRACES: readonly { readonly legs: number; readonly printed: string; readonly source: string }[] = [
  { legs: 18, printed: "25.45", source: "Hodgson, ABC of the Steel Square" },
  { legs: 36, printed: "50.91", source: "Cyclopedia of Architecture, Carpentry and Building" },
  { legs: 42, printed: "59.40", source: "Cyclopedia of Architecture, Carpentry and Building" },
  { legs: 54, printed: "76.37", source: "W. Noyes, Handwork in Wood, 1910" },
  { legs: 57, printed: "80.61", source: "International Correspondence Schools, The Building Trades Pocketbook" },
];
