import { cosDeg, sinDeg } from "../../core/degrees.js";
import type { CutPlane, SawSetting } from "../../miter/index.js";
import { settingKernel } from "../../miter/internal.js";

/**
 * The slope of the frame whose sticks, lying flat, are cut like a stick rolled by an angle. It is the angle itself, or half a turn from it, which swaps hands
 * and changes no size.
 */
export function flatTwin(rotation: number): number {
  return Math.abs(rotation) <= 90 ? rotation : rotation - 180 * Math.round(rotation / 180);
}

/**
 * The plane that a setting cuts, in the stick's own axes: `sawSetting` the other way round. Miter and bevel lie strictly between -90 and 90 degrees. The normal
 * is a unit vector out of the wood.
 */
export function planeOf(setting: SawSetting, end: "start" | "end", tilt: number): CutPlane {
  const { miter, bevel } = setting;
  const level = cosDeg(bevel);
  const [out, up] = [-level * sinDeg(miter), sinDeg(bevel)];
  const [cosine, sine] = [cosDeg(tilt), sinDeg(tilt)];
  return {
    along: (end === "end" ? 1 : -1) * level * cosDeg(miter) + 0,
    across: out * cosine + up * sine + 0,
    through: up * cosine - out * sine + 0,
  };
}

/** A setting as it would be if the stick lay flat. */
export function lyingFlat(setting: SawSetting, tilt: number): SawSetting {
  return settingKernel(planeOf(setting, "end", tilt), 0);
}
