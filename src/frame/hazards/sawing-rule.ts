import type { Hazard, HazardCode, HazardFence, HazardSignal } from "../../core/hazard.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { LayResult } from "../sawing/lay-result.js";
import type { Saw } from "../../saw/index.js";
import { makeHazard, type HazardParts } from "./make-hazard.js";

/** A hazard and the steps of the plan on which it bears. */
export interface StepHazard {
  /** The hazard. */
  readonly hazard: Hazard;
  /** The steps, by their numbers; empty when it bears on the whole plan. */
  readonly steps: readonly number[];
}

/** What the rules of the pieces look at, whether or not a lay suits the saw. */
export interface PieceSituation {
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** How it is cut, so far without hazards. */
  readonly plan: SawPlan;
  /** Unit of the lengths. */
  readonly unit: LengthUnit;
  /** The accepted gap. */
  readonly acceptedGap: number;
  /** The steps that cut ends, by their numbers. */
  readonly cutSteps: readonly number[];
  /** The last step. */
  readonly lastStep: number;
}

/** What the rules of the cuts look at besides. */
export interface Situation extends PieceSituation {
  /** The lay that is used. */
  readonly lay: LayResult;
}

/** A rule: the hazard that it raises, or none. */
export type SawingRule = (situation: Situation) => StepHazard | null;

/** A rule that needs no lay. */
export type PieceRule = (situation: PieceSituation) => StepHazard | null;

/**
 * The fence that a stick lies at, where a saw has two.
 *
 * @param saw - the saw
 * @returns whose fence it is
 */
export function fenceOf(saw: Saw): HazardFence {
  return saw.fence === "near" ? "gauge" : "saw";
}

/**
 * A hazard that bears on steps.
 *
 * @param code - which rule raised it
 * @param signal - how grave it is
 * @param steps - the steps, by their numbers
 * @param parts - its numbers, facts, names and source
 * @returns the hazard and the steps
 */
export function raise<C extends HazardCode>(
  code: C,
  signal: HazardSignal,
  steps: readonly number[],
  parts: HazardParts<C>,
): StepHazard {
  return { hazard: makeHazard(code, signal, parts), steps };
}
