import { checkObject } from "../../core/check.js";
import type { Hazard } from "../../core/hazard.js";
import { readStored } from "../../core/stored.js";
import type { FramePlan } from "../plan-frame.js";
import { hazards as readHazards } from "../stored/hazard.js";
import { sawPlan } from "../stored/sawing.js";

/** A hazard as people are shown it: by a number. */
export interface NumberedHazard {
  /** Its place in the list, from 1. */
  readonly number: number;
  /** The hazard. */
  readonly hazard: Hazard;
  /** The steps at the saw that it concerns, by their numbers; empty where it concerns the whole plan. */
  readonly steps: readonly number[];
}

const GRAVEST_FIRST: readonly Hazard["signal"][] = ["danger", "warning", "caution", "notice"];

/**
 * Puts the hazards of a plan in the order in which people are shown them, the gravest first, and numbers them.
 *
 * Hazards of one signal keep the order of the plan. A step at the saw then names the hazards that concern it by their numbers.
 *
 * @param plan - from `planFrame`; no more of it is read than `hazards` and `sawing`
 * @returns every hazard with its number, from 1, and the steps that it concerns
 * @throws {InputError} when these parts of the plan are not sound
 * @example
 * ```ts
 * import { numberHazards, planFrame } from "miterwright/frame";
 *
 * const plan = planFrame({ sides: 4, opening: { side: 250 }, measured: { levelWidth: 40 }, species: "white ash" });
 * numberHazards(plan).map(({ number, hazard, steps }) => `${number} ${hazard.signal}: ${steps.join(", ")}`); //=> [
 * //     "1 warning: 1, 2",
 * //     "2 warning: ",
 * //     "3 notice: 2",
 * //     "4 notice: ",
 * //   ]
 * ```
 */
export function numberHazards(plan: Pick<FramePlan, "hazards" | "sawing">): NumberedHazard[] {
  const given = checkObject(plan, "plan");
  const hazards = readStored(given["hazards"], "plan.hazards", readHazards);
  const { operations } = readStored(given["sawing"], "plan.sawing", sawPlan);
  const ordered = GRAVEST_FIRST.flatMap((signal) => hazards.filter((hazard) => hazard.signal === signal));
  return ordered.map((hazard, index) => ({
    number: index + 1,
    hazard,
    steps: operations.filter((operation) => operation.hazards.includes(hazard.code)).map(({ step }) => step),
  }));
}
