import type { HazardCode } from "../../core/hazard.js";
import type { CutPlacement, CutSize, Hand, StopContact } from "../../saw/index.js";
import type { MeasureAlong } from "./measure-along.js";
import type { GraduationSetting } from "./graduations.js";

/** What an operation does to the stick. */
export type OperationKind =
  /** Crosscuts a rough piece off the stick. */
  | "crosscut"
  /** Cuts the first end of a piece. */
  | "first-end"
  /** Cuts the second end and so gives the piece its length. */
  | "second-end";

/** Where a stop may stand at a cut, and what touches it. */
export interface StopRule {
  /** The hand of the blade on which a stop may stand: that of the part that is kept. */
  readonly side: Hand;
  /** The hand on which none may ever stand: that of the part that comes free, which would be caught between stop and blade. */
  readonly never: Hand;
  /** What touches it: the long point of the end that is finished, or a square end; `null` where the cut is made without a stop. */
  readonly touches: "long-point" | "square-end" | null;
  /** Which end of the piece that is; `null` without a stop. */
  readonly end: "start" | "end" | null;
  /** Least level distance from the fence of what touches; `null` without a stop or a known section. */
  readonly fromFence: number | null;
  /** Whether this cut frees the part that is kept from the stick, so that it then lies between blade and stop. */
  readonly comesFree: boolean;
  /** Whether the stop sits on a gauge's own fence and travels with the piece; on the fence of a miter saw it stays where it is. */
  readonly travels: boolean;
  /** Whether the part that is kept would be caught between the blade and a stop that stays, so that the stop may only set the length and is moved away before the cut. */
  readonly moveAway: boolean;
}

/** One instruction for a person at the saw. */
export interface Operation {
  /** Its place in the order of work, from 1. */
  readonly step: number;
  /** What it does. */
  readonly kind: OperationKind;
  /** How many times it is done. */
  readonly times: number;
  /** Which way the stick lies, which edge is at the fence, how the saw is set and which side is kept. */
  readonly placement: CutPlacement;
  /**
   * The graduations to set where the scales cannot be set finer, in degrees as they read: together those of `Graduations` that cost least at the last joint,
   * which need not be the nearest ones.
   */
  readonly graduations: Pick<GraduationSetting, "miter" | "bevel">;
  /** How the stick comes from where the operation before left it; `null` for a fresh stick. */
  readonly move: "flip-end-for-end" | "slide-past-the-blade" | null;
  /** Where the stop touches the other, finished end; `null` without a stop or without a known section. */
  readonly stop: StopContact | null;
  /** Where a stop may stand and where never, and which end of the piece touches it. */
  readonly stopRule: StopRule;
  /** How high the work stands, how deep the blade goes and how far across the table; `null` where no section is known. */
  readonly size: CutSize | null;
  /** How high the blade of a table saw is set above the table, see `LayResult`; `null` on a saw whose blade comes down, and where no section is known. */
  readonly bladeHeight: number | null;
  /** The length to set, and along which arris; `null` where the cut only trims an end. */
  readonly measure: MeasureAlong | null;
  /** Codes of the hazards that bear on this operation. */
  readonly hazards: readonly HazardCode[];
}
