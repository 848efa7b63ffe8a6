import type { Hazard } from "../../core/hazard.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { Lay } from "../../miter/index.js";
import type { Cradle, Saw, StopContact } from "../../saw/index.js";
import type { BriefBase } from "../brief/brief.js";
import type { LayResult } from "./lay-result.js";
import type { Operation } from "./operation.js";
import type { RoughPiece } from "./rough-length.js";
import type { Graduations } from "./graduations.js";
import type { TestCuts } from "./test-cuts.js";

/** Options of `sawPlan`. */
export interface SawPlanOptions extends Pick<BriefBase<string>, "saw" | "kerf" | "rough" | "shows"> {
  /** The lay to use; a rotation that is that of a named lay stands for it. Default: of those that work the one that gives up least, see `sawPlan`. */
  readonly lay?: Lay | undefined;
  /** Unit of the geometry's lengths, for hazards and the defaults of lengths; default `"mm"`. */
  readonly unit?: LengthUnit | undefined;
  /** The accepted gap at the last joint, for hazards; default 0.25 mm or 0.01 in, which is just seen (common practice, no printed source). */
  readonly acceptedGap?: number | undefined;
}

/** How a frame's pieces are cut on one saw. */
export interface SawPlan {
  /** The saw that the plan is for. */
  readonly saw: Saw;
  /** Every lay: what the scales must show, and whether it can be done or why not. */
  readonly lays: readonly LayResult[];
  /** The lay that the operations use; `null` when no lay works. */
  readonly lay: LayResult | null;
  /** The graduations of the scales that cost least at the last joint in that lay; `null` when no lay works. */
  readonly graduations: Graduations | null;
  /** How the setting is proved on scrap before the molding is cut; `null` when no lay works, or the accepted gap is as wide as the joint. */
  readonly testCuts: TestCuts | null;
  /** The instructions, in the order of work; empty when no lay works. */
  readonly operations: readonly Operation[];
  /** Whether each step is done for all pieces before the next, or the steps follow each other for every single piece, as when pieces are cut on the stick. */
  readonly order: "step-by-step" | "piece-by-piece";
  /** Where the stop touches the finished end while the second is cut; `null` where no section is known. */
  readonly stop: StopContact | null;
  /** The wedge that holds the stick, where the chosen lay needs one. */
  readonly cradle: Cradle | null;
  /** What one piece takes of its stick. */
  readonly rough: RoughPiece;
  /** Hazards that come with sawing. */
  readonly hazards: readonly Hazard[];
}
