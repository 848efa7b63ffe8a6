import type { Vector } from "../core/vector.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import type { SawSetting } from "../miter/index.js";

/**
 * A rotation as a unit quaternion (w, x, y, z). A piece's own axes are right-handed here: x along it, y inward (against the
 * library's `across`), z through it from back to face.
 */
export type Rotation = readonly [w: number, x: number, y: number, z: number];

/** No rotation. */
export const UNTURNED: Rotation = [1, 0, 0, 0];

/**
 * Two rotations in one: `then` is seen from the axes that `first` leads to. The product is brought to length 1, so that long rings do not drift.
 */
export function compose(first: Rotation, then: Rotation): Rotation {
  const [a, b, c, d] = first;
  const [e, f, g, h] = then;
  const w = a * e - b * f - c * g - d * h;
  const x = a * f + b * e + c * h - d * g;
  const y = a * g - b * h + c * e + d * f;
  const z = a * h + b * g - c * f + d * e;
  const length = Math.hypot(w, x, y, z);
  return [w / length, x / length, y / length, z / length];
}

/** A vector of a piece's axes as one of space. */
export function rotate(rotation: Rotation, v: Vector): Vector {
  const [w, x, y, z] = rotation;
  const [a, b, c] = v;
  // v + 2 w (q x v) + 2 q x (q x v), with q the vector part.
  const p = 2 * (y * c - z * b);
  const q = 2 * (z * a - x * c);
  const r = 2 * (x * b - y * a);
  return [a + w * p + y * r - z * q, b + w * q + z * p - x * r, c + w * r + x * q - y * p];
}

/**
 * The rotation from a piece's axes to those of the next one, with the two cuts pressed face to face and the backs meeting in one
 * line across the joint.
 *
 * The piece swings by its end's miter m1, folds about the line where the backs meet by b1 + b2, and swings by the next start's
 * miter m2. With M = (m1 + m2)/2, D = (m1 - m2)/2 and f = (b1 + b2)/2 the product of the three is
 * (cos f cos M, sin f sin D, -sin f cos D, cos f sin M).
 */
export function jointRotation(end: SawSetting, start: SawSetting): Rotation {
  const mean = (end.miter + start.miter) / 2;
  const half = (end.miter - start.miter) / 2;
  const fold = (end.bevel + start.bevel) / 2;
  const [cosine, sine] = [cosDeg(fold), sinDeg(fold)];
  return [cosine * cosDeg(mean), sine * sinDeg(half), -sine * cosDeg(half), cosine * sinDeg(mean)];
}

/** The normal of a cut, out of the wood, in the axes of {@link Rotation}. */
export function cutNormal(cut: SawSetting, end: 1 | -1): Vector {
  const { miter, bevel } = cut;
  const level = cosDeg(bevel);
  return [end * level * cosDeg(miter), level * sinDeg(miter), sinDeg(bevel)];
}
