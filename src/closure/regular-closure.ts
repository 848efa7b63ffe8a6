import { atan2Deg, cosDeg, DEGREES, sinDeg } from "../core/degrees.js";

/** Which end of the last joint stands open when the other one touches. */
export type OpenEnd = "inside" | "outside" | "nowhere";

/** Open angles below this, in degrees, are the rounding of the sum. */
const SHUT: number = 1e-9;

/** Which end opens. The outside where the turns fall short of a full one, the inside where they exceed it. */
export function opensAt(angle: number): OpenEnd {
  if (Math.abs(angle) < SHUT) return "nowhere";
  return angle > 0 ? "outside" : "inside";
}

/** How a ring of equal pieces with equal ends closes. */
export interface RegularClosure {
  /** Open angle in degrees: positive when the turns fall short of 360. */
  readonly angle: number;
  /** Slope at which it closes, in degrees. */
  readonly slope: number;
}

/**
 * The closure of n equal pieces whose ends are mirror images, unchecked.
 *
 * Half a joint's turn is acos(cos m cos b), by legs atan2(sqrt(sin^2 m cos^2 b + sin^2 b), cos m cos b). The joint's two pieces
 * are mirror images in its plane, so both rise by the slope atan2(sin b, sin m cos b).
 */
export function regularClosure(sides: number, miter: number, bevel: number): RegularClosure {
  const cosB = cosDeg(bevel);
  const across = sinDeg(miter) * cosB;
  const through = sinDeg(bevel);
  const half = atan2Deg(Math.sqrt(across * across + through * through), cosDeg(miter) * cosB);
  return { angle: 360 - 2 * sides * half, slope: atan2Deg(through, across) };
}

/** How far the last joint opens for every degree of open angle: the joint line, width / cos h, times a degree in radians. */
export function gapPerDegree(sides: number, width: number): number {
  return width / cosDeg(180 / sides) / DEGREES;
}

/**
 * The other angle of a cut with a given half turn h: cos(other) = cos h / cos(angle), with sin^2 h - sin^2(angle) taken as a product. 0 or more; `undefined`
 * when the one alone turns further.
 */
export function otherAngle(half: number, angle: number): number | undefined {
  const [sinH, sinA] = [sinDeg(half), Math.abs(sinDeg(angle))];
  return sinA > sinH ? undefined : atan2Deg(Math.sqrt((sinH - sinA) * (sinH + sinA)), cosDeg(half));
}
