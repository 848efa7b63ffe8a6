import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";

/** A normal by its components along, across and through a stick, of any length. */
export type Normal = readonly [along: number, across: number, through: number];

/** The end planes of the two sticks at a corner: the normal of each points out of its own stick. */
export type NormalPair = readonly [first: Normal, second: Normal];

/*
 * How the forms below are derived. Take the corner's own axes: C along the ring at the corner, B outward on the bisector, Z
 * up. With h half the turn T, the first stick runs along u1 = C cos h + B sin h and has outward o1 = B cos h - C sin h; the
 * second has u2 = C cos h - B sin h and o2 = B cos h + C sin h. A board of slope s has the axes
 *   along u,  across A = o cos s + Z sin s,  through N = Z cos s - o sin s.
 * From o1.o2 = cos T, o1.u2 = -sin T and o2.u1 = sin T follow
 *   N1.N2 = cos s1 cos s2 + sin s1 sin s2 cos T
 *   N2.u1 = -sin s2 sin T          N1.u2 = sin s1 sin T
 *   N2.A1 = sin s1 cos s2 - cos s1 sin s2 cos T, and N1.A2 the same with 1 and 2 exchanged.
 */

/**
 * sin a cos b - cos a sin b cos T, without cancellation that the angles themselves do not have.
 *
 * Below a right angle it is sin(a - b) + cos a sin b (1 - cos T), exact where a = b; from there on both products have the
 * same sign already.
 */
function crossTilt(a: number, b: number, half: number): number {
  const cosTurn = cosDeg(2 * half);
  const product = cosDeg(a) * sinDeg(b);
  if (cosTurn < 0) return sinDeg(a) * cosDeg(b) - product * cosTurn;
  const sinHalf = sinDeg(half);
  return sinDeg(a - b) + product * (2 * sinHalf * sinHalf);
}

/** The normal of a joint between equal boards: it stands on the corner's bisector, whatever the lengths involved. */
function bisector(half: number, slope: number): Normal {
  const sinH = sinDeg(half);
  return [cosDeg(half), -sinH * cosDeg(slope), sinH * sinDeg(slope)];
}

/**
 * The joint plane of two equal boards: C itself.
 *
 * @param half - half the turn in degrees
 * @param slope - slope of both boards
 * @returns the normals, of length 1
 */
export function equalJoint(half: number, slope: number): NormalPair {
  const [along, across, through] = bisector(half, slope);
  return [
    [along, across, through],
    [-along, across, through],
  ];
}

/** t2 - t1 N1.N2, from the small quantities 1 - N1.N2 and t2 - t1. */
function thicknessTerm(own: number, other: number, oneLessCos: number): number {
  return other - own + own * oneLessCos;
}

/** 1 - N1.N2 = 2 sin^2((s1 - s2)/2) + 2 sin s1 sin s2 sin^2 h: a sum of terms that are never negative. */
function oneLessCosine(half: number, s1: number, s2: number): number {
  const halfDifference = sinDeg((s1 - s2) / 2);
  const sinH = sinDeg(half);
  return 2 * (halfDifference * halfDifference + sinDeg(s1) * sinDeg(s2) * sinH * sinH);
}

/**
 * The joint plane that holds the line where the faces meet and the line where the backs meet.
 *
 * All planes through the first line are p N1 + q N2 for some p and q; the second lies t1 and t2 below, so p t1 + q t2 = 0 and
 * the normal is M = t2 N1 - t1 N2, out of the first board where M.u1 = t1 sin s2 sin T is positive.
 *
 * @param half - half the turn in degrees, not 0
 * @param s1 - slope of the first board
 * @param t1 - its thickness
 * @param s2 - slope of the second board, of the first one's sign
 * @param t2 - its thickness
 * @returns the normals
 */
export function faceJoint(half: number, s1: number, t1: number, s2: number, t2: number): NormalPair {
  const sinTurn = sinDeg(2 * half);
  const oneLessCos = oneLessCosine(half, s1, s2);
  const out = (s1 < 0 ? -1 : 1) * (half < 0 ? -1 : 1);
  return [
    [out * t1 * sinDeg(s2) * sinTurn, -out * t1 * crossTilt(s1, s2, half), out * thicknessTerm(t1, t2, oneLessCos)],
    [-out * t2 * sinDeg(s1) * sinTurn, -out * t2 * crossTilt(s2, s1, half), out * thicknessTerm(t2, t1, oneLessCos)],
  ];
}

/**
 * The angle in front of the two faces.
 *
 * |N1 - N2|^2 / 4 = sin^2((s1 - s2)/2) + sin s1 sin s2 sin^2 h and |N1 + N2|^2 / 4 = cos^2((s1 + s2)/2) + sin s1 sin s2 cos^2 h;
 * half the angle has the ratio of the two for its cotangent. The faces lean toward each other when slope and turn have the
 * same sign.
 *
 * @param half - half the turn in degrees
 * @param s1 - slope of the first board
 * @param s2 - slope of the second board, of the first one's sign
 * @returns degrees, 0 to 360
 */
export function dihedralKernel(half: number, s1: number, s2: number): number {
  const cosH = cosDeg(half);
  // The cosine of the mean slope as the sine of the mean complement: 90 - s is exact where the last digits count.
  const meanComplement = sinDeg((90 - Math.abs(s1) + (90 - Math.abs(s2))) / 2);
  const sum = Math.sqrt(meanComplement * meanComplement + sinDeg(s1) * sinDeg(s2) * cosH * cosH);
  const difference = Math.sqrt(oneLessCosine(half, s1, s2) / 2);
  return 2 * atan2Deg(sum, s1 < 0 !== half < 0 ? -difference : difference);
}
