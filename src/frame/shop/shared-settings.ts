import type { Hand, Saw, ScaleSetting } from "../../saw/index.js";
import { scaleSetting } from "../../saw/internal.js";
import type { Operation } from "../sawing/operation.js";

/** What a saw is set to for any number of cuts. */
export interface SharedSetting {
  /** Tells this setting of the miter from others. */
  readonly miterKey: string;
  /** Tells this setting of the bevel from others. */
  readonly bevelKey: string;
  /** What the miter scale must show. */
  readonly miter: ScaleSetting;
  /** What the bevel scale must show. */
  readonly bevel: ScaleSetting;
}

/** Angles this close are equal, in degrees: far below what a saw can be set to, far above the rounding of their computation. */
const EQUAL: number = 1e-9;

/**
 * Finds the angle that a scale is set to for each angle that is needed: the middle of those that share it. Going up from the smallest, and opening a new
 * share only where the span would grow too wide, makes the fewest shares.
 */
function shares(angles: readonly number[], tolerance: number): (angle: number) => number {
  const sorted = [...new Set(angles)].sort((a, b) => a - b);
  const middles = new Map<number, number>();
  let from = 0;
  for (let to = 1; to <= sorted.length; to += 1) {
    if (to < sorted.length && sorted[to]! - sorted[from]! <= tolerance + EQUAL) continue;
    const members = sorted.slice(from, to);
    // Equal but for rounding: the middle would only add to it.
    const middle = members.at(-1)! - members[0]! <= EQUAL ? members[0]! : (members[0]! + members.at(-1)!) / 2;
    for (const member of members) middles.set(member, middle);
    from = to;
  }
  return (angle) => middles.get(angle)!;
}

function onScale(degrees: number, toward: Hand | "none", downFrom90: boolean, step: number): ScaleSetting {
  const setting = scaleSetting(degrees, toward === "none" ? "left" : toward, downFrom90, step);
  return { ...setting, toward };
}

/**
 * Finds the settings that the operations of one saw share.
 *
 * Two share one when miter and bevel lean to the same hand and differ by no more than the tolerance.
 */
export function sharedSettings(
  operations: readonly Operation[],
  saw: Saw,
  tolerance: number,
): (operation: Operation) => SharedSetting {
  const readings = (scale: "miter" | "bevel"): number[] =>
    operations
      .map(({ placement }) => placement[scale])
      .flatMap(({ toward, degrees }) => (toward === "none" ? [] : degrees));
  const miters = shares(readings("miter"), tolerance);
  const bevels = shares(readings("bevel"), tolerance);
  return ({ placement }) => {
    // A square cut and an upright blade are never traded for a little lean.
    const miter = placement.miter.toward === "none" ? 0 : miters(placement.miter.degrees);
    const bevel = placement.bevel.toward === "none" ? 0 : bevels(placement.bevel.degrees);
    return {
      miterKey: `${miter} ${placement.miter.toward}`,
      bevelKey: `${bevel} ${placement.bevel.toward}`,
      miter: onScale(miter, placement.miter.toward, saw.miter.reads === "from-fence", saw.miter.step),
      bevel: onScale(bevel, placement.bevel.toward, saw.bevel.reads === "from-table", saw.bevel.step),
    };
  };
}
