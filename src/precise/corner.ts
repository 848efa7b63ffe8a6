import { checkObject, checkWord } from "../errors/internal.js";
import { checkDigits, checkPrecise, LENGTH, SLOPE, TURN } from "./check.js";
import type { PreciseNumber, PreciseOptions } from "./check.js";
import { refuseImpossible } from "./corner-limits.js";
import {
  deriveCorner,
  mirrors,
  type ExactBoard,
  type ExactCorner,
  type PreciseJoint,
  type PreciseMeetingAt,
} from "./derive-corner.js";
import { evaluate } from "./evaluate.js";
import type { PreciseCutPlane, PreciseSawSetting } from "./saw-setting.js";

/** A side of a frame as far as its corners go: a flat board of even thickness, at a slope. */
export interface PreciseBoard {
  /** Slope in degrees, -90 to 90. */
  readonly slope: PreciseNumber;
  /** Thickness from back to face, 1e-100 to 1e100. */
  readonly thickness: PreciseNumber;
  /** Width on the flat board, 1e-100 to 1e100. Only corners that meet at edges need it. */
  readonly width?: PreciseNumber | undefined;
}

/** What {@link preciseCorner} works from. */
export interface PreciseCornerOptions extends PreciseOptions {
  /** Turn of the corner in degrees, strictly between -180 and 180. */
  readonly turn: PreciseNumber;
  /** The board that ends at the corner, going counter-clockwise. */
  readonly first: PreciseBoard;
  /** The board that starts there. */
  readonly second: PreciseBoard;
  /** `"miter"` (default): one plane for both. `"butt"`: `first` ends on `second`, which is cut flush with the outside of `first`. */
  readonly joint?: PreciseJoint | undefined;
  /** What comes together. Default: edges when both slopes are exactly 0, else faces. */
  readonly meet?: PreciseMeetingAt | undefined;
}

/** A cut at one end of a board: its plane, and the setting for the board lying flat. Angles in degrees. */
export interface PreciseEndCut extends PreciseSawSetting {
  /** Slope of the board in the finished frame. */
  readonly slope: string;
  /** Which end is cut. */
  readonly end: "start" | "end";
  /** Unit normal of the cut in the board's own axes, pointing out of the wood. */
  readonly plane: PreciseCutPlane<string>;
}

/** A joined corner: the cut of each board, and the angle between their faces. */
export interface PreciseCorner {
  /** The cut at the end of the first board. */
  readonly first: PreciseEndCut;
  /** The cut at the start of the second board. */
  readonly second: PreciseEndCut;
  /** Angle in front of the two faces, in degrees, 0 to 360. */
  readonly dihedral: string;
}

function checkBoard(value: unknown, path: string): ExactBoard {
  const given = checkObject(value, path);
  return {
    slope: checkPrecise(given["slope"], `${path}.slope`, SLOPE),
    thickness: checkPrecise(given["thickness"], `${path}.thickness`, LENGTH),
    width: given["width"] === undefined ? undefined : checkPrecise(given["width"], `${path}.width`, LENGTH),
  };
}

/**
 * The two end cuts of a corner between two boards, to up to 1000 digits.
 *
 * Derived from the boards in space: where their faces, backs or edges meet, as the common points of three planes, lies the
 * plane of the joint, from which both cuts are read.
 *
 * @param options - `turn` in degrees between -180 and 180, bounds excluded; `first` and `second`, each with `slope` (-90 to 90)
 * and `thickness` and `width` (1e-100 to 1e100); `joint` and `meet`; `digits` from 1 to 1000, by default 50
 * @returns the cut of each board, as it lies flat on the saw, and the dihedral; all correctly rounded to `digits` significant
 * digits, half away from zero, without trailing zeros
 * @throws {InputError} when a value is missing, malformed or out of range, or with code `"impossible"` when the boards cannot
 * meet: a flat and a sloping one, two that slope opposite ways, flat ones of two thicknesses at their faces, upright ones
 * at their edges
 * @example
 * ```ts
 * import { preciseCorner } from "miterwright/precise";
 *
 * const hopper = preciseCorner({
 *   turn: 90,
 *   first: { slope: 60, thickness: 18 },
 *   second: { slope: 45, thickness: 18 },
 *   digits: 20,
 * });
 * hopper.first.miter; //=> "40.893394649130905605"
 * hopper.dihedral; //=> "110.70481105463542967"
 * ```
 */
export function preciseCorner(options: PreciseCornerOptions): PreciseCorner {
  const given = checkObject(options);
  const digits = checkDigits(given["digits"]);
  const turn = checkPrecise(given["turn"], "turn", TURN);
  const first = checkBoard(given["first"], "first");
  const second = checkBoard(given["second"], "second");
  const flat = first.slope.isZero() && second.slope.isZero();
  const { joint: wantedJoint = "miter", meet: wantedMeet = flat ? "edges" : "faces" } = given;
  const joint = checkWord<PreciseJoint>(wantedJoint, "joint", ["miter", "butt"]);
  const meet = checkWord<PreciseMeetingAt>(wantedMeet, "meet", ["faces", "edges"]);
  const corner: ExactCorner = { turn, first, second, joint, meet };
  refuseImpossible(corner, (board, field) => checkObject(given[board])[field]);
  if (meet === "edges" && joint === "miter" && !mirrors(corner)) {
    for (const [name, board] of Object.entries({ first, second })) {
      if (board.width === undefined) checkPrecise(undefined, `${name}.width`, LENGTH);
    }
  }
  const inputs = [first, second].flatMap(({ slope, thickness, width }) => [slope, thickness, width ?? thickness]);
  const texts = evaluate(digits, [turn, ...inputs], (field) => deriveCorner(field, corner));
  const cut = (name: "first" | "second", end: "start" | "end"): PreciseEndCut => ({
    miter: texts[`${name}.miter`],
    bevel: texts[`${name}.bevel`],
    slope: texts[`${name}.slope`],
    end,
    plane: { along: texts[`${name}.along`], across: texts[`${name}.across`], through: texts[`${name}.through`] },
  });
  return { first: cut("first", "end"), second: cut("second", "start"), dihedral: texts.dihedral };
}
