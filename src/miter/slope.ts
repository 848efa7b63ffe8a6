import { checkDegrees, checkDistance, checkLengthOrZero, checkObject, reject } from "../core/check.js";
import { atan2Deg } from "../core/degrees.js";

/**
 * Slope of a crown molding from its spring angle.
 *
 * The spring angle lies between the crown's back and the wall, so slope = 90 - spring.
 *
 * @param spring - spring angle in degrees, 0 to 90
 * @returns the slope in degrees, 0 to 90
 * @throws {InputError} when `spring` is out of range
 * @example
 * ```ts
 * import { compoundMiter, slopeFromSpring } from "miterwright/miter";
 *
 * slopeFromSpring(38); //=> 52
 * compoundMiter({ turn: 90, slope: slopeFromSpring(45) }).bevel; //=> 30
 * ```
 */
export function slopeFromSpring(spring: number): number {
  return 90 - checkDegrees(spring, "spring", 0, 90);
}

/**
 * Slope of a side that leans so many degrees off plumb.
 *
 * slope = 90 - offPlumb: 0 off plumb stands upright, 90 lies flat. The side leans outward at its top, as in a tray.
 *
 * @param offPlumb - degrees off plumb, 0 to 90
 * @returns the slope in degrees, 0 to 90
 * @throws {InputError} when `offPlumb` is out of range
 * @example
 * ```ts
 * import { slopeFromPlumb } from "miterwright/miter";
 *
 * slopeFromPlumb(15); //=> 75
 * ```
 */
export function slopeFromPlumb(offPlumb: number): number {
  return 90 - checkDegrees(offPlumb, "offPlumb", 0, 90);
}

/** Two level and plumb measures of a sloping side, in one unit. */
export interface RiseAndRun {
  /** How much higher the outer edge is than the sight edge, -1e100 to 1e100; negative when it is lower. */
  readonly rise: number;
  /** Level distance from the sight edge to the outer edge, 0 to 1e100. */
  readonly run: number;
}

/**
 * Slope of a side from its rise and run.
 *
 * tan(slope) = rise / run. A run of 0 stands upright, a rise of 0 lies flat; both may not be 0.
 *
 * @param measures - rise and run in any one unit
 * @returns the slope in degrees, -90 to 90
 * @throws {InputError} when a measure is out of range or both are 0
 * @example
 * ```ts
 * import { slopeFromRiseAndRun } from "miterwright/miter";
 *
 * slopeFromRiseAndRun({ rise: 8, run: 12 }); //=> 33.690067525979785
 * slopeFromRiseAndRun({ rise: 12, run: 0 }); //=> 90
 * ```
 */
export function slopeFromRiseAndRun(measures: RiseAndRun): number {
  const given = checkObject(measures, "measures");
  const rise = checkDistance(given["rise"], "rise");
  const run = checkLengthOrZero(given["run"], "run");
  if (rise === 0 && run === 0) {
    return reject("impossible", "rise", rise, "Expected `rise` or `run` to differ from 0: a point has no slope");
  }
  return atan2Deg(rise, run);
}
