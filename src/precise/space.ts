import type { Real, RealField } from "./real-field.js";

/** A vector of space; x and y level, z up. */
export type Vec = readonly [x: Real, y: Real, z: Real];

/** A plane: the points p with normal . p = offset. */
export interface Plane {
  /** A vector square to the plane, of any length. */
  readonly normal: Vec;
  /** Where the plane lies along its normal. */
  readonly offset: Real;
}

/** The vector operations that the derivations use, over one {@link RealField}. */
export interface Space {
  /** A vector from whole numbers. */
  readonly vec: (x: number, y: number, z: number) => Vec;
  /** a + b. */
  readonly add: (a: Vec, b: Vec) => Vec;
  /** a - b. */
  readonly sub: (a: Vec, b: Vec) => Vec;
  /** k a. */
  readonly scale: (k: Real, a: Vec) => Vec;
  /** a . b. */
  readonly dot: (a: Vec, b: Vec) => Real;
  /** a x b. */
  readonly cross: (a: Vec, b: Vec) => Vec;
  /** Length of a vector. */
  readonly norm: (a: Vec) => Real;
  /** The vector turned counter-clockwise about the z axis, as seen from above. */
  readonly turn: (a: Vec, degrees: Real) => Vec;
  /** Angle from 0 to 180 degrees between two vectors. */
  readonly angle: (a: Vec, b: Vec) => Real;
  /** Angle from a to b in degrees, above -180 and up to 180, right-handed about an axis square to both. */
  readonly angleAbout: (axis: Vec, a: Vec, b: Vec) => Real;
  /** The plane through a point. */
  readonly planeThrough: (point: Vec, normal: Vec) => Plane;
  /** The one point of three planes. */
  readonly meet: (a: Plane, b: Plane, c: Plane) => Vec;
}

/** Makes the vector operations of a field. */
export function space(field: RealField): Space {
  const { exact, mul, div, sqrt, sinCos, atan2 } = field;
  const vec = (x: number, y: number, z: number): Vec => [exact(x), exact(y), exact(z)];
  const add = (a: Vec, b: Vec): Vec => [field.add(a[0], b[0]), field.add(a[1], b[1]), field.add(a[2], b[2])];
  const sub = (a: Vec, b: Vec): Vec => [field.sub(a[0], b[0]), field.sub(a[1], b[1]), field.sub(a[2], b[2])];
  const scale = (k: Real, a: Vec): Vec => [mul(k, a[0]), mul(k, a[1]), mul(k, a[2])];
  const dot = (a: Vec, b: Vec): Real => field.add(field.add(mul(a[0], b[0]), mul(a[1], b[1])), mul(a[2], b[2]));
  const minor = (p: Real, q: Real, r: Real, s: Real): Real => field.sub(mul(p, q), mul(r, s));
  const cross = (a: Vec, b: Vec): Vec => [
    minor(a[1], b[2], a[2], b[1]),
    minor(a[2], b[0], a[0], b[2]),
    minor(a[0], b[1], a[1], b[0]),
  ];
  const norm = (a: Vec): Real => sqrt(dot(a, a));
  const turn = (a: Vec, degrees: Real): Vec => {
    const [sine, cosine] = sinCos(degrees);
    return [minor(a[0], cosine, a[1], sine), field.add(mul(a[0], sine), mul(a[1], cosine)), a[2]];
  };
  const angle = (a: Vec, b: Vec): Real => atan2(norm(cross(a, b)), dot(a, b));
  // The cross product's part along the axis is |axis| too long; so is the other leg made.
  const angleAbout = (axis: Vec, a: Vec, b: Vec): Real => atan2(dot(cross(a, b), axis), mul(dot(a, b), norm(axis)));
  const planeThrough = (point: Vec, normal: Vec): Plane => ({ normal, offset: dot(normal, point) });
  const meet = (a: Plane, b: Plane, c: Plane): Vec => {
    const bc = cross(b.normal, c.normal);
    const ca = cross(c.normal, a.normal);
    const ab = cross(a.normal, b.normal);
    const sum = add(add(scale(a.offset, bc), scale(b.offset, ca)), scale(c.offset, ab));
    return scale(div(exact(1), dot(a.normal, bc)), sum);
  };
  return { vec, add, sub, scale, dot, cross, norm, turn, angle, angleAbout, planeThrough, meet };
}
