import type { HazardCode } from "../../core/hazard.js";
import type { CutPlacement, CutSize, StopContact } from "../../saw/index.js";
import type { MeasureAlong } from "./measure-along.js";
import type { OperationKind } from "./operation-kind.js";
import type { GraduationSetting } from "./graduations.js";
import type { StopRule } from "./stop-rule.js";

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
