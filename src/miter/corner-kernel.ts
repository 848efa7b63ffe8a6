import type { CheckedBoard } from "./board.js";
import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";

/*
 * How the forms below are derived. Take the corner's own axes: C along the ring at the corner, B outward on the bisector, Z
 * up. With h half the turn T, the first board runs along u1 = C cos h + B sin h and has outward o1 = B cos h - C sin h; the
 * second has u2 = C cos h - B sin h and o2 = B cos h + C sin h. A board of slope s has the axes
 *   along u,  across A = o cos s + Z sin s,  through N = Z cos s - o sin s.
 * From o1.o2 = cos T, o2.u1 = sin T and o1.u2 = -sin T follow
 *   N1.N2 = cos s1 cos s2 + sin s1 sin s2 cos T       A1.A2 = sin s1 sin s2 + cos s1 cos s2 cos T
 *   N2.A1 = sin s1 cos s2 - cos s1 sin s2 cos T       N1.A2 the same with 1 and 2 exchanged
 *   N2.u1 = -sin s2 sin T,  N1.u2 = sin s1 sin T      A2.u1 = cos s2 sin T,  A1.u2 = -cos s1 sin T
 */

/** A board that meets another at its faces. */
export type Thick = Pick<CheckedBoard, "slope" | "thickness">;
/** A board that meets another at its edges. */
export interface Wide extends Pick<CheckedBoard, "slope"> {
  /** Its width. */
  readonly width: number;
}

/** A unit normal by its components along, across and through a board. */
export type Normal = readonly [along: number, across: number, through: number];

/** The end planes of the two boards at a corner: the normal of each points out of its own board. */
export type NormalPair = readonly [first: Normal, second: Normal];

/** A cosine, and 1 less it to its last digit. */
interface Cosine {
  readonly cos: number;
  readonly versine: number;
}

/** 1 - cos of an angle, given half of it. */
function versine(half: number): number {
  const sin = sinDeg(half);
  return 2 * sin * sin;
}

/**
 * other - own cos x; `difference` is other - own, as exactly as the caller has it.
 *
 * Where x is small both differences are: difference + own (1 - cos x) keeps their digits. From 60 degrees on nothing cancels, and
 * the plain form is exact at a right angle, so that square frames get the tangents of their widths and thicknesses.
 */
function lessProjection(other: number, own: number, difference: number, { cos, versine }: Cosine): number {
  return versine < 0.5 ? difference + own * versine : other - own * cos;
}

/**
 * N2.A1 = sin a cos b - cos a sin b cos T.
 *
 * Where the turn is small it is sin(a - b) + cos a sin b (1 - cos T), which keeps its digits where a is near b. At wide turns the plain form does, and
 * is exact at a right angle.
 */
function crossTilt(a: number, b: number, half: number): number {
  const product = cosDeg(a) * sinDeg(b);
  const oneLessCos = versine(half);
  return oneLessCos < 0.5 ? sinDeg(a - b) + product * oneLessCos : sinDeg(a) * cosDeg(b) - product * cosDeg(2 * half);
}

/** N1.N2 in the plain form. */
function facesCosine(half: number, s1: number, s2: number): number {
  return cosDeg(s1) * cosDeg(s2) + sinDeg(s1) * sinDeg(s2) * cosDeg(2 * half);
}

/**
 * Length of t2 N1 - t1 N2: the root of (t2 - t1)^2 + 2 t1 t2 (1 - N1.N2), which has no term below 0, so that it keeps its digits where the components are small differences.
 */
function facesLength(half: number, { slope: s1, thickness: t1 }: Thick, { slope: s2, thickness: t2 }: Thick): number {
  const product = sinDeg(s1) * sinDeg(s2);
  // A product of two tiny sines has no digits left; their roots have.
  const sines =
    product > 1e-290 ? Math.sqrt(product) : Math.sqrt(Math.abs(sinDeg(s1))) * Math.sqrt(Math.abs(sinDeg(s2)));
  const apart = Math.hypot(sinDeg((s1 - s2) / 2), sines * sinDeg(half));
  return Math.hypot(t2 - t1, 2 * Math.sqrt(t1 * t2) * apart);
}

/** 1 - N1.N2 = 2 sin^2((s1 - s2)/2) + 2 sin s1 sin s2 sin^2 h: no term is negative when the slopes have one sign. */
function facesVersine(half: number, s1: number, s2: number): number {
  return versine((s1 - s2) / 2) + sinDeg(s1) * sinDeg(s2) * versine(half);
}

/** The joint plane of two equal boards: its normal is C, whatever their thickness and width. */
export function bisectorPlanes(half: number, slope: number): NormalPair {
  const sinH = sinDeg(half);
  const along = cosDeg(half);
  const across = -sinH * cosDeg(slope);
  const through = sinH * sinDeg(slope);
  return [
    [along, across, through],
    [-along, across, through],
  ];
}

/**
 * The joint plane that holds the line where the faces meet and the line where the backs meet.
 *
 * Every plane through the first line has a normal p N1 + q N2; the second line lies t1 and t2 below the faces, so
 * p t1 + q t2 = 0 and the normal is M = t2 N1 - t1 N2. It points out of the first board where M.u1 = t1 sin s2 sin T is
 * positive, which is where slope and turn have the same sign. Both thicknesses are divided by the length of M.
 *
 * Half the turn is not 0; the slopes are not 0 and of one sign.
 */
