import { checkInside, checkObject } from "../core/check.js";
import { checkBoard, type Board } from "./board.js";
import { dihedralKernel, equalJoint, faceJoint, type Normal } from "./corner-kernel.js";
import type { EndCut, StickEnd } from "./cut-plane.js";
import { settingKernel } from "./setting-kernel.js";

/** What {@link joinCorner} works from. */
export interface JoinCornerOptions {
  /** Turn of the corner in degrees, strictly between -180 and 180; negative at a reflex corner. */
  readonly turn: number;
  /** The board that ends at the corner, going counter-clockwise. */
  readonly first: Board;
  /** The board that starts there. */
  readonly second: Board;
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

/** The cut across a normal of any length. */
function endCut([along, across, through]: Normal, slope: number, end: StickEnd): EndCut {
  const length = Math.hypot(along, across, through);
  return {
    ...settingKernel(along, across, through, 0),
    slope,
    end,
    plane: { along: along / length, across: across / length + 0, through: through / length + 0 },
  };
}

/**
 * The two end cuts of a corner between two boards.
 *
 * @param options - the turn and the two boards
 * @returns the cut of each board for lying flat on the saw, and the dihedral
 * @throws {InputError} when a value is out of range
 */
export function joinCorner(options: JoinCornerOptions): Corner {
  const given = checkObject(options);
  const half = checkInside(given["turn"], "turn", -180, 180) / 2;
  const first = checkBoard(given["first"], "first");
  const second = checkBoard(given["second"], "second");
  const [firstNormal, secondNormal] =
    first.slope === second.slope && first.thickness === second.thickness
      ? equalJoint(half, first.slope)
      : faceJoint(half, first.slope, first.thickness, second.slope, second.thickness);
  return {
    first: endCut(firstNormal, first.slope, "end"),
    second: endCut(secondNormal, second.slope, "start"),
    dihedral: dihedralKernel(half, first.slope, second.slope),
  };
}
