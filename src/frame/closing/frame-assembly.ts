import { glueUp, type GaugeTolerance, type GlueUp } from "../../closure/index.js";
import { toleranceKernel } from "../../closure/internal.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { jointWidth } from "../joint-width.js";
import { lastJoint, type LastJoint } from "./last-joint.js";
import { flatTwin } from "../sawing/lying-plane.js";
import { sawErrors, type SawErrors } from "./saw-errors.js";

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

/**
 * Plans how a frame is put together.
 *
 * @param geometry - the frame
 * @param sawing - how its pieces are cut
 * @param acceptedGap - the accepted gap
 * @returns order of gluing, last joint, tolerances, and what errors of the saw do
 */
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
      ? toleranceKernel(sides, width, acceptedGap, lay === null ? slope : flatTwin(lay.rotation))
      : null;
  return {
    jointWidth: width,
    glueUp: glueUp({ sides, slope }),
    lastJoint: lastJoint(sides, width, geometry.pieces[0].longest.length, tolerance?.angle ?? null),
    tolerance: lay === null ? null : tolerance,
    sawErrors: lay === null ? null : sawErrors(geometry, width, lay),
  };
}
