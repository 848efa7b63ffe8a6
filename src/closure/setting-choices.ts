import { compoundMiterKernel } from "../miter/internal.js";
import type { SawSetting } from "../miter/index.js";
import { opensAt, regularClosure, type OpenEnd } from "./regular-closure.js";

/** A setting at graduations of both scales, and what it costs. */
export interface SettingChoice extends SawSetting {
  /** Open angle of the ring cut so, in degrees; positive opens outside. */
  readonly angle: number;
  /** The gap of the last joint, 0 or more. */
  readonly jointGap: number;
  /** Which end of it is open. */
  readonly opens: OpenEnd;
  /** By how many degrees the slope at which the ring closes is more than planned. */
  readonly slopeOff: number;
}

/** The graduations around an exact setting. */
export interface SettingChoices {
  /** The exact setting, lying flat. */
  readonly exact: SawSetting;
  /** Each angle at its nearest graduation. */
  readonly nearest: SettingChoice;
  /** All settings up to two graduations away, the smallest gap first; among equals, the truest slope. */
  readonly choices: readonly SettingChoice[];
}

/** Angles closer than this to a graduation, as a share of the step, are on it. */
const ON_GRADUATION: number = 1e-9;

/**
 * A graduation of a scale. Where a whole number of steps makes a degree, it is the fraction itself: 257 / 10, which 257 * 0.1 misses. Graduations count from 0;
 * the step is in degrees.
 */
export function atGraduation(graduation: number, step: number): number {
  const perDegree = Math.round(1 / step);
  return Math.abs(perDegree * step - 1) < ON_GRADUATION ? graduation / perDegree : graduation * step;
}

/** The graduations up to two steps on either side; an angle on a graduation stays there, as 0 does: another graduation would only tip the joint. */
function graduationsAround(angle: number, step: number): number[] {
  const nearest = Math.round(angle / step);
  if (Math.abs(angle / step - nearest) < ON_GRADUATION) return [atGraduation(nearest, step)];
  const below = Math.floor(angle / step);
  return [below - 1, below, below + 1, below + 2]
    .map((graduation) => atGraduation(graduation, step))
    .filter((graduation) => Math.abs(graduation) < 90);
}

/** A ring for which settings are compared. */
export interface OpeningRing {
  /** Number of sides. */
  readonly sides: number;
  /** Planned slope in degrees, -90 to 90. */
  readonly slope: number;
  /** How far the last joint opens for every degree of open angle. */
  readonly perDegree: number;
}

/** A setting of every end, in degrees, and what it costs, unchecked. */
export function choiceAt({ sides, slope, perDegree }: OpeningRing, miter: number, bevel: number): SettingChoice {
  const closure = regularClosure(sides, miter, bevel);
  return {
    miter: miter + 0,
    bevel: bevel + 0,
    angle: closure.angle,
    jointGap: Math.abs(closure.angle) * perDegree,
    opens: opensAt(closure.angle),
    slopeOff: miter === 0 && bevel === 0 ? 0 : closure.slope - slope,
  };
}

/** The graduations around the exact setting and what they cost, unchecked; the steps are those of the two scales, in degrees. */
export function settingChoices(ring: OpeningRing, step: number, bevelStep: number): SettingChoices {
  const { miter, bevel } = compoundMiterKernel(180 / ring.sides, ring.slope);
  const choice = (m: number, b: number): SettingChoice => choiceAt(ring, m, b);
  const bevels = graduationsAround(bevel, bevelStep);
  const choices = graduationsAround(miter, step)
    .flatMap((m) => bevels.map((b) => choice(m, b)))
    .sort((a, b) => a.jointGap - b.jointGap || Math.abs(a.slopeOff) - Math.abs(b.slopeOff));
  return {
    exact: { miter, bevel },
    nearest: choice(
      atGraduation(Math.round(miter / step), step),
      atGraduation(Math.round(bevel / bevelStep), bevelStep),
    ),
    choices,
  };
}
