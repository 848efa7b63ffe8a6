import { checkArray, checkInteger, checkLength, checkObject, checkOneOf, refuse } from "../core/check.js";
import type { OneOf } from "../core/geometry-types.js";
import { regularPolygon, type RegularPolygon } from "../polygon/index.js";
import { MAX_PIECES } from "./measured-piece.js";

/** The ways to measure the opening of a glued frame. */
export interface OpeningMeasures {
  /**
   * Across flats, at every place: from the middle of each side to the opposite side (n/2 lengths), or for odd n from each corner to the
   * opposite side (n lengths).
   */
  readonly acrossFlats: readonly number[];
  /** From one point near the center square to every side: n lengths, in the order of the sides. */
  readonly fromCenter: readonly number[];
}

/** Options of {@link measuredOpening}. */
export type MeasuredOpeningOptions = OneOf<OpeningMeasures> & {
  /** Number of sides, an integer from 3 to 1000. */
  readonly sides: number;
};

/** The opening of a frame as it was measured. */
export interface MeasuredOpening {
  /** The largest regular polygon that the measures vouch for; hand it to `planPanel` in place of the planned opening. */
  readonly polygon: RegularPolygon;
  /** The largest measure less the smallest. */
  readonly spread: number;
  /**
   * Whether a panel of that size goes in wherever the corners are true. From a center: yes, around that point. Across flats: only if
   * the sides are not long and short in turn, which no measure across flats shows; compare the sides or the corner-to-corner measures as well.
   */
  readonly certain: boolean;
}

/**
 * The opening that a glued frame really has, so that its panel is made for the frame and not for the plan.
 *
 * From one point to every side, the smallest distance is the apothem of a panel that fits around that point. Across flats, the smallest
 * measure F gives the apothem F/2, or F cos h / (1 + cos h) for odd n.
 *
 * @param options - sides, and exactly one of `acrossFlats` and `fromCenter` (lengths from 1e-100 to 1e100)
 * @returns the polygon, and how much the measures differ
 * @throws {InputError} when a length is out of range, there are not as many as the sides ask for, or not exactly one kind is given
 * @example
 * ```ts
 * import { measuredOpening } from "miterwright/closure";
 * import { planPanel } from "miterwright/panel";
 *
 * const opening = measuredOpening({ sides: 6, acrossFlats: [300.4, 299.8, 300.1] });
 * opening.spread.toFixed(1); //=> "0.6"
 * planPanel({ polygon: opening.polygon, clearance: 1 }).panel.acrossFlats; //=> 297.8
 * ```
 */
export function measuredOpening(options: MeasuredOpeningOptions): MeasuredOpening {
  const given = checkObject(options);
  const sides = checkInteger(given["sides"], "sides", 3, MAX_PIECES);
  const kind = checkOneOf(given, "", ["acrossFlats", "fromCenter"]);
  const count = kind === "fromCenter" || sides % 2 === 1 ? sides : sides / 2;
  const what = `an array of ${count} lengths`;
  const values = checkArray(given[kind], kind, what);
  if (values.length !== count) refuse("range", kind, values, what);
  const lengths = values.map((value, index) => checkLength(value, `${kind}[${index}]`));
  const smallest = Math.min(...lengths);
  return {
    polygon: regularPolygon(kind === "fromCenter" ? { sides, apothem: smallest } : { sides, acrossFlats: smallest }),
    spread: Math.max(...lengths) - smallest,
    certain: kind === "fromCenter",
  };
}
