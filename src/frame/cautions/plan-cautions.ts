import type { Caution } from "../../core/caution.js";
import type { FilledBrief } from "../brief.js";
import type { ContainedRest } from "../contained-rest.js";
import type { FrameContents } from "../contents-plan.js";
import type { FrameMaterials } from "../frame-materials.js";
import type { FrameHanging } from "../hanging/frame-hanging.js";
import type { RoughPiece } from "../rough-length.js";
import { glassCautions } from "./glass-cautions.js";
import { hangingCautions } from "./hanging-cautions.js";
import { heavyCaution } from "./heavy-caution.js";
import { seatCautions } from "./seat-cautions.js";
import { stickCautions } from "./stick-cautions.js";

/** What the cautions of a whole plan look at. */
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
 * The cautions of a whole plan that do not come from cutting.
 *
 * @param brief - the filled brief
 * @param facts - the rest of the plan
 * @returns the cautions
 */
export function planCautions(brief: FilledBrief, facts: PlanFacts): Caution[] {
  const { contents, rest, piece, materials, hanging } = facts;
  return [
    ...seatCautions(contents, rest, brief),
    ...stickCautions(brief, piece),
    ...heavyCaution(knownMass(facts), brief.unit),
    ...glassCautions(brief, contents, materials),
    ...hangingCautions(hanging, brief.unit),
  ];
}
