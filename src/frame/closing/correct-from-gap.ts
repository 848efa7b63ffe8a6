import { checkDegrees, checkLengthOrZero, checkObject, checkWord, refuse, reject } from "../../core/check.js";
import { atan2Deg, cosDeg, sinDeg } from "../../core/degrees.js";
import type { SettingCorrection } from "../../closure/index.js";
import { checkHold, correctionKernel, gapPerDegree, type Held, turnsAlone } from "../../closure/internal.js";
import { type EndCut, type Lay, layRotation, sawSetting, type SawSetting } from "../../miter/index.js";
import { checkTilt } from "../../miter/internal.js";
import { type CutPlacement, type Hand, placeCut, type Saw } from "../../saw/index.js";
import { readStored } from "../../core/stored.js";
import { checkGeometry } from "../check-geometry.js";
import type { GraduationSetting } from "../sawing/graduations.js";
import { sawPlan } from "../stored/sawing.js";
import { type FrameGeometry, jointWidth } from "../frame-geometry.js";
import { lyingFlat, planeOf } from "../sawing/lying-plane.js";
import type { FramePlan } from "../plan-frame.js";

/** What was seen when the pieces were put together without glue. */
export interface SeenGap {
  /**
   * The gap of the last joint, with one end touching, in the plan's unit; 0 or more and less than the joint is wide. It is this wide where the other joints
   * stay tight and only slide; where they open too, by the least rotation, it is a third as wide. For an even number of sides half a ring on a straightedge
   * shows it whatever the joints do: the gaps under its two ends, twice their sum.
   */
  readonly seenGap: number;
  /** Which end of it is open; only a gap of 0 needs none. */
  readonly open?: "inside" | "outside" | undefined;
  /**
   * Slope of the sides as they stand with their joints tight, in degrees, -180 to 180 (past upright, a side leans over); default the slope at which pieces close that are cut as the scales
   * showed.
   */
  readonly slope?: number | undefined;
  /** What the correction holds: a slope in degrees, -90 to 90 (default the planned one), or `"bevel"` or `"miter"` to leave that angle as it is set in the plan's lay. */
  readonly hold?: number | "bevel" | "miter" | undefined;
  /** What the scales showed while these pieces were cut, in degrees, 0 to 90; default the best graduations, which the plan's operations name. */
  readonly shown?: SawSetting | undefined;
}

/** How a saw is set anew after a dry fit. */
export interface FrameCorrection {
  /** The open angle that the gap shows, in degrees; positive where it opens outside. */
  readonly angle: number;
  /** By how many degrees every joint turns too little; negative when too much. */
  readonly perJoint: number;
  /** The setting that made such pieces, in the plan's lay with the signs of the conventions, whatever the scales showed. */
  readonly cut: SawSetting;
  /** What to add to miter and bevel in that lay, in degrees. */
  readonly correction: SawSetting;
  /** Whether miter and bevel then lean more or less than they were cut. */
  readonly changes: SettingCorrection["changes"];
  /** What the scales showed before, in degrees, 0 to 90. */
  readonly shown: SawSetting;
  /** Whether gauge and blade go to the other hand. */
  readonly otherHand: {
    /** The gauge. */
    readonly miter: boolean;
    /** The blade. */
    readonly bevel: boolean;
  };
  /** The stick's `end` on the saw set anew: `reading` is what the scales then show. `obstacles` says what the saw cannot do. */
  readonly first: CutPlacement;
  /** The stick's `start`. */
  readonly second: CutPlacement;
  /** The slope at which the frame closes once it is cut so, in degrees. */
  readonly slope: number;
  /** By how many degrees that is more than planned. */
  readonly slopeOff: number;
}

/** What a correction reads of a plan. */
interface PlannedCut {
  readonly geometry: FrameGeometry;
  readonly saw: Saw;
  readonly lay: Lay;
  readonly kept: readonly [Hand, Hand];
  /** What the scales show at the graduations that the plan says to set. */
  readonly graduations: Pick<GraduationSetting, "miter" | "bevel">;
}

function readPlan(plan: unknown): PlannedCut {
  const given = checkObject(plan, "plan");
  const geometry = checkGeometry(given["geometry"], "plan.geometry");
  const { saw, lay: result, graduations } = readStored(given["sawing"], "plan.sawing", sawPlan);
  if (result === null || graduations === null) {
    const message = "Expected `plan` to have a lay that its saw can cut, as no other has a setting";
    return reject("impossible", "plan.sawing.lay", null, message);
  }
  const { lay, first, second } = result;
  return { geometry, saw, lay, kept: [first.kept, second.kept], graduations: graduations.best };
}

/** The setting that was made: the readings of the scales, to the same hands as the exact setting. */
function settingShown(shown: unknown, path: string, exact: SawSetting, saw: Saw): SawSetting {
  const given = checkObject(shown, path);
  const size = (name: "miter" | "bevel", downFrom90: boolean): number => {
    const reading = checkDegrees(given[name], `${path}.${name}`, 0, 90);
    return (exact[name] < 0 ? -1 : 1) * (downFrom90 ? 90 - reading : reading) + 0;
  };
  return {
    miter: size("miter", saw.miter.reads === "from-fence"),
    bevel: size("bevel", saw.bevel.reads === "from-table"),
  };
}

