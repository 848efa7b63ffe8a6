import { checkLength, checkObject, checkSides, checkSlope, reject } from "../core/check.js";
import { cosDeg, DEGREES, sinDeg } from "../core/degrees.js";
import type { Filled } from "../core/geometry-types.js";
import { compoundMiterKernel } from "../miter/internal.js";
import { gapPerDegree, otherAngle } from "./regular-closure.js";

/** Options of {@link gaugeTolerance}. */
export interface GaugeToleranceOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Joint width, level from the innermost to the outermost point of the molding, 1e-100 to 1e100. */
  readonly width: number;
  /** The accepted gap at the last joint; positive and less than `width`. */
  readonly acceptedGap: number;
  /** Slope in degrees, -90 to 90; default 0, a flat frame. */
  readonly slope?: number | undefined;
}

/** By how many degrees the angles of a cut may be off. */
export interface AngleTolerance {
  /** The miter, with the bevel right; `null` in upright and nearly upright sides, where the gap does not bound it. */
  readonly miter: number | null;
  /** The bevel, with the miter right; `null` in flat and nearly flat frames, which it dishes or twists rather than opens. */
  readonly bevel: number | null;
  /** Each of both at once, when they add up. */
  readonly each: number;
}

/** By how many degrees the angles of a cut may scatter. */
export interface AngleScatter extends Omit<AngleTolerance, "each"> {
  /** Each of both at once, independent of each other; `null` where the law of first order is off by more than a tenth, as in wide gaps of many sides. */
  readonly each: number | null;
}

/** What a gap at the last joint leaves to the saw. */
export interface GaugeTolerance {
  /** The open angle that makes the gap, in degrees. */
  readonly angle: number;
  /** When every cut has the same error: the largest one. All 2n of them add up. */
  readonly shared: AngleTolerance;
  /**
   * When the errors of all cuts are independent and scatter about 0 in the normal way: the standard deviation with which 95 of
   * 100 rings keep within the gap. They add up as the square root of 2n.
   */
  readonly random: AngleScatter;
}

/** Two-sided 95 % point of the normal distribution, from any table of it: P(|x| < 1.959964) = 0.95. */
const NINETY_FIVE: number = 1.959963984540054;

/** Tolerances are as near as this share to the true ones; where the law of first order is not, the slope goes wrong long before the joint opens. */
const GOOD_TO: number = 0.1;

/**
 * By how much one angle must really be off, the other one right, until half the turn is off by an error.
 *
 * Half the turn curves upward over either angle, so the larger turn needs the smaller change. cos h = cos m cos b holds before and after, so
 * sin(m' - m) = sin(e) sin(2h + e) / (cos^2 b sin(m' + m)): a small change is no difference of two large angles.
 */
function trueError(half: number, error: number, own: number, other: number): number {
  const then = otherAngle(half + error, other)!;
  const cosine = cosDeg(other);
  const sine = (sinDeg(error) * sinDeg(2 * half + error)) / (cosine * cosine * sinDeg(then + own));
  return Math.asin(sine) * DEGREES;
}

/**
 * Whether 95 of 100 rings keep within the gap when a tolerance for random errors is a tenth less, at the most.
 *
 * By second order the turns of n joints are off by b standard deviations on average, which is b = sqrt(n/8) k d for a standard deviation d of one angle, where
 * k is the curvature of half the turn over its slope. A normal sum that is b off its middle keeps within 1.96 (1 + 0.453 b^2), and its own scatter is greater by b^2 / n.
 */
function holdsInRings(sides: number, deviation: number, curvature: number, effect: number): boolean {
  const off = (Math.sqrt(sides / 8) * curvature * deviation) / DEGREES / effect;
  return off * off * (0.453 + 1 / sides) <= GOOD_TO;
}

/** Checks a gap and the width it is seen across. */
export function checkGap(
  given: Readonly<Record<string, unknown>>,
  name: "acceptedGap" | "seenGap",
): { width: number; gap: number } {
  const width = checkLength(given["width"], "width");
  const gap = checkLength(given[name], name);
  if (gap >= width) {
    reject("range", name, gap, `Expected \`${name}\` to be less than \`width\`, ${width}, got ${gap}`);
  }
  return { width, gap };
}

