import { checkInside, checkLength, checkObject, checkWord } from "../core/check.js";
import { checkBoard, type Board, type CheckedBoard } from "./board.js";
import { compoundMiterKernel } from "./compound-kernel.js";
import {
  bisectorPlanes,
  buttEdgePlanes,
  buttFacePlanes,
  dihedralKernel,
  edgePlanes,
  facePlanes,
  type Normal,
  type NormalPair,
} from "./corner-kernel.js";
import { refuseEndless, refuseImpossible, type CheckedCorner, type Joint, type MeetingAt } from "./corner-limits.js";
import type { CutPlane, EndCut, StickEnd } from "./cut-plane.js";
import { settingKernel } from "./saw-setting.js";

/** What {@link joinCorner} works from. */
export interface JoinCornerOptions {
  /** Turn of the corner in degrees, strictly between -180 and 180; 0 goes straight on, a negative one turns outward (a reflex corner). */
  readonly turn: number;
  /** The board that ends at the corner, going counter-clockwise. */
  readonly first: Board;
  /** The board that starts there. */
  readonly second: Board;
  /** `"miter"` (default): one plane for both. `"butt"`: `first` ends on `second`, which is cut flush with the outside of `first`. */
  readonly joint?: Joint | undefined;
  /**
   * `"faces"`: the faces meet in a line, and the backs. `"edges"`: the inner edges meet, and the outer ones, as seen from
   * above. Default: edges when both slopes are exactly 0, else faces.
   */
  readonly meet?: MeetingAt | undefined;
}

/** A joined corner: the cut of each board, and the angle between their faces. */
export interface Corner {
  /** The cut at the end of the first board. */
  readonly first: EndCut;
  /** The cut at the start of the second board. */
  readonly second: EndCut;
  /** Angle in front of the two faces, in degrees, 0 to 360; below 180 where slope and turn have the same sign. */
  readonly dihedral: number;
}

/** A unit normal by the names of its components. */
function planeWith([along, across, through]: Normal): CutPlane {
  return { along, across: across + 0, through: through + 0 };
}

/** The cut along a plane. */
function endCut(normal: Normal, slope: number, end: StickEnd): EndCut {
  const plane = planeWith(normal);
  const { miter, bevel } = settingKernel(plane, 0);
  return { miter, bevel, slope, end, plane };
}

/** Whether the joint is that of a regular frame: nothing in it tells the boards apart. */
function areAlike(first: CheckedBoard, second: CheckedBoard, meet: MeetingAt): boolean {
  if (first.slope !== second.slope) return false;
  return meet === "faces" ? first.thickness === second.thickness : first.width === second.width;
}

/** The normals of a corner that can be made and is not that of a regular frame. */
function cornerPlanes({ half, first, second, joint, meet }: CheckedCorner): NormalPair {
  const [s1, s2] = [first.slope, second.slope];
  if (joint === "butt") {
    return meet === "faces" ? buttFacePlanes(half, s1, s2) : buttEdgePlanes(half, s1, s2);
  }
  if (meet === "faces") return facePlanes(half, first, second);
  const width = checkLength(first.width, "first.width");
  return edgePlanes(half, { slope: s1, width }, { slope: s2, width: checkLength(second.width, "second.width") });
}

/**
 * The two end cuts of a corner between two boards, which may differ in slope, thickness and width.
 *
 * Meeting at faces, the joint plane holds the line where the two faces meet and the line where the two backs meet; its normal is t2 n1 - t1 n2, from the
 * thicknesses and the unit normals of the faces. Meeting at edges, it stands upright and holds the points where the inner edges and where the outer edges meet
 * as seen from above, which is how flat boards of two widths are joined. Sloping boards then meet in height only if they rise equally. In a butt joint `first`
 * ends on that face of `second` that looks into the ring (its inner edge, if they meet at edges), and `second` is cut flush with the outside of `first`. At a
 * reflex corner inside and outside change places. Equal boards, mitered, have the cut of {@link compoundMiter}, and at a turn of 0 boards of one slope are cut
 * square.
 *
 * @param options - the turn (degrees between -180 and 180, bounds excluded), the two boards, and how they meet
 * @returns the cut of each board, as it lies flat on the saw, and the dihedral, in degrees
 * @throws {InputError} when a value is missing or out of range, or with code `"impossible"` when the boards cannot meet:
 *   a flat and a sloping one, two that slope opposite ways, flat ones of two thicknesses at their faces, upright ones at their edges
 * @example
 * ```ts
 * import { joinCorner } from "miterwright/miter";
 *
 * // A flat frame with rails of 60 and stiles of 80.
 * const frame = joinCorner({
 *   turn: 90,
 *   first: { slope: 0, thickness: 20, width: 60 },
 *   second: { slope: 0, thickness: 20, width: 80 },
 * });
 * frame.first.miter; //=> 53.13010235415598
 * frame.second.miter; //=> 36.86989764584402
 *
 * // A hopper whose sides slope differently.
 * const hopper = joinCorner({
 *   turn: 90,
 *   first: { slope: 60, thickness: 18 },
 *   second: { slope: 45, thickness: 18 },
 * });
 * hopper.first.miter; //=> 40.893394649130904
 * hopper.second.miter; //=> 22.20765429859649
 * hopper.dihedral; //=> 110.70481105463543
 * ```
 */
export function joinCorner(options: JoinCornerOptions): Corner {
  const given = checkObject(options);
  const turn = checkInside(given["turn"], "turn", -180, 180);
  // + 0, as half of the smallest negative turn there is rounds to -0.
  const half = turn / 2 + 0;
  const first = checkBoard(given["first"], "first");
  const second = checkBoard(given["second"], "second");
  const flat = first.slope === 0 && second.slope === 0;
  const { joint: wantedJoint = "miter", meet: wantedMeet = flat ? "edges" : "faces" } = given;
  const joint = checkWord<Joint>(wantedJoint, "joint", ["miter", "butt"]);
  const meet = checkWord<MeetingAt>(wantedMeet, "meet", ["faces", "edges"]);
  const corner: CheckedCorner = { half, first, second, joint, meet };
  refuseImpossible(corner);

  if (half === 0 || (joint === "miter" && areAlike(first, second, meet))) {
    const { miter, bevel, dihedral } = compoundMiterKernel(half, first.slope);
    const [normal, facing] = bisectorPlanes(half, first.slope);
    return {
      first: { miter, bevel, slope: first.slope, end: "end", plane: planeWith(normal), planMiter: half },
      second: { miter, bevel, slope: second.slope, end: "start", plane: planeWith(facing), planMiter: half },
      dihedral,
    };
  }
  const [normal, facing] = cornerPlanes(corner);
  refuseEndless(normal[0], turn);
  refuseEndless(facing[0], turn);
  return {
    first: endCut(normal, first.slope, "end"),
    second: endCut(facing, second.slope, "start"),
    dihedral: dihedralKernel(half, first.slope, second.slope),
  };
}
