import type { Caution } from "../../core/caution.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { CuttingPlan } from "../cutting-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { LayOption } from "../lay-option.js";
import type { Saw } from "../../saw/index.js";
import { makeCaution, type CautionNumbers } from "./make-caution.js";

/** A caution and the steps of the plan on which it bears. */
export interface StepCaution {
  /** The caution. */
  readonly caution: Caution;
  /** The steps, by their numbers; empty when it bears on the whole plan. */
  readonly steps: readonly number[];
}

/** What the rules of the pieces look at, whether or not a lay suits the saw. */
export interface PieceSituation {
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** How it is cut, so far without cautions. */
  readonly plan: CuttingPlan;
  /** Unit of the lengths. */
  readonly unit: LengthUnit;
  /** The gap accepted at the last joint. */
  readonly gap: number;
  /** The steps that cut ends, by their numbers. */
  readonly cutSteps: readonly number[];
  /** The last step. */
  readonly lastStep: number;
}

/** What the rules of the cuts look at besides. */
export interface Situation extends PieceSituation {
  /** The lay that is used. */
  readonly option: LayOption;
}

/** A rule: the caution that it raises, or none. */
export type CuttingRule = (situation: Situation) => StepCaution | null;

/** A rule that needs no lay. */
export type PieceRule = (situation: PieceSituation) => StepCaution | null;

/**
 * What to call the fence that a stick lies at, where a saw has two.
 *
 * @param saw - the saw
 * @returns words for people
 */
export function fenceOf(saw: Saw): string {
  return saw.fence === "near" ? "the gauge's fence" : "the fence";
}

/**
 * A caution that bears on steps.
 *
 * @param code - which rule raised it
 * @param severity - how much it weighs
 * @param steps - the steps, by their numbers
 * @param sentence - one or two sentences for people
 * @param quantities - the numbers that raised it, by what they are
 * @returns the caution and the steps
 */
export function raise(
  code: string,
  severity: Caution["severity"],
  steps: readonly number[],
  sentence: string,
  quantities: CautionNumbers = {},
): StepCaution {
  return { caution: makeCaution(code, severity, sentence, quantities), steps };
}
