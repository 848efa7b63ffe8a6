import { checkObject, checkWord } from "../core/check.js";
import type { ObstacleCode } from "../core/obstacle-code.js";
import { cosDeg, sinDeg } from "../core/degrees.js";
import { layRotation, sawSetting, type EndCut, type Lay, type SawSetting } from "../miter/index.js";
import { checkTilt } from "../miter/internal.js";
import { parseProfile, type Profile } from "../profile/index.js";
import { parseSaw } from "./parse-saw.js";
import type { Hand, Saw } from "./saw.js";
import { lieSection } from "./lie-section.js";
import { scaleSetting, withinScale, type ScaleSetting } from "./scale-setting.js";
import { SQUARE_SIDES, sideSurfaces } from "./side-surfaces.js";
import type { ShowingSide, StickSurface } from "./stick-surface.js";
import { tearOutOf, type StickLook, type TearOut } from "./tear-out.js";

/** A reason why a cut cannot be made: a code, and numbers where a scale ends too soon. `obstacleText` of `miterwright/words` says it in a sentence. */
export interface Obstacle {
  /** Which limit is exceeded. */
  readonly code: ObstacleCode;
  /** Of a scale that ends too soon: how far the saw goes and how far the cut needs it to, in degrees. */
  readonly degrees?: {
    /** How far the saw goes, in degrees. */
    readonly reach: number;
    /** How far the cut needs it to go, in degrees. */
    readonly needs: number;
  };
}

/** Options of {@link placeCut}. */
export interface PlaceCutOptions {
  /** How the stick lies on the saw. */
  readonly lay: Lay;
  /** The saw. */
  readonly saw: Saw;
  /** On which side of the blade the part lies that is kept. */
  readonly kept: Hand;
  /**
   * The molding's section. With it, a stick that lies on a surface of its own needs no cradle at any tilt, and the angles where the teeth leave are those of
   * its own surfaces. Without it, edges are taken to be square.
   */
  readonly profile?: Profile | undefined;
  /** The side that shows in the finished frame; default the face. */
  readonly shows?: ShowingSide | undefined;
}

/** How a stick lies on a saw and how the saw is set, for one cut, in the words of a person in front of the saw. */
export interface CutPlacement {
  /** Which end of the piece is cut. */
  readonly end: "start" | "end";
  /** The lay as a rotation about the stick's length away from its finished place, in degrees. */
  readonly rotation: number;
  /** The surface that lies on the table, or in the cradle. */
  readonly down: StickSurface;
  /** Whether a wedge must hold the stick at an angle, since it lies on no surface of its own. */
  readonly cradled: boolean;
  /** The surface against the fence. */
  readonly atFence: StickSurface;
  /** To which hand the stick's counter-clockwise direction points. */
  readonly along: Hand;
  /** On which side of the blade the part lies that is kept. */
  readonly kept: Hand;
  /** The miter: `toward` says to which hand the line of cut runs as it goes away from you. */
  readonly miter: ScaleSetting;
  /** The bevel: `toward` says to which hand the blade's top leans. */
  readonly bevel: ScaleSetting;
  /** Which part lies under the leaning blade; `none` when the blade stands upright. */
  readonly underBlade: "kept" | "offcut" | "none";
  /** Where the teeth leave the wood: the surface that lies down and the one at the fence. */
  readonly tearOut: readonly TearOut[];
  /** Why the saw cannot make this cut; empty when it can. */
  readonly obstacles: readonly Obstacle[];
}

/** The surface that faces most nearly in a direction of the section; on a cradle that is always back or face, and an edge at the fence. */
function surfaceToward(x: number, y: number): StickSurface {
  if (x === 0) return y > 0 ? "face" : "back";
  return x > 0 ? "outer-edge" : "sight-edge";
}

function rangeObstacle(scale: "miter" | "bevel", setting: ScaleSetting, reach: number): Obstacle {
  // A setting beyond its scale is never 0, so it goes to one hand.
  const hand = setting.toward === "left" ? "left" : "right";
  return { code: `${scale}-range-${hand}`, degrees: { reach, needs: setting.degrees } };
}

