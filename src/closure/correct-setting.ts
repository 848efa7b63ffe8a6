import { checkLength, checkObject, checkSides, checkSlope, checkWord, reject } from "../core/check.js";
import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import { compoundMiterKernel } from "../miter/internal.js";
import type { SawSetting } from "../miter/index.js";
import { angleChange, type AngleChange } from "./angle-change.js";
import { checkGap, type GaugeToleranceOptions } from "./gauge-tolerance.js";
import { gapPerDegree, otherAngle } from "./regular-closure.js";

/** Options of {@link correctSetting}. */
export interface CorrectSettingOptions extends Pick<GaugeToleranceOptions, "sides" | "width"> {
  /**
   * The gap seen at the last joint, with one end touching; 0 or more and less than `width`. It is the gap of the law where the other joints stay tight and only
   * slide along their lines. Where they open too, by the least rotation, the gap is a third of that. Half a ring of an even number, laid on a straightedge,
   * depends on neither: the gaps under its two ends are together half the gap.
   */
  readonly seenGap: number;
  /** Which end of it is open; only a gap of 0 needs none. `opens` of a ring closure may also be `"nowhere"`, where there is nothing to correct: ask for that first. */
  readonly open?: "inside" | "outside" | undefined;
  /** The slope at which the pieces stand with their joints tight, as measured, in degrees, -90 to 90; default 0. */
  readonly slope?: number | undefined;
  /**
   * What the correction holds: a slope for the frame in degrees, -90 to 90 (default: the one it has), or `"bevel"` or `"miter"`. These leave that angle as it
   * is set and let the slope go where it must.
   */
  readonly hold?: number | "bevel" | "miter" | undefined;
}

/** How to correct the setting of a saw. */
export interface SettingCorrection {
  /** The open angle that the gap shows, in degrees; positive where it opens outside. */
  readonly angle: number;
  /** By how many degrees every joint turns too little; negative when too much. */
  readonly perJoint: number;
  /** The setting that made such a ring, lying flat: what the saw really cut, whatever its scales said. */
  readonly cut: SawSetting;
  /** The setting that closes. */
  readonly wanted: SawSetting;
  /** What to add to miter and bevel, in degrees; added to what the scales show, their errors go out too. */
  readonly correction: SawSetting;
  /** The slope at which the corrected ring closes, in degrees. */
  readonly slope: number;
  /** Whether miter and bevel then lean more or less than they were cut. */
  readonly changes: {
    /** Of the miter. */
    readonly miter: AngleChange;
    /** Of the bevel. */
    readonly bevel: AngleChange;
  };
}

/** What a correction may hold: a slope in degrees, or one of the two angles. */
export type Held = number | "bevel" | "miter";

/** Reads what a correction is to hold. */
export function checkHold(value: unknown): Held {
  return typeof value === "string" ? checkWord(value, "hold", ["bevel", "miter"] as const) : checkSlope(value, "hold");
}

/** Whether one angle does all the turning at a slope, so that it can't be held. */
export function turnsAlone(slope: number, hold: Held): boolean {
  if (typeof hold === "number") return false;
  return (hold === "miter" ? sinDeg(slope) : cosDeg(slope)) === 0;
}

/** The angle that goes with the one that is held. */
function angleBeside(half: number, angle: number, path: "bevel" | "miter"): number {
  const other = otherAngle(half, angle);
  if (other !== undefined) return other;
  return reject(
    "impossible",
    "hold",
    path,
    `Expected \`hold\` to be a slope, as the ${path} alone already turns the ring further than it may`,
  );
}

/** The setting that closes and holds what is to be held. */
function wantedSetting(half: number, cut: SawSetting, slope: number, hold: Held): SawSetting {
  if (typeof hold === "number") {
    const { miter, bevel } = compoundMiterKernel(half, hold);
    return { miter, bevel };
  }
  // Past upright the miter goes to the other hand, as the bevel does below level.
  if (hold === "bevel") {
    return { miter: Math.sign(cosDeg(slope)) * angleBeside(half, cut.bevel, "bevel") + 0, bevel: cut.bevel };
  }
  return { miter: cut.miter, bevel: Math.sign(sinDeg(slope)) * angleBeside(half, cut.miter, "miter") + 0 };
}

