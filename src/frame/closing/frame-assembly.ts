import { type GaugeTolerance, type GlueUp, glueUp } from "../../closure/index.js";
import { type LastJoint, lastJoint, toleranceKernel } from "../../closure/internal.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";
import { type FrameGeometry, jointWidth } from "../frame-geometry.js";
import { flatTwin } from "../sawing/lying-plane.js";
import { type SawErrors, sawErrors } from "./saw-errors.js";

/** How a frame is put together, and what its last joint asks of the saw. */
export interface FrameAssembly {
  /** Joint width: level, from the innermost point of the molding to the outermost, its lip included: the gap of the last joint is seen across it. */
  readonly jointWidth: number;
  /** In which order the joints are glued, on which bevel blocks, and with which cauls. */
  readonly glueUp: GlueUp;
  /** How the last joints are made, and what that takes at the accepted gap. */
  readonly lastJoint: LastJoint;
  /**
   * How far off each cut may be, as the scales of the saw are set in the chosen lay, if the last joint is to keep within the accepted gap; `null` when no lay works, or when the gap
   * is as wide as the joint.
   */
  readonly tolerance: GaugeTolerance | null;
  /** What the faults of a saw do to this frame, cut in the chosen lay; `null` when no lay works. */
  readonly sawErrors: SawErrors | null;
}

/** Plans how a frame is put together. */
export function frameAssembly(
  geometry: FrameGeometry,
  sawing: Pick<SawPlan, "lay">,
  acceptedGap: number,
): FrameAssembly {
  const { sides, slope } = geometry;
  const { lay } = sawing;
  const width = jointWidth(geometry);
  const tolerance =
    acceptedGap < width
      ? toleranceKernel({ sides, width, acceptedGap, slope: lay === null ? slope : flatTwin(lay.rotation) })
      : null;
  return {
    jointWidth: width,
    glueUp: glueUp({ sides, slope }),
    lastJoint: lastJoint(sides, width, geometry.pieces[0].longest.length, tolerance?.angle ?? null),
    tolerance: lay === null ? null : tolerance,
    sawErrors: lay === null ? null : sawErrors(geometry, width, lay),
  };
}
