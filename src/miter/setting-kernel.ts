import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import type { SawSetting } from "./cut-plane.js";

/**
 * The saw setting of a plane, on bare numbers, unchecked.
 *
 * The stick lies at the tilt τ: its normal leans out = across cos τ - through sin τ and up = across sin τ + through cos τ,
 * so that miter = atan2(-out, |along|) and bevel = atan2(up, hypot(along, out)). Only the direction of the normal matters.
 *
 * @param along - component of the normal along the stick
 * @param across - component across it
 * @param through - component through it
 * @param tilt - angle of the stick's back to the table in degrees, as it lies
 * @param rest - what rounding took from the tilt, in radians, of the size of its last place
 * @returns miter and bevel in degrees
 */
export function settingKernel(along: number, across: number, through: number, tilt: number, rest = 0): SawSetting {
  const cos = cosDeg(tilt);
  const sin = sinDeg(tilt);
  const nearOut = across * cos - through * sin;
  const nearUp = across * sin + through * cos;
  const out = nearOut - nearUp * rest;
  const up = nearUp + nearOut * rest;
  return { miter: atan2Deg(-out, Math.abs(along)), bevel: atan2Deg(up, Math.sqrt(along * along + out * out)) };
}
