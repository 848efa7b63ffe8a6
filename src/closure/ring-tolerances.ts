import { sinDeg, tanDeg } from "../core/degrees.js";
import { compoundMiterKernel } from "../miter/internal.js";
import { toleranceKernel, type ToleranceQuestion } from "./gauge-tolerance.js";
import { regularClosure } from "./regular-closure.js";

/** By how much two measures across a ring may be off. */
export interface AcrossTolerance {
  /** From side to side, or for odd n from corner to side. */
  readonly flats: number;
  /** Between the corners farthest apart. */
  readonly diagonal: number;
}

/**
 * A chord of f sides of the part of a ring that stands together: n equal sides, the joints between them turning by 2 t each.
 *
 * Its corners lie on a circle of the radius side / (2 sin t).
 */
function chord(side: number, f: number, t: number): number {
  return (side * sinDeg(f * t)) / sinDeg(t);
}

/** From the middle of a side of that part square to the opposite one, or for odd n from a corner. */
function flatsAcross(sides: number, side: number, t: number): number {
  const far = Math.floor(sides / 2);
  return sides % 2 === 0
    ? (side * sinDeg(far * t) * sinDeg(far * t)) / tanDeg(t)
    : chord(side, far, t) * sinDeg((far + 1) * t);
}

/**
 * How far measures across a ring are off at most when all its cuts share the error of an open angle, opened either way, and all joints but the last are tight.
 *
 * These measures shrink as the joints turn more, at a growing rate, so the larger turn decides. In an odd ring the longer part between the corners farthest
 * apart decides, (n + 1)/2 sides, with the open joint in the shorter part.
 */
function acrossTolerance(sides: number, side: number, angle: number): AcrossTolerance {
  const half = 180 / sides;
  const larger = half + angle / (2 * sides);
  const off = (measure: (t: number) => number): number => Math.abs(measure(larger) - measure(half));
  return {
    flats: off((t) => flatsAcross(sides, side, t)),
    diagonal: off((t) => chord(side, Math.ceil(sides / 2), t)),
  };
}

/**
 * By how much the pieces may differ: errors of q/2 each, half of the ring too long by it and half too short, leave a closing vector of
 * q sin(floor(n/2) 180/n) / sin(180/n), which is the accepted gap at most.
 */
export function pieceTolerance(sides: number, acceptedGap: number): number {
  const half = 180 / sides;
  return (acceptedGap * sinDeg(half)) / sinDeg(Math.floor(sides / 2) * half) / 2;
}

/**
 * How high a corner lifts off a flat bench. Two joints that gape by acceptedGap / thickness fold the ring along a line through its center. The corner farthest
 * from the fold is a circumradius off it: that of the line that the ring stands on.
 */
export function liftTolerance(circumradius: number, thickness: number, acceptedGap: number): number {
  return (circumradius * acceptedGap) / thickness;
}

/**
 * How far the slope moves at most when miter and bevel each keep within what the accepted gap allows. The gap itself does not bound the slope, since errors of
 * both can cancel in it; a slope that is further off tells of two errors. `each` is that of the shared tolerance.
 */
function slopeTolerance(sides: number, slope: number, each: number): number {
  const { miter, bevel } = compoundMiterKernel(180 / sides, slope);
  const ends = [each, -each].flatMap((dm) => [each, -each].map((db) => [miter + dm, bevel + db] as const));
  return Math.max(...ends.map(([m, b]) => Math.abs(regularClosure(sides, m, b).slope - slope)));
}

/** What the accepted gap leaves to the measures of a dry ring. */
export interface RingTolerances {
  /** Each corner's angle, in degrees. */
  readonly corner: number;
  /** The slope, in degrees. */
  readonly slope: () => number;
  /** The measures across, by the length of a side along the line that is measured at. */
  readonly across: (side: number) => AcrossTolerance;
}

/** What a gap, less than the joint is wide, leaves to the measures of a dry ring whose cuts all share the error that makes it. */
export function ringTolerances(question: ToleranceQuestion): RingTolerances {
  const { sides, slope } = question;
  const { angle, shared } = toleranceKernel(question);
  return {
    corner: angle / sides,
    slope: () => slopeTolerance(sides, slope, shared.each),
    across: (side) => acrossTolerance(sides, side, angle),
  };
}