/** By how many degrees the slope at which pieces of a setting close is more than that of the exact one. */
function slopeOffAt({ miter, bevel }: SawSetting, rotation: number): number {
  // With both angles at 0 the pieces are straight and close nowhere.
  if (miter === 0 && bevel === 0) return 0;
  const closes = atan2Deg(sinDeg(bevel), sinDeg(miter) * cosDeg(bevel));
  return closes - rotation + 360 * Math.round((rotation - closes) / 360);
}

/** What a scale shows at an angle. */
function readingOf(scale: Saw["miter"] | Saw["bevel"], angle: number): number {
  const downFrom90 = scale.reads === "from-fence" || scale.reads === "from-table";
  return downFrom90 ? 90 - Math.abs(angle) : Math.abs(angle);
}

function checkHeld(value: unknown, turns: number): Held {
  const hold = checkHold(value);
  if (turnsAlone(turns, hold)) {
    reject(
      "impossible",
      "hold",
      hold,
      `Expected \`hold\` to be a slope or "${hold === "miter" ? "bevel" : "miter"}", as in this lay only the ${hold} can close the frame`,
    );
  }
  return hold;
}

/**
 * The new setting of the saw from the gap seen at the dry fit, in the lay that the plan uses and on the scales of its saw.
 *
 * A stick rolled by r away from its place in the frame is cut like a stick that lies flat, of a frame of slope r. The saw holds it at a tilt that stays, so
 * pieces that close at another slope than planned were cut as if rolled by as much more. There `correctSetting` applies. The gap shows how far every joint
 * really turns; that and the slope fix what was really cut. The difference from what closes is added to what the scales showed, with their errors. Where no
 * slope is given, the readings give it: at graduations that are off, it differs from the planned one. A gap of 0 with nothing else said leaves the setting as
 * it is.
 *
 * @param plan - from `planFrame`, with a lay; also one that was read back from JSON
 * @param seen - the gap and which end of it is open, and where wanted the slope seen, what to hold, and what the scales showed
 * @returns the correction, both ends as they are placed on the saw then, and the slope at which the frame closes
 * @throws {InputError} when the plan is not one, a value is missing or out of range, or with code `"impossible"` when no lay works or what is held cannot be
 * @example
 * ```ts
 * import { correctFromGap, planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 *
 * const profile = molding({ width: 42, thickness: 18 });
 * const plan = planFrame({ sides: 8, slope: 30, lay: "propped", profile, opening: { side: 200 } });
 * const { first, shown } = correctFromGap(plan, { seenGap: 1.2, open: "outside" });
 * first.miter.reading.toFixed(2); //=> "22.59"
 * shown.miter; //=> 22.5
 * ```
 */
export function correctFromGap(plan: FramePlan, seen: SeenGap): FrameCorrection {
  const { geometry, saw, lay, kept, graduations } = readPlan(plan);
  const given = checkObject(seen, "seen");
  const { sides, slope, pieces } = geometry;
  const width = jointWidth(geometry);
  const seenGap = checkLengthOrZero(given["seenGap"], "seenGap");
  if (!(seenGap < width))
    refuse("range", "seenGap", seenGap, `less than the joint is wide, ${Number(width.toPrecision(12))}`);
  const open =
    seenGap === 0 && given["open"] === undefined ? "outside" : checkWord(given["open"], "open", ["inside", "outside"]);
  const rotation = layRotation(lay, slope);
  const exact = sawSetting(pieces[0].end, lay);
  const shown =
    given["shown"] === undefined
      ? settingShown(graduations, "plan.sawing.graduations.best", exact, saw)
      : settingShown(given["shown"], "shown", exact, saw);
  const taken = slope + slopeOffAt(shown, rotation);
  const stands = given["slope"] === undefined ? taken : checkDegrees(given["slope"], "slope", -180, 180);
  const lies = rotation + (stands - slope);
  // A ring that closes is left as it is, unless its slope was looked at or another one is wanted.
  const usual = seenGap === 0 && given["slope"] === undefined ? Math.max(-90, Math.min(stands, 90)) : slope;
  const held = checkHeld(given["hold"] ?? usual, lies);
  const hold = typeof held === "number" ? rotation + (held - slope) : held;
  const angle = ((open === "outside" ? 1 : -1) * seenGap) / gapPerDegree(sides, width) + 0;
  const { perJoint, cut, correction, changes, slope: reached } = correctionKernel(sides, angle, lies, hold);

  const setting = { miter: shown.miter + correction.miter, bevel: shown.bevel + correction.bevel };
  if (![shown, setting].every(({ miter, bevel }) => Math.abs(miter) < 90 && Math.abs(bevel) < 90)) {
    refuse("impossible", "shown", given["shown"], "readings from which the correction leads to less than 90 degrees");
  }
  const tilt = checkTilt(lay, slope);
  const cutOf = (end: "start" | "end"): EndCut => ({
    ...lyingFlat(setting, tilt),
    slope,
    end,
    plane: planeOf(setting, end, tilt),
  });
  const [first, second] = [
    placeCut(cutOf("end"), { lay, saw, kept: kept[0] }),
    placeCut(cutOf("start"), { lay, saw, kept: kept[1] }),
  ];
  const closes = slope + (reached - rotation);
  return {
    angle,
    perJoint,
    cut,
    correction,
    changes,
    shown: { miter: readingOf(saw.miter, shown.miter), bevel: readingOf(saw.bevel, shown.bevel) },
    otherHand: { miter: shown.miter * setting.miter < 0, bevel: shown.bevel * setting.bevel < 0 },
    first,
    second,
    slope: closes,
    slopeOff: closes - slope,
  };
}