/** The options of {@link gaugeTolerance}, all given. */
export type ToleranceQuestion = Filled<GaugeToleranceOptions>;

/** {@link gaugeTolerance}, unchecked; the accepted gap is less than the width. */
export function toleranceKernel({ sides, width, acceptedGap, slope }: ToleranceQuestion): GaugeTolerance {
  const half = 180 / sides;
  const { miter, bevel } = compoundMiterKernel(half, slope);
  const byMiter = cosDeg(slope);
  const byBevel = cosDeg(miter) * Math.abs(sinDeg(slope));
  const angle = acceptedGap / gapPerDegree(sides, width);
  // The true one is never the larger: half the turn curves upward.
  const isGood = (tolerance: number, truth: number): boolean => tolerance / truth - 1 <= GOOD_TO;
  const single = (error: number, effect: number, own: number, other: number): number | null => {
    const tolerance = error / effect;
    return isGood(tolerance, trueError(half, error, Math.abs(own), other)) ? tolerance : null;
  };
  const tolerance = (error: number, both: number): AngleTolerance => ({
    miter: single(error, byMiter, miter, bevel),
    bevel: single(error, byBevel, bevel, miter),
    each: error / both,
  });
  // Second derivatives of half the turn by the angles, per radian: cot h (1 - slope^2).
  const cotangent = cosDeg(half) / sinDeg(half);
  const [curveMiter, curveBevel] = [byMiter, byBevel].map((effect) => cotangent * (1 - effect) * (1 + effect)) as [
    number,
    number,
  ];
  const both = Math.hypot(byMiter, byBevel);
  const { miter: ofMiter, bevel: ofBevel, each } = tolerance(angle / (NINETY_FIVE * Math.sqrt(2 * sides)), both);
  const inRings = (deviation: number | null, curvature: number, effect: number): number | null =>
    deviation !== null && holdsInRings(sides, deviation, curvature, effect) ? deviation : null;
  return {
    angle,
    shared: tolerance(angle / (2 * sides), byMiter + byBevel),
    random: {
      miter: inRings(ofMiter, curveMiter, byMiter),
      bevel: inRings(ofBevel, curveBevel, byBevel),
      each: inRings(each, curveMiter + curveBevel, both),
    },
  };
}

/**
 * How far off the saw may be set before the last joint gapes by more than a given gap.
 *
 * A gap of g needs the open angle g cos h / width. Shared by all cuts, errors open 2n |cos s dm + cos m sin s db|, so the largest plan error of a cut is a
 * 2n-th of it. Independent errors add up as their squares do, so their standard deviation is 1 / (1.96 sqrt(2n)) of it. This is the law of first order. A
 * tolerance is given where it is within a tenth of the true one. For shared errors the true one is the error that makes the gap to all orders, with the other
 * angle right. For random errors it is, by second order, the standard deviation with which 95 of 100 rings keep within the gap. Elsewhere it is `null`. A
 * shared `each` is always given: the law is off by less than 7 % at the widest gap.
 *
 * @param options - sides, joint width, the accepted gap and the slope
 * @returns tolerances of miter and bevel in degrees, positive
 * @throws {InputError} when a value is missing or out of range, or the gap is not less than the width
 * @example
 * ```ts
 * import { gaugeTolerance } from "miterwright/closure";
 *
 * const { shared, random } = gaugeTolerance({ sides: 8, width: 40, acceptedGap: 0.25 });
 * shared.miter?.toFixed(3); //=> "0.021"
 * random.miter?.toFixed(3); //=> "0.042"
 * shared.bevel; //=> null
 * ```
 */
export function gaugeTolerance(options: GaugeToleranceOptions): GaugeTolerance {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const { width, gap: acceptedGap } = checkGap(given, "acceptedGap");
  return toleranceKernel({ sides, width, acceptedGap, slope: checkSlope(given["slope"] ?? 0) });
}
