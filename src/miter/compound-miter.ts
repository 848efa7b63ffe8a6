import { checkInside, checkObject, checkOneOf, checkSides, checkSlope } from "../core/check.js";
import type { OneOf } from "../core/geometry-types.js";
import { compoundMiterKernel, type CompoundMiter } from "./compound-kernel.js";

/** The ways to say how sharp a corner is. */
export interface CornerMeasure {
  /** Number of sides of a regular frame, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Turn of the corner in degrees, strictly between -180 and 180: 0 goes straight on, a negative one turns outward (a reflex corner). */
  readonly turn: number;
}

/** What {@link compoundMiter} works from: the corner, by exactly one of `sides` and `turn`, and the slope. */
export type CompoundMiterOptions = OneOf<CornerMeasure> & {
  /** Slope of the sides in degrees, -90 to 90: 0 lies flat, 90 stands upright, negative has the sight edge higher. */
  readonly slope: number;
};

/** Half the turn of an unchecked corner. */
function checkHalfTurn(given: Readonly<Record<string, unknown>>): number {
  const { sides, turn } = given;
  // The general check only where it has something to say: it would cost more than the angles.
  if ((sides === undefined) === (turn === undefined)) checkOneOf(given, "", ["sides", "turn"]);
  // + 0, as half of the smallest negative turn there is rounds to -0.
  return turn === undefined ? 180 / checkSides(sides) : checkInside(turn, "turn", -180, 180) / 2 + 0;
}

/**
 * The two saw angles of a splayed frame's corner, for sticks that lie flat on the saw.
 *
 * With h half the turn (180/n for n sides) and slope s: tan(miter) = cos s tan h, sin(bevel) = sin s sin h and
 * dihedral = 180 - 2 bevel. Then cos(miter) cos(bevel) = cos h, so a cut uses kerf / cos h of the stick's length. At slope 0
 * the miter is h to the bit and the bevel 0; upright the miter is 0 and the bevel h.
 *
 * @param options - the corner (`sides` from 3 to 1e6, or `turn` in degrees between -180 and 180, bounds excluded) and `slope` in degrees from -90 to 90
 * @returns miter, bevel, dihedral and plan miter, in degrees
 * @throws {InputError} when neither or both of `sides` and `turn` are given, or a value is out of range
 * @example
 * ```ts
 * import { compoundMiter } from "miterwright/miter";
 *
 * const cut = compoundMiter({ sides: 4, slope: 45 });
 * cut.miter; //=> 35.264389682754654
 * cut.bevel; //=> 30
 * cut.dihedral; //=> 120
 * cut.planMiter; //=> 45
 * ```
 * @see Fred T. Hodgson, ABC of the Steel Square and its Uses, Figs. 38-41 and "Hopper miters", p. 101 (Project Gutenberg 49273): a hip roof is the same as a hopper inverted
 */
export function compoundMiter(options: CompoundMiterOptions): CompoundMiter {
  const given = checkObject(options);
  return compoundMiterKernel(checkHalfTurn(given), checkSlope(given["slope"]));
}
