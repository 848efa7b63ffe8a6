import type { Hand, MiterScale } from "./saw.js";

/** An angle as it is set on one scale of a saw. */
export interface ScaleSetting {
  /** The angle from square or from vertical, in degrees, 0 or more. */
  readonly degrees: number;
  /** To which hand the cut runs or the blade's top leans; `none` at 0. */
  readonly toward: Hand | "none";
  /** What the scale must show for exactly this angle, in degrees. */
  readonly reading: number;
  /** The nearest reading that the scale's step allows, in degrees. */
  readonly nearest: number;
  /** By how much the angle is missed when `nearest` is set, in degrees, 0 or more. */
  readonly miss: number;
}

/**
 * In degrees: angles this close to 0 are 0, and angles this close to the end of a scale are on it. It is far below what a saw can be set to, and far above the
 * rounding of a rotated plane.
 */
const SCALE_TOLERANCE: number = 1e-9;

/** Translates an angle to a scale that starts at 0 or runs down from 90. */
export function scaleSetting(degrees: number, positive: Hand, downFrom90: boolean, step: number): ScaleSetting {
  const size = Math.abs(degrees) < SCALE_TOLERANCE ? 0 : Math.abs(degrees);
  const nearestSize = Math.round(size / step) * step;
  const negative: Hand = positive === "left" ? "right" : "left";
  return {
    degrees: size,
    toward: size === 0 ? "none" : degrees > 0 ? positive : negative,
    reading: downFrom90 ? 90 - size : size,
    nearest: downFrom90 ? 90 - nearestSize : nearestSize,
    miss: Math.abs(size - nearestSize),
  };
}

/** Whether a setting lies on a scale. */
export function withinScale(setting: ScaleSetting, scale: Pick<MiterScale, Hand>): boolean {
  if (setting.toward === "none") return true;
  return setting.degrees <= scale[setting.toward] + SCALE_TOLERANCE;
}
