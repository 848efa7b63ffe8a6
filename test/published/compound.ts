/** A figure read off a printed steel square rule: two lengths whose ratio is the tangent of the cut. */
export interface SideCut {
  /** Sides of the plan. */
  readonly sides: number;
  /** Rise of the roof or hopper, in inches per 12 of run. */
  readonly rise: number;
  /** Inches taken on the tongue: the run's half turn. */
  readonly tongue: number;
  /** Inches taken on the blade: the common rafter's length. */
  readonly blade: number;
  /** How the book writes them. */
  readonly printed: string;
  /** How coarse the figures are, in inches. */
  readonly coarse: number;
}

/**
 * Side cuts of jack rafters against the hip, which are the miters of a hopper of that slope ("a hip roof is the same as a
 * hopper inverted").
 *
 * Source, read: Fred T. Hodgson, ABC of the Steel Square and its Uses (Project Gutenberg 49273), Figs. 38, 39, 55-58 and the
 * passage on hopper miters (p. 101).
 */
export const SIDE_CUTS: readonly SideCut[] = [
  { sides: 4, rise: 8, tongue: 12, blade: 14.4375, printed: "12 and 14 7/16", coarse: 1 / 16 },
  { sides: 4, rise: 8, tongue: 12, blade: 14.5, printed: 'Fig. 38, 12 and "nearly 14 1/2"', coarse: 1 / 8 },
  // The octagon's tongue is 4 31/32 exactly; the book takes 5.
  { sides: 8, rise: 8, tongue: 5, blade: 14.5, printed: "Fig. 39, 5 and 14 1/2", coarse: 1 / 8 },
];

/**
 * Backing of a hip on a square plan, which is the bevel of a four-sided hopper: "take height of hip on tongue, length of hip on
 * blade, and tongue gives bevel", with the hip's run taken as 17 for 12 of common run (16.97 exactly).
 *
 * Source, read: Hodgson, the same book, Fig. 41 and the passage before the hopper rules.
 */
export const HIP_BACKINGS: readonly { readonly rise: number; readonly hipRun: number }[] = [
  { rise: 8, hipRun: 17 },
  { rise: 9, hipRun: 17 },
  { rise: 10, hipRun: 17 },
];

/** Settings of crown moldings for a square corner, cut flat. Generally known figures; value from memory. */
export const CROWN_SETTINGS: readonly { readonly spring: number; readonly miter: number; readonly bevel: number }[] = [
  { spring: 38, miter: 31.62, bevel: 33.86 },
  { spring: 45, miter: 35.26, bevel: 30 },
];
