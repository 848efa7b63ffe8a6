import type { Hazard } from "../../core/hazard.js";
import type { FilledBrief } from "../brief/brief.js";
import type { ContainedRest } from "../contents/contained-rest.js";
import type { FrameContents } from "../contents/contents-plan.js";
import type { FrameMaterials } from "../materials/frame-materials.js";
import type { FrameHanging } from "../hanging/frame-hanging.js";
import type { RoughPiece } from "../sawing/rough-length.js";
import { glassHazards } from "./glass-hazards.js";
import { hangingHazards } from "./hanging-hazards.js";
import { heavyHazard } from "./heavy-hazard.js";
import { seatingHazards } from "./seating-hazards.js";
import { stickHazards } from "./stick-hazards.js";

/** What the hazards of a whole plan look at. */
export interface PlanFacts {
  /** What goes into the frame. */
  readonly contents: FrameContents;
  /** How a rectangle that a square frame contains lies on its lip; `null` where there is none. */
  readonly rest: ContainedRest | null;
  /** What one piece takes of its stick. */
  readonly piece: RoughPiece;
  /** What the frame takes and weighs. */
  readonly materials: FrameMaterials;
  /** How it hangs; `null` where it does not. */
  readonly hanging: FrameHanging | null;
}

/** The mass that hangs, or that is lifted where nothing hangs. */
function knownMass({ materials, hanging }: PlanFacts): number | null {
  return hanging?.possible === true ? hanging.load.mass : materials.mass.total;
}

/**
 * The hazards of a whole plan that do not come from sawing.
 *
 * @param brief - the filled brief
 * @param facts - the rest of the plan
 * @returns the hazards
 */
export function planHazards(brief: FilledBrief, facts: PlanFacts): Hazard[] {
  const { contents, rest, piece, materials, hanging } = facts;
  return [
    ...seatingHazards(contents, rest, brief),
    ...stickHazards(brief, piece),
    ...heavyHazard(knownMass(facts), brief.unit),
    ...glassHazards(brief, contents, materials),
    ...hangingHazards(hanging, brief.unit),
  ];
}
