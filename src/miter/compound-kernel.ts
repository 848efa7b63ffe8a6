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

/** Miter, bevel and dihedral in degrees; see {@link CompoundMiter}. */
type HalvedCorner = Omit<CompoundMiter, "planMiter">;

/**
 * The cut along the plane that halves a corner, for a stick that lies rolled by r away from its place in the frame: on bare numbers, unchecked.
 *
 * With h half the turn: a = sin r sin h, b = sqrt(cos^2 h + cos^2 r sin^2 h); bevel = atan2(a, b), dihedral = 2 atan2(b, a),
 * miter = atan2(cos r sin h, cos h). Arc tangents of two legs keep their last digits everywhere, where the arc sine of
 * sin r sin h loses half of them near 90, and 180 - 2 bevel all of a small dihedral. Half the turn lies strictly between -90 and 90 degrees, and is not -0.
 */
export function halvedCornerKernel(half: number, cosRoll: number, sinRoll: number): HalvedCorner {
  // Rolled by a multiple of 90 the answer is the half turn itself; an arc tangent of its tangent would be off in the last bit.
  if (sinRoll === 0) return { miter: cosRoll * half + 0, bevel: 0, dihedral: 180 };
  if (cosRoll === 0) {
    const bevel = sinRoll * half + 0;
    return { miter: 0, bevel, dihedral: 180 - 2 * bevel };
  }
  const sinH = sinDeg(half);
  const cosH = cosDeg(half);
  const plan = cosRoll * sinH;
  const a = sinRoll * sinH;
  const b = Math.sqrt(cosH * cosH + plan * plan);
  const miter = atan2Deg(plan, cosH);
  // The one other corner with a bevel of whole degrees: sin 45 sin 45 = sin 30. Its sines are rounded, which would cost the last bit.
  if (Math.abs(half) === 45 && Math.abs(sinRoll) === Math.abs(cosRoll)) {
    return a > 0 ? { miter, bevel: 30, dihedral: 120 } : { miter, bevel: -30, dihedral: 240 };
  }
  return { miter, bevel: atan2Deg(a, b), dihedral: 2 * atan2Deg(b, a) };
}

/**
 * The compound miter on bare numbers, unchecked: lying flat a stick is rolled by its slope. Half the turn lies strictly between -90 and 90 degrees, the slope
 * from -90 to 90; neither is -0.
 */
export function compoundMiterKernel(half: number, slope: number): CompoundMiter {
  const { miter, bevel, dihedral } = halvedCornerKernel(half, cosDeg(slope), sinDeg(slope));
  return { miter, bevel, dihedral, planMiter: half };
}
