import type { ObstacleCode } from "../../saw/index.js";

/** What the words for an obstacle may tell of. */
export interface ObstacleValues {
  /** How far a scale goes and how far the cut needs it to; `null` of other obstacles, and where numbers are not asked for. */
  readonly degrees: {
    /** How far the scale goes. */
    readonly reach: string;
    /** How far the cut needs it to go. */
    readonly needs: string;
  } | null;
}

/** Why a saw cannot make a cut. */
export type ObstacleWords = { readonly [C in ObstacleCode]: (values: ObstacleValues) => string };

/** The sentence for a scale that ends too soon. */
function rangeText(what: string, { degrees }: ObstacleValues): string {
  const numbers = degrees === null ? "" : `: it goes to ${degrees.reach}, and the cut needs ${degrees.needs}`;
  return `${what} is more than this saw has${numbers}.`;
}

/** In English. */
export const englishObstacles: ObstacleWords = {
  "miter-range-left": (values) => rangeText("The miter to the left", values),
  "miter-range-right": (values) => rangeText("The miter to the right", values),
  "bevel-range-left": (values) => rangeText("The bevel with the blade's top to the left", values),
  "bevel-range-right": (values) => rangeText("The bevel with the blade's top to the right", values),
  depth: () => "In this position the stick stands higher than the blade reaches at this bevel.",
  crosscut: () => "In this position the line of cut is longer than the saw crosscuts.",
  "no-flat-back": () => "The stick's back has no flat that a wedge could carry.",
  rocks: () => "The stick rocks in this position: what it rests on is narrower than a tenth of it.",
  "tips-over": () => "The stick tips over in this position: its center of gravity is not above what it rests on.",
  "needs-cradle": () => "In this position the stick stands on one edge; it would need a wedge made for it.",
};