export function facePlanes(half: number, first: Thick, second: Thick): NormalPair {
  const { slope: s1, thickness: t1 } = first;
  const { slope: s2, thickness: t2 } = second;
  const out = s1 < 0 === half < 0 ? 1 : -1;
  const sinTurn = sinDeg(2 * half);
  const faces = { cos: facesCosine(half, s1, s2), versine: facesVersine(half, s1, s2) };
  const length = facesLength(half, first, second);
  return [
    [
      (out * t1 * sinDeg(s2) * sinTurn) / length,
      (-out * t1 * crossTilt(s1, s2, half)) / length,
      (out * lessProjection(t2, t1, t2 - t1, faces)) / length,
    ],
    [
      (-out * t2 * sinDeg(s1) * sinTurn) / length,
      (-out * t2 * crossTilt(s2, s1, half)) / length,
      (out * lessProjection(t1, t2, t1 - t2, faces)) / length,
    ],
  ];
}

/**
 * w2 cos s2 - w1 cos s1, by differences of like terms first: (w2 - w1) cos s + w (cos s2 - cos s1).
 *
 * s is the slope with the smaller cosine and w the other board's width, so that neither term is larger than what the difference is made of.
 */
function planDifference(s1: number, w1: number, s2: number, w2: number): number {
  const cosines = 2 * sinDeg((s1 + s2) / 2) * sinDeg((s1 - s2) / 2);
  return Math.abs(s1) > Math.abs(s2) ? (w2 - w1) * cosDeg(s1) + w2 * cosines : (w2 - w1) * cosDeg(s2) + w1 * cosines;
}

/** A normal, brought to length 1. */
function unitNormal(along: number, across: number, through: number): Normal {
  const length = Math.hypot(along, across, through);
  return [along / length, across / length, through / length];
}

/**
 * The upright joint plane that holds, seen from above, the points where the inner and where the outer edges meet.
 *
 * From the first point to the second leads the vector v with v.o1 = q1 and v.o2 = q2, where q = w cos s is a board's width as
 * seen from above. The level normal across v has the components q1 sin T along the first board and q1 cos T - q2 outward
 * from it.
 *
 * Half the turn is not 0, and no slope is 90 or -90.
 */
export function edgePlanes(half: number, first: Wide, second: Wide): NormalPair {
  const { slope: s1, width: w1 } = first;
  const { slope: s2, width: w2 } = second;
  const out = half < 0 ? -1 : 1;
  const sinTurn = sinDeg(2 * half);
  const turn = { cos: cosDeg(2 * half), versine: versine(half) };
  const difference = planDifference(s1, w1, s2, w2);
  const q1 = w1 * cosDeg(s1);
  const q2 = w2 * cosDeg(s2);
  const inward1 = out * lessProjection(q2, q1, difference, turn);
  const inward2 = out * lessProjection(q1, q2, -difference, turn);
  return [
    unitNormal(out * q1 * sinTurn, -inward1 * cosDeg(s1), inward1 * sinDeg(s1)),
    unitNormal(-out * q2 * sinTurn, -inward2 * cosDeg(s2), inward2 * sinDeg(s2)),
  ];
}

/**
 * The planes of a butt joint at faces: the first board ends on the second one's inner face, and the second is cut flush with
 * the first one's outer face, along -N2 and -N1. Half the turn is not 0; the slopes are not 0 and of one sign.
 */
export function buttFacePlanes(half: number, s1: number, s2: number): NormalPair {
  const out = s1 < 0 === half < 0 ? 1 : -1;
  const sinTurn = sinDeg(2 * half);
  const through = -out * facesCosine(half, s1, s2);
  return [
    [out * sinDeg(s2) * sinTurn, -out * crossTilt(s1, s2, half), through],
    [-out * sinDeg(s1) * sinTurn, -out * crossTilt(s2, s1, half), through],
  ];
}

/**
 * The planes of a butt joint at edges: the first board ends on the second one's inner edge, and the second is cut flush with
 * the first one's outer edge, along A2 and A1. Half the turn is not 0, and no slope is 90 or -90.
 */
export function buttEdgePlanes(half: number, s1: number, s2: number): NormalPair {
  const out = half < 0 ? -1 : 1;
  const sinTurn = sinDeg(2 * half);
  const across = out * (sinDeg(s1) * sinDeg(s2) + cosDeg(s1) * cosDeg(s2) * cosDeg(2 * half));
  return [
    [out * cosDeg(s2) * sinTurn, across, out * crossTilt(s2, s1, half)],
    [-out * cosDeg(s1) * sinTurn, across, out * crossTilt(s1, s2, half)],
  ];
}

/**
 * The angle in front of the two faces.
 *
 * |N1 - N2|^2 / 4 = sin^2((s1 - s2)/2) + sin s1 sin s2 sin^2 h and |N1 + N2|^2 / 4 = cos^2((s1 + s2)/2) + sin s1 sin s2 cos^2 h;
 * their roots are the legs of half the angle. The faces look toward each other when slope and turn have the same sign. The slopes are of one sign; the result
 * is from 0 to 360 degrees.
 */
export function dihedralKernel(half: number, s1: number, s2: number): number {
  const cosH = cosDeg(half);
  // The cosine of the mean slope as the sine of its complement: 90 - s is exact where its last digits count.
  const cosMean = sinDeg((90 - Math.abs(s1) + (90 - Math.abs(s2))) / 2);
  const sum = Math.sqrt(cosMean * cosMean + sinDeg(s1) * sinDeg(s2) * cosH * cosH);
  const difference = Math.sqrt(facesVersine(half, s1, s2) / 2);
  return 2 * atan2Deg(sum, s1 < 0 === half < 0 ? difference : -difference);
}
