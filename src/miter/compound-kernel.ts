import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";

/** The angles of a mitered corner between two equal sides, for sticks that lie flat on the saw. */
export interface CompoundMiter {
  /** Miter in degrees, -90 to 90, of the sign of the turn. Positive: the outer edge is the longer. */
  readonly miter: number;
  /** Bevel in degrees, -90 to 90; positive for a positive slope and turn: the face is the shorter. */
  readonly bevel: number;
  /**
   * Inside angle between the two faces, in degrees, 0 to 360: the angle in front of them, 180 - 2 bevel. Below 180 when the
   * faces look toward each other (slope and turn both positive). At a negative slope the faces look out of the frame and
   * have more than 180 in front of them; between the backs there is 360 - dihedral.
   */
  readonly dihedral: number;
  /** Half the turn in degrees: the miter seen from above, and the only angle when the stick is propped at its slope. */
  readonly planMiter: number;
}

/**
 * The compound miter on bare numbers, unchecked.
 *
 * With h half the turn and s the slope: a = sin s sin h, b = sqrt(cos^2 h + cos^2 s sin^2 h); bevel = atan2(a, b),
 * dihedral = 2 atan2(b, a), miter = atan2(cos s sin h, cos h). Arc tangents of two legs keep their last digits everywhere,
 * where the arc sine of sin s sin h loses half of them near 90, and 180 - 2 bevel all of a small dihedral.
 *
 * @param half - half the turn in degrees, strictly between -90 and 90, not -0
 * @param slope - slope in degrees, -90 to 90, not -0
 * @returns the four angles
 */
export function compoundMiterKernel(half: number, slope: number): CompoundMiter {
  // At 0 and 90 the answer is the half turn itself; an arc tangent of its tangent would be off in the last bit.
  if (slope === 0) return { miter: half, bevel: 0, dihedral: 180, planMiter: half };
  if (slope === 90 || slope === -90) {
    const bevel = slope < 0 ? 0 - half : half;
    return { miter: 0, bevel, dihedral: 180 - 2 * bevel, planMiter: half };
  }
  const sinH = sinDeg(half);
  const cosH = cosDeg(half);
  const plan = cosDeg(slope) * sinH;
  const a = sinDeg(slope) * sinH;
  const b = Math.sqrt(cosH * cosH + plan * plan);
  return {
    miter: atan2Deg(plan, cosH),
    bevel: atan2Deg(a, b),
    dihedral: 2 * atan2Deg(b, a),
    planMiter: half,
  };
}
