import { checkDegrees, checkLength, checkObject, checkSides, checkSlope } from "../core/check.js";
import { sinDeg, tanDeg } from "../core/degrees.js";
import type { SawSetting } from "../miter/index.js";
import type { GaugeToleranceOptions } from "./gauge-tolerance.js";
import { gapPerDegree } from "./regular-closure.js";
import { settingChoices, type SettingChoice } from "./setting-choices.js";

/** Options of {@link settingCost}. */
export interface SettingCostOptions extends Pick<GaugeToleranceOptions, "sides" | "width" | "slope"> {
  /** Step of the miter scale in degrees, 1e-6 to 45, e.g. 0.5. */
  readonly step: number;
  /** Step of the bevel scale in degrees, 1e-6 to 45; default that of the miter scale. */
  readonly bevelStep?: number | undefined;
  /** Planned length of a piece, to see what rounding it costs; it comes with `lengthStep`. */
  readonly length?: number | undefined;
  /** Step that lengths are rounded to, e.g. 0.5 mm or 1/16 in, in the unit of `width`. Without it, lengths are not looked at. */
  readonly lengthStep?: number | undefined;
}

/** What rounding a length costs. */
export interface LengthCost {
  /** The length on the step's grid that is nearest. */
  readonly rounded: number;
  /** By how much it is longer than planned. */
  readonly error: number;
  /** By how much the apothem grows when all pieces are cut against one stop at the rounded length; the ring closes all the same. */
  readonly apothem: number;
  /** Longest closing vector when every piece is marked out for itself and is off by half a step at most. */
  readonly worst: number;
  /** Root mean square of the closing vector when these errors are spread evenly over the step. */
  readonly typical: number;
}

/** What the graduations of a saw's scales cost at the last joint. */
export interface SettingCost {
  /** The exact setting, lying flat. */
  readonly exact: SawSetting;
  /** Each angle at its nearest graduation. */
  readonly nearest: SettingChoice;
  /** Of the graduations around the exact setting, the one with the smallest gap; among equals, the truest slope. */
  readonly best: SettingChoice;
  /** All settings up to two graduations away from the exact one, the cheapest first. */
  readonly choices: readonly SettingChoice[];
  /** What rounding the lengths costs; `null` without `length` and `lengthStep`. */
  readonly length: LengthCost | null;
}

function checkStep(value: unknown, path: string): number {
  return checkDegrees(value, path, 1e-6, 45);
}

function lengthCost(sides: number, length: number, step: number): LengthCost {
  const rounded = Math.round(length / step) * step;
  const halfTurn = 180 / sides;
  return {
    rounded,
    error: rounded - length,
    apothem: (rounded - length) / (2 * tanDeg(halfTurn)),
    // Half of the ring too long by half a step, the other half too short: a step times the polygon's width in sides.
    worst: (step * sinDeg(Math.floor(sides / 2) * halfTurn)) / sinDeg(halfTurn),
    typical: step * Math.sqrt(sides / 12),
  };
}

/**
 * What it costs at the last joint to set the saw to the graduations of its scales, and which graduations cost least.
 *
 * Every cut shares the rounding, so the open angle is 2n times its effect on one end. Miter and bevel can cancel: two graduations that are both off may
 * close better than the two nearest ones, and change the slope instead. A length rounded on one stop changes the frame's size and
 * opens nothing; rounded piece by piece by up to half a step q/2, it can leave a closing vector of q sin(90 or 90 - 90/n) / sin(180/n).
 *
 * @param options - sides, slope, joint width, steps of the scales, and where wanted length and step of the rule
 * @returns the exact setting, the nearest, the best and all neighboring graduations; lengths in the unit of `width`
 * @throws {InputError} when a value is missing or out of range, or only one of `length` and `lengthStep` is given
 * @example
 * ```ts
 * import { settingCost } from "miterwright/closure";
 *
 * const cost = settingCost({ sides: 8, width: 40, slope: 30, step: 0.5 });
 * [cost.nearest.miter, cost.nearest.bevel, cost.nearest.jointGap.toFixed(2)]; //=> [19.5, 11, "2.62"]
 * [cost.best.miter, cost.best.bevel, cost.best.jointGap.toFixed(2)]; //=> [20, 10.5, "0.14"]
 * ```
 */
export function settingCost(options: SettingCostOptions): SettingCost {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const width = checkLength(given["width"], "width");
  const slope = checkSlope(given["slope"] ?? 0);
  const step = checkStep(given["step"], "step");
  const bevelStep = given["bevelStep"] === undefined ? step : checkStep(given["bevelStep"], "bevelStep");
  const rounds = given["length"] !== undefined || given["lengthStep"] !== undefined;
  const length = rounds
    ? lengthCost(sides, checkLength(given["length"], "length"), checkLength(given["lengthStep"], "lengthStep"))
    : null;

  const { exact, nearest, choices } = settingChoices(
    { sides, slope, perDegree: gapPerDegree(sides, width) },
    step,
    bevelStep,
  );
  return { exact, nearest, best: choices[0]!, choices, length };
}
