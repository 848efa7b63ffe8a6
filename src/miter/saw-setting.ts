import { checkDegrees, checkNumber, checkObject, checkSlope, reject } from "../core/check.js";
import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import type { CutPlane, EndCut, SawSetting } from "./cut-plane.js";
import { halvedCornerKernel } from "./compound-kernel.js";
import { checkTilt, type Lay } from "./lay.js";

/**
 * The saw setting of a plane, unchecked.
 *
 * The stick lies at the tilt τ: its normal leans out = across cos τ - through sin τ and up = across sin τ + through cos τ,
 * so that miter = atan2(-out, |along|) and bevel = atan2(up, hypot(along, out)). Only the direction of the normal matters.
 *
 * The tilt is in degrees; the rest, in radians, is what rounding took from it, of the size of its last place.
 */
export function settingKernel({ along, across, through }: CutPlane, tilt: number, rest = 0): SawSetting {
  const cos = cosDeg(tilt);
  const sin = sinDeg(tilt);
  const nearOut = across * cos - through * sin;
  const nearUp = across * sin + through * cos;
  const out = nearOut - nearUp * rest;
  const up = nearUp + nearOut * rest;
  return { miter: atan2Deg(-out, Math.abs(along)), bevel: atan2Deg(up, Math.sqrt(along * along + out * out)) };
}

/** Where a plane's stick stands in the frame, and how it lies on the saw. */
export interface SawSettingOptions {
  /** Slope of the stick in the finished frame, in degrees, -90 to 90. */
  readonly slope: number;
  /** How the stick lies: a name, or degrees (-360 to 360) by which it is rolled away from its place in the frame. */
  readonly lay: Lay;
}

/** An angle of a saw setting. */
function checkAngle(value: unknown, path: string): number {
  return checkDegrees(value, path, -90, 90);
}

/** What the rounded difference slope - lay lacks to the exact one, in radians; nothing for a named lay, whose tilt is exact. */
function tiltRest(slope: number, lay: unknown, tilt: number): number {
  if (typeof lay !== "number") return 0;
  const taken = tilt - slope;
  return ((slope - (tilt - taken) - (lay + taken)) * Math.PI) / 180;
}

/** Setting of an unchecked plane at a checked slope in an unchecked lay. */
function planeSetting(plane: unknown, path: string, slope: number, lay: unknown): SawSetting {
  const tilt = checkTilt(lay, slope);
  const given = checkObject(plane, path === "" ? "plane" : path.slice(0, -1));
  const along = checkNumber(given["along"], `${path}along`, -1, 1);
  if (along === 0) {
    return reject(
      "range",
      `${path}along`,
      along,
      `Expected \`${path}along\` not to be 0: such a plane never crosses the stick`,
    );
  }
  const across = checkNumber(given["across"], `${path}across`, -1, 1);
  const through = checkNumber(given["through"], `${path}through`, -1, 1);
  const length = Math.hypot(along, across, through);
  const normal = { along: along / length, across: across / length, through: through / length };
  return settingKernel(normal, tilt, tiltRest(slope, lay, tilt));
}

/** Setting of a cut that halves its corner: from the rotation alone, which named lays have as slope - tilt with a tilt whose sine and cosine are whole. */
function halvingSetting(half: number, slope: number, lay: Lay, tilt: number): SawSetting {
  const [from, to] = typeof lay === "number" ? [lay, 0] : lay === "propped" ? [0, 0] : [slope, tilt];
  const cosRoll = cosDeg(from) * cosDeg(to) + sinDeg(from) * sinDeg(to);
  const sinRoll = sinDeg(from) * cosDeg(to) - cosDeg(from) * sinDeg(to);
  const { miter, bevel } = halvedCornerKernel(half, cosRoll, sinRoll);
  return { miter, bevel };
}

/**
 * Miter and bevel of an end cut, for a stick that lies on the saw in a given way.
 *
 * Rolled by r away from its place in the frame, the stick of a regular frame needs tan(miter) = cos r tan h and
 * sin(bevel) = sin r sin h: propped at its slope a plain miter and no bevel. In every lay cos(miter) cos(bevel) = |along|, the
 * cosine of the angle between the cut and a square one. A cut that carries its `planMiter` h gets them from these forms: propped, h and 0 exactly.
 *
 * @param cut - the cut, as {@link joinCorner} gives it
 * @param lay - how the stick lies: a name, or degrees from -360 to 360
 * @returns miter and bevel in degrees, -90 to 90
 * @throws {InputError} when a field is missing or out of range, or the plane never crosses the stick
 * @example
 * ```ts
 * import { joinCorner, sawSetting } from "miterwright/miter";
 *
 * const board = { slope: 45, thickness: 18 };
 * const { first } = joinCorner({ turn: 90, first: board, second: board });
 * sawSetting(first, "flat"); //=> { miter: 35.264389682754654, bevel: 30 }
 * sawSetting(first, "propped"); //=> { miter: 45, bevel: 0 }
 * ```
 */
export function sawSetting(cut: EndCut, lay: Lay): SawSetting;
/**
 * Miter and bevel of a cut known by its plane alone.
 *
 * The same as for an {@link EndCut}; only the direction of the normal matters.
 *
 * @param plane - normal of the cut in the stick's own axes, components from -1 to 1
 * @param options - slope of the stick in the frame, and how it lies
 * @returns miter and bevel in degrees, -90 to 90
 * @throws {InputError} when a field is missing or out of range, or the plane never crosses the stick
 * @example
 * ```ts
 * import { sawSetting } from "miterwright/miter";
 *
 * const plane = { along: Math.SQRT1_2, across: -0.5, through: 0.5 };
 * sawSetting(plane, { slope: 45, lay: "propped" }).miter; //=> 45
 * ```
 */
export function sawSetting(plane: CutPlane, options: SawSettingOptions): SawSetting;
/**
 * Either form.
 *
 * @param cutOrPlane - the cut, or its plane
 * @param layOrOptions - the lay, or slope and lay
 * @returns miter and bevel in degrees
 */
export function sawSetting(cutOrPlane: EndCut | CutPlane, layOrOptions: Lay | SawSettingOptions): SawSetting {
  if (typeof layOrOptions === "object") {
    const given = checkObject(layOrOptions);
    return planeSetting(cutOrPlane, "", checkSlope(given["slope"]), given["lay"]);
  }
  const cut = checkObject(cutOrPlane, "cut");
  const slope = checkSlope(cut["slope"], "cut.slope");
  const setting = planeSetting(cut["plane"], "cut.plane.", slope, layOrOptions);
  const tilt = checkTilt(layOrOptions, slope);
  // Lying flat is what the cut records. At slope 0 its miter is half the turn to the bit, which a plane can't give back.
  if (tilt === 0) return { miter: checkAngle(cut["miter"], "cut.miter"), bevel: checkAngle(cut["bevel"], "cut.bevel") };
  return cut["planMiter"] === undefined
    ? setting
    : halvingSetting(checkAngle(cut["planMiter"], "cut.planMiter"), slope, layOrOptions, tilt);
}
