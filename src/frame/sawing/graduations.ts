import { closingGraduations } from "../../closure/internal.js";
import type { OpenEnd, SettingChoice } from "../../closure/index.js";
import type { Saw, ScaleSetting } from "../../saw/index.js";
import { type FrameGeometry, jointWidth } from "../frame-geometry.js";
import type { LayResult } from "./lay-result.js";
import { flatTwin } from "./lying-plane.js";

/** Both scales at one of their graduations, and what it costs at the last joint. */
export interface GraduationSetting {
  /** What the miter scale shows, in degrees. */
  readonly miter: number;
  /** What the bevel scale shows, in degrees. */
  readonly bevel: number;
  /** By how much the miter is missed, in degrees, 0 or more. */
  readonly miterMiss: number;
  /** By how much the bevel is missed, in degrees, 0 or more. */
  readonly bevelMiss: number;
  /** The gap of the last joint if every cut is made so. */
  readonly jointGap: number;
  /** Which end of it is open. */
  readonly opens: OpenEnd;
  /** By how many degrees the slope at which the frame closes is more than planned. */
  readonly slopeOff: number;
}

/** The graduations of a saw's scales for the chosen lay. */
export interface Graduations {
  /** Each angle at its nearest graduation. */
  readonly nearest: GraduationSetting;
  /**
   * The graduations to set. Miter and bevel that are both off can make up for each other, so these may not be the nearest ones. Of those that keep within the
   * accepted gap and within `slopeRange`, they have the truest slope. Where none do, they have the smallest sum of the gap and of how far the slope puts the
   * outer edge off, width times `slopeOff` in radians.
   */
  readonly best: GraduationSetting;
  /**
   * How far graduations that close the ring were looked for: all at which its slope is off by no more than this, in degrees. It is 2, or less on scales finer
   * than a hundredth of a degree, where 500 graduations do not reach so far. It is 0 where one angle is 0: that angle stays at 0, and the slope with it.
   */
  readonly slopeRange: number;
}

/** How far a scale goes for both ends of a stick, with room for the rounding of its end. */
function reachOf(saw: Saw, { first, second }: LayResult, scale: "miter" | "bevel"): number {
  const reaches = [first[scale].toward, second[scale].toward].map((hand) => (hand === "none" ? 90 : saw[scale][hand]));
  return Math.min(...reaches) + 1e-9;
}

/**
 * The graduations of both scales that cost least at the last joint, for a stick in its lay.
 *
 * Rolled by r away from its place in the frame, a stick is cut like a stick that lies flat, of a frame of slope r. A ring of such cuts opens alike, and the
 * slope at which it closes is off by as much. So the graduations are looked for at the slope r, among those that the saw reaches.
 */
export function graduationsFor(geometry: FrameGeometry, acceptedGap: number, saw: Saw, lay: LayResult): Graduations {
  const twin = flatTwin(lay.rotation);
  // Only sizes are looked at: the lay decides to which hand the blade leans, and a graduation beyond 0 would be on the other hand.
  const { nearest, best, slopeRange } = closingGraduations({
    sides: geometry.sides,
    width: jointWidth(geometry),
    slope: Math.abs(twin),
    acceptedGap,
    step: saw.miter.step,
    bevelStep: saw.bevel.step,
    miterReach: reachOf(saw, lay, "miter"),
    bevelReach: reachOf(saw, lay, "bevel"),
  });
  const reading = (size: number, reads: string): number =>
    reads === "from-fence" || reads === "from-table" ? 90 - size : size;
  const miss = (size: number, { degrees }: ScaleSetting): number => Math.abs(size - degrees);
  const graduations = (choice: SettingChoice): GraduationSetting => ({
    miter: reading(choice.miter, saw.miter.reads),
    bevel: reading(choice.bevel, saw.bevel.reads),
    miterMiss: miss(choice.miter, lay.first.miter),
    bevelMiss: miss(choice.bevel, lay.first.bevel),
    jointGap: choice.jointGap,
    opens: choice.opens,
    slopeOff: twin < 0 ? 0 - choice.slopeOff : choice.slopeOff,
  });
  return { nearest: graduations(nearest), best: graduations(best), slopeRange };
}
