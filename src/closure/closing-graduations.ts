import { atan2Deg, cosDeg, DEGREES, sinDeg, tanDeg } from "../core/degrees.js";
import { compoundMiterKernel } from "../miter/internal.js";
import { gapPerDegree, otherAngle } from "./regular-closure.js";
import { atGraduation, choiceAt, type SettingChoice } from "./setting-choices.js";

/** Graduations that close the ring are taken while the slope is off by no more than this, in degrees. */
const SLOPE_RANGE: number = 2;

/** The most graduations of the miter scale that are tried on either side of the exact angle: scales of a hundredth of a degree need no more. */
const MOST_GRADUATIONS: number = 500;

/** Angles closer than this to 0, in degrees, are 0. */
const ZERO: number = 1e-9;

/** What {@link closingGraduations} works from. */
export interface ClosingGraduationsTask {
  /** Number of sides. */
  readonly sides: number;
  /** Joint width. */
  readonly width: number;
  /** Slope in degrees, 0 to 90. */
  readonly slope: number;
  /** The accepted gap. */
  readonly acceptedGap: number;
  /** Step of the miter scale in degrees. */
  readonly step: number;
  /** Step of the bevel scale in degrees. */
  readonly bevelStep: number;
  /** How far the miter scale goes, in degrees. */
  readonly miterReach: number;
  /** How far the bevel scale goes, in degrees. */
  readonly bevelReach: number;
}

/** The graduations to set, and how far they were looked for. */
export interface ClosingGraduations {
  /** Each angle at its nearest graduation. */
  readonly nearest: SettingChoice;
  /** The graduations that cost least. */
  readonly best: SettingChoice;
  /** By how many degrees the slope may be off at graduations that were looked at; 0 where an angle of 0 stays at 0, so that no graduation changes the slope. */
  readonly slopeRange: number;
}

/** The slope at which a ring closes whose joints turn by twice a half, with a given miter: cos s = tan m / tan h. */
function slopeAt(half: number, miter: number): number {
  if (half <= miter) return 0;
  if (half >= 90) return 90;
  const [along, across] = [tanDeg(miter), tanDeg(half)];
  return atan2Deg(Math.sqrt((across - along) * (across + along)), along);
}

/** The bevels that are worth a look at one miter: the graduations beside the closing one, beside the one that keeps the slope, and those between which the gap is accepted. */
function bevelsAt(half: number, error: number, miter: number, task: ClosingGraduationsTask): Set<number> {
  const { slope, bevelStep, bevelReach } = task;
  const keeps = slope < 90 ? atan2Deg(sinDeg(miter) * sinDeg(slope), cosDeg(slope)) : half;
  const closes = otherAngle(half, miter) ?? 0;
  const least = otherAngle(Math.max(half - error, 0), miter) ?? 0;
  const most = otherAngle(Math.min(half + error, 90), miter) ?? 0;
  const last = Math.floor(bevelReach / bevelStep);
  const graduations = new Set<number>();
  for (const bevel of [keeps, closes, least, most]) {
    const graduation = bevel / bevelStep;
    graduations.add(Math.min(Math.floor(graduation), last)).add(Math.min(Math.ceil(graduation), last));
  }
  return graduations;
}

/**
 * The graduations of both scales that cost least, among all that can matter, on bare numbers, unchecked.
 *
 * Where graduations keep within the accepted gap and within 2 degrees of the slope, those with the truest slope are taken. Where none do, those with the
 * smallest cost are taken: the gap plus what the slope puts the outer edge off, width times the slope's error in radians. An angle that has to be 0 stays at 0:
 * it is not set.
 *
 * Every miter graduation is tried, outward from the exact angle to both hands. At one miter, gap and slope depend on the bevel alone, the slope steadily, so
 * only the bevels beside a few values count. With a joint's half turn within e of h, the slope of a ring of miter m lies between acos(tan m / tan(h - e)) and
 * acos(tan m / tan(h + e)), which moves away from what is planned as m does. The search ends where that alone costs more than the best graduations found.
 */
export function closingGraduations(task: ClosingGraduationsTask): ClosingGraduations {
  const { sides, width, slope, acceptedGap, step, bevelStep, miterReach } = task;
  const half = 180 / sides;
  const perDegree = gapPerDegree(sides, width);
  const ring = { sides, slope, perDegree };
  const exact = compoundMiterKernel(half, slope);
  const [noMiter, noBevel] = [exact.miter < ZERO, exact.bevel < ZERO];
  const halfFor = (jointGap: number): number => jointGap / perDegree / (2 * sides);
  const costOf = ({ jointGap, slopeOff }: SettingChoice): number => jointGap + width * (Math.abs(slopeOff) / DEGREES);

  let truest: SettingChoice | undefined;
  let cheapest: SettingChoice | undefined;
  const look = (miter: number, bevel: number): void => {
    const one = choiceAt(ring, miter, bevel);
    if (cheapest === undefined || costOf(one) < costOf(cheapest)) cheapest = one;
    if (one.jointGap > acceptedGap || Math.abs(one.slopeOff) > SLOPE_RANGE) return;
    if (truest === undefined || Math.abs(one.slopeOff) < Math.abs(truest.slopeOff)) truest = one;
  };
  const lookAt = (miter: number): void => {
    if (noBevel) {
      look(miter, 0);
      return;
    }
    for (const graduation of bevelsAt(half, halfFor(acceptedGap), miter, task))
      look(miter, atGraduation(graduation, bevelStep));
  };
  /** By how much the slope is off at least at a miter, where the half turn is off by an error at most. */
  const leastOff = (miter: number, error: number): number =>
    miter < exact.miter ? slopeAt(half - error, miter) - slope : slope - slopeAt(half + error, miter);
  /** Whether a miter, or one still farther out, may have better graduations than the best so far. */
  const mayHelp = (miter: number): boolean => {
    // Without a bevel the slope is right at all graduations, and the nearest ones open least.
    if (noBevel) return Math.abs(miter - exact.miter) < 2 * step;
    const most = truest === undefined ? SLOPE_RANGE : Math.abs(truest.slopeOff);
    if (cheapest === undefined || leastOff(miter, halfFor(acceptedGap)) <= most) return true;
    const cost = costOf(cheapest);
    return truest === undefined && (leastOff(miter, halfFor(cost)) / DEGREES) * width < cost;
  };

  const below = Math.floor(exact.miter / step);
  let slopeRange = noMiter || noBevel ? 0 : SLOPE_RANGE;
  if (noMiter) lookAt(0);
  for (const hand of noMiter ? [] : [-1, 1]) {
    const first = hand < 0 ? below : below + 1;
    for (let count = 0; ; count += 1) {
      const miter = atGraduation(first + hand * count, step);
      if (miter < 0 || miter > miterReach || miter >= 90 || !mayHelp(miter)) break;
      if (count === MOST_GRADUATIONS) {
        slopeRange = Math.min(slopeRange, Math.max(leastOff(miter, halfFor(acceptedGap)), 0));
        break;
      }
      lookAt(miter);
    }
  }
  const nearest = (angle: number, scale: number): number => atGraduation(Math.round(angle / scale), scale);
  return {
    nearest: choiceAt(ring, nearest(exact.miter, step), nearest(exact.bevel, bevelStep)),
    best: (truest ?? cheapest)!,
    slopeRange,
  };
}
