import type { Meaning } from "./row.js";

/** What a number of the benchmark should be. */
export interface Aim {
  /** The row. */
  readonly name: string;
  /** What its value is. */
  readonly meaning: Meaning;
  /** The value aimed at; one that is twice as bad is still let pass, for the noise of a machine. */
  readonly aim: number;
}

const BARE: Meaning = "times as long as bare trigonometry";
const OTHER: Meaning = "times as fast as the other library";

/**
 * The aims, one for each row. Change one only with the reason in the commit.
 *
 * A corner costs little more than its sines and arc tangents, a checked one hardly twice that. A plan of 3000 corners takes
 * about a quarter of a millisecond, so that a slider can make plans while it is dragged. The libraries that lengths are read and
 * written against do more than that; there is no reason to be slower than they are.
 */
export const AIMS: readonly Aim[] = [
  { name: "compoundMiterKernel", meaning: BARE, aim: 1.7 },
  { name: "compoundMiter({ sides, slope })", meaning: BARE, aim: 3 },
  { name: "compoundMiter({ turn, slope })", meaning: BARE, aim: 3 },
  { name: "joinCorner, unequal boards", meaning: BARE, aim: 12 },
  { name: "sawSetting(plane, ...)", meaning: BARE, aim: 3 },
  { name: "frameGeometry, 9 sides", meaning: BARE, aim: 400 },
  { name: "planFrame, 9 sides", meaning: BARE, aim: 3000 },
  { name: "planFrame, 9 sides, inches", meaning: BARE, aim: 3500 },
  { name: "planFrame, 100 sides", meaning: BARE, aim: 7000 },
  { name: "nearestFraction(number, 16).text / fraction.js", meaning: OTHER, aim: 30 },
  { name: "nearestFraction(number, 16).text / mathjs", meaning: OTHER, aim: 30 },
  { name: 'parseLength("5 7/16", "in") / fraction.js', meaning: OTHER, aim: 2 },
  { name: 'parseLength("5 7/16", "in") / mathjs', meaning: OTHER, aim: 2 },
  { name: 'parseLength("90.50", "in") / fraction.js', meaning: OTHER, aim: 3 },
  { name: 'parseLength("90.50 mm", "in") / mathjs', meaning: OTHER, aim: 30 },
];