/**
 * Places one cut on a saw: which way the stick points, which surface is at the fence, and how miter and bevel are set.
 *
 * The line of cut of a piece's `end` runs to the left as it goes away from you when the miter is positive, that of its `start` to the right, whichever way the
 * stick points. With a positive bevel the blade leans over the part that is kept. The part farther from the frame's center lies nearer to you when the stick's
 * counter-clockwise direction points right.
 *
 * @param cut - the cut, from `joinCorner` or a frame's geometry
 * @param options - lay, saw and the side that is kept
 * @returns the placement; `obstacles` says what the saw cannot do
 * @throws {InputError} when the cut, the lay or the saw is not sound
 * @example
 * ```ts
 * import { joinCorner } from "miterwright/miter";
 * import { placeCut, tableSaw } from "miterwright/saw";
 *
 * const board = { slope: 30, thickness: 20 };
 * const { first } = joinCorner({ turn: 60, first: board, second: board });
 * const placed = placeCut(first, { lay: "flat", saw: tableSaw(), kept: "left" });
 * placed.atFence; //=> "outer-edge"
 * placed.miter.toward; //=> "left"
 * placed.bevel.toward; //=> "left"
 * placed.bevel.nearest; //=> 14.5
 * ```
 */
export function placeCut(cut: EndCut, options: PlaceCutOptions): CutPlacement {
  checkObject(options);
  const { lay } = options;
  const saw = parseSaw(options.saw);
  const kept = checkWord(options.kept, "kept", ["left", "right"]);
  const shows = checkWord(options.shows ?? "face", "shows", ["face", "back"]);
  checkWord(checkObject(cut, "cut")["end"], "cut.end", ["start", "end"]);
  const setting = sawSetting(cut, lay);
  const [rotation, tilt] = [layRotation(lay, cut.slope), checkTilt(lay, cut.slope)];
  const profile = options.profile === undefined ? undefined : parseProfile(options.profile, "profile");
  const look: StickLook =
    profile === undefined
      ? { isLying: false, sides: SQUARE_SIDES, shows }
      : { isLying: lieSection(profile, { slope: cut.slope, lay }).steady, sides: sideSurfaces(profile), shows };
  return placementKernel({ cut, setting }, { rotation, tilt, look }, saw, kept);
}

/** A stick on the saw. */
export interface RolledStick {
  /** Its lay as a rotation, in degrees. */
  readonly rotation: number;
  /** Angle of its back to the table in degrees, as it lies. */
  readonly tilt: number;
  /** What is known of its surfaces. */
  readonly look: StickLook;
}

/** A cut, and its setting in the lay. */
export interface SetCut {
  /** The cut. */
  readonly cut: EndCut;
  /** Its miter and bevel. */
  readonly setting: SawSetting;
}

/** The placement of a cut whose setting is known, unchecked. */
export function placementKernel({ cut, setting }: SetCut, stick: RolledStick, saw: Saw, kept: Hand): CutPlacement {
  const { miter, bevel } = setting;
  const { rotation, tilt, look } = stick;
  const other: Hand = kept === "left" ? "right" : "left";
  const along = cut.end === "end" ? other : kept;
  const miterSetting = scaleSetting(
    miter,
    cut.end === "end" ? "left" : "right",
    saw.miter.reads === "from-fence",
    saw.miter.step,
  );
  const bevelSetting = scaleSetting(bevel, kept, saw.bevel.reads === "from-table", saw.bevel.step);

  const obstacles: Obstacle[] = [];
  if (!withinScale(miterSetting, saw.miter)) {
    obstacles.push(rangeObstacle("miter", miterSetting, saw.miter[miterSetting.toward as Hand]));
  }
  if (!withinScale(bevelSetting, saw.bevel)) {
    obstacles.push(rangeObstacle("bevel", bevelSetting, saw.bevel[bevelSetting.toward as Hand]));
  }

  // In section axes, the direction away from the frame's center as the stick lies is (cos tilt, -sin tilt), and down is
  // (-sin tilt, -cos tilt).
  const [cosine, sine] = [cosDeg(tilt), sinDeg(tilt)];
  const tilted = cosine !== 0 && sine !== 0;
  const cradled = tilted && !look.isLying;
  const outerIsNear = along === "right";
  const fenceSign = outerIsNear === (saw.fence === "near") ? 1 : -1;
  const down = tilted ? surfaceToward(0, -cosine) : surfaceToward(-sine, -cosine);
  const atFence = surfaceToward(fenceSign * cosine, -fenceSign * sine);
  return {
    end: cut.end,
    rotation,
    down,
    cradled,
    atFence,
    along,
    kept,
    miter: miterSetting,
    bevel: bevelSetting,
    underBlade: bevelSetting.degrees === 0 ? "none" : bevel > 0 ? "kept" : "offcut",
    tearOut: tearOutOf({ plane: cut.plane, down, atFence, cradled, look }),
    obstacles,
  };
}