/** A full turn, by which slopes are alike. */
const FULL_TURN: number = 360;

/**
 * {@link correctSetting} on bare numbers, for slopes of any size: those of pieces that lie on the saw as if rolled. What is held may not be an angle that turns
 * alone. Throws `impossible` where it turns too far.
 */
export function correctionKernel(sides: number, angle: number, slope: number, hold: Held): SettingCorrection {
  const half = 180 / sides;
  // A gap narrower than the molding is an open angle below 58 degrees, which leaves every joint a turn.
  const { miter, bevel } = compoundMiterKernel(half - angle / (2 * sides), slope);
  const cut = { miter, bevel };
  const wanted = wantedSetting(half, cut, slope, hold);
  const correction = { miter: wanted.miter - cut.miter, bevel: wanted.bevel - cut.bevel };
  const level = atan2Deg(sinDeg(wanted.bevel), sinDeg(wanted.miter) * cosDeg(wanted.bevel));
  return {
    angle,
    perJoint: angle / sides,
    cut,
    wanted,
    correction,
    slope: typeof hold === "number" ? hold : level + FULL_TURN * Math.round((slope - level) / FULL_TURN),
    changes: { miter: angleChange(cut.miter, correction.miter), bevel: angleChange(cut.bevel, correction.bevel) },
  };
}

/**
 * The correction of the saw's setting from the gap seen at the last joint.
 *
 * A gap of g shows the open angle g / (width / cos h), all of it from 2n cuts alike. Each joint then really turns by 360/n less its n-th part. With the slope
 * at which the pieces stand, that fixes the miter and bevel that were cut. The correction leads from these to the right ones, to all orders. Scales may show
 * what they like: add the correction to what they show. A gap that does not come back in a second ring has other causes; see `machineErrors`.
 *
 * @param options - sides, joint width, gap, which end is open, the slope seen, and what to hold
 * @returns the correction of miter and bevel in degrees, and which way each goes
 * @throws {InputError} when a value is missing or out of range, the gap is not less than the width, or with code `"impossible"` when what
 *   is held cannot be
 * @example
 * ```ts
 * import { correctSetting, ringClosure } from "miterwright/closure";
 *
 * const { correction, changes } = correctSetting({ sides: 8, width: 40, seenGap: 1.2, open: "outside" });
 * correction.miter.toFixed(3); //=> "0.099"
 * changes; //=> { miter: "more", bevel: "leave" }
 *
 * // From measured pieces, once it is known that they open somewhere.
 * const piece = { length: 200, start: { miter: 22.4, bevel: 0 }, end: { miter: 22.4, bevel: 0 } };
 * const { opens, jointGap } = ringClosure({ pieces: Array.from({ length: 8 }, () => piece), at: "outside", width: 40 });
 * if (opens !== "nowhere") {
 *   correctSetting({ sides: 8, width: 40, seenGap: jointGap, open: opens }).correction.miter.toFixed(3); //=> "0.100"
 * }
 * ```
 */
export function correctSetting(options: CorrectSettingOptions): SettingCorrection {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const { width, gap: seenGap } =
    given["seenGap"] === 0 ? { width: checkLength(given["width"], "width"), gap: 0 } : checkGap(given, "seenGap");
  const open =
    seenGap === 0 && given["open"] === undefined ? "outside" : checkWord(given["open"], "open", ["inside", "outside"]);
  const slope = checkSlope(given["slope"] ?? 0);
  const { hold: wanted = slope } = given;
  const hold = checkHold(wanted);
  if (turnsAlone(slope, hold)) {
    const [other, frame] = hold === "miter" ? ["bevel", "a flat"] : ["miter", "an upright"];
    reject(
      "impossible",
      "hold",
      hold,
      `Expected \`hold\` to be a slope or "${other}", as only the ${hold} can close ${frame} frame`,
    );
  }
  const angle = ((open === "outside" ? 1 : -1) * seenGap) / gapPerDegree(sides, width) + 0;
  return correctionKernel(sides, angle, slope, hold);
}
