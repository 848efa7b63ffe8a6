import type { LengthUnit } from "../../core/geometry-types.js";
import type { Hazard, HazardCode, HazardFacts, HazardNames, HazardSignal, QuantityKind } from "../../core/hazard.js";
import type { Lay } from "../../miter/index.js";
import type { PanelPlan } from "../../panel/index.js";
import type { FilledBrief } from "../brief/brief.js";
import type { ContainedRest } from "../contents/contained-rest.js";
import type { FrameContents } from "../contents/contents-plan.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { FrameHanging } from "../hanging/frame-hanging.js";
import type { FrameMaterials } from "../materials/frame-materials.js";
import type { FrameMovement } from "../materials/frame-movement.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";

/** What the rules of sawing look at. */
export interface SawingFacts {
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** How it is cut, so far without hazards. */
  readonly sawing: Omit<SawPlan, "hazards">;
  /** The lay that is asked for, if one is. */
  readonly wantedLay: Lay | undefined;
  /** Unit of the lengths. */
  readonly unit: LengthUnit;
  /** The accepted gap. */
  readonly acceptedGap: number;
  /** The steps that cut ends, by their numbers. */
  readonly cutSteps: readonly number[];
}

/** What the rules look at: a whole plan but for its hazards. */
export interface PlanFacts extends SawingFacts {
  /** The filled brief. */
  readonly brief: FilledBrief;
  /** What goes into the frame. */
  readonly contents: FrameContents;
  /** How a rectangle that a square frame contains lies on its lip; `null` where there is none. */
  readonly rest: ContainedRest | null;
  /** How the panel is cut; `null` where none goes in. */
  readonly panel: PanelPlan | null;
  /** What the frame takes and weighs. */
  readonly materials: FrameMaterials;
  /** What the seasons do to the molding; `null` where its wood is not known. */
  readonly movement: FrameMovement | null;
  /** How the frame hangs; `null` where it does not. */
  readonly hanging: FrameHanging | null;
}

/** A hazard, and where in the work it bears. */
export interface RaisedHazard {
  /** The hazard. */
  readonly hazard: Hazard;
  /** The steps at the saw on which it bears, by their numbers: none where it bears on all sawing alike. `null` where it is not about sawing. */
  readonly steps: readonly number[] | null;
}

/** A rule: the hazards that it raises. Most raise one or none. */
export type HazardRule<Facts = PlanFacts> = (facts: Facts) => readonly RaisedHazard[];

/** The source of a rule that the trade holds but that was not found in print. */
export const COMMON_PRACTICE: string = "common practice";
/** The source of a rule that follows from the plan's own geometry and forces. */
export const COMPUTED: string = "computed";

/** The rest of a hazard. The compiler asks for the facts and names of a code that has them, and refuses them of any other. */
type HazardParts<C extends HazardCode> = {
  /** The numbers that raised it, by what they are; by default none. */
  readonly quantities?: { readonly [K in QuantityKind]?: Readonly<Record<string, number>> };
  /** Where the rule is printed; by default common practice. */
  readonly source?: string;
  /** The steps at the saw on which it bears, see {@link RaisedHazard}; by default it is not about sawing. */
  readonly steps?: readonly number[];
} & (C extends keyof HazardFacts ? { readonly facts: HazardFacts[C] } : { readonly facts?: never }) &
  (C extends keyof HazardNames ? { readonly names: HazardNames[C] } : { readonly names?: never });

/** The one hazard of a rule. */
export function raise<C extends HazardCode>(code: C, signal: HazardSignal, parts: HazardParts<C>): RaisedHazard[] {
  const { quantities = {}, facts, names, source = COMMON_PRACTICE, steps = null } = parts;
  const numbers: Record<string, number> = {};
  const kinds: Record<string, QuantityKind> = {};
  for (const [kind, values] of Object.entries(quantities)) {
    for (const [name, value] of Object.entries(values)) {
      numbers[name] = value;
      kinds[name] = kind as QuantityKind;
    }
  }
  const hazard: Hazard = {
    code,
    signal,
    numbers,
    kinds,
    ...(names === undefined ? {} : { names }),
    ...(facts === undefined ? {} : { facts }),
    source,
  };
  return [{ hazard, steps }];
}
