import type { Caution } from "../../core/caution.js";
import { cosDeg, sinDeg, tanDeg } from "../../core/degrees.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { CuttingPlan } from "../cutting-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import type { LayOption } from "../lay-option.js";
import { COMMON_PRACTICE, ruleLength } from "./common-practice.js";

/** A caution and the steps of the plan on which it bears. */
export interface StepCaution {
  /** The caution. */
  readonly caution: Caution;
  /** The steps, by their numbers; empty when it bears on the whole plan. */
  readonly steps: readonly number[];
}

/** What the rules look at. */
interface Situation {
  readonly geometry: FrameGeometry;
  readonly plan: CuttingPlan;
  readonly option: LayOption;
  readonly unit: LengthUnit;
  readonly cutSteps: readonly number[];
  readonly lastStep: number;
}

type Rule = (situation: Situation) => StepCaution | null;

/** Pieces shorter than this are not held by hand, in millimeters; common practice, no printed source. */
const HAND_HELD: number = 300;
/** Pieces shorter than this are not cut even with a hold-down, in millimeters; common practice, no printed source. */
const HELD_DOWN: number = 150;
/** A wedge with a base shorter than this is thrown by the blade, in millimeters; common practice, no printed source. */
const THROWN: number = 50;
/** An arris sharper than this creeps under fence and stop, in degrees; common practice, no printed source. */
const FEATHER: number = 60;
/** A gap at the last joint that is seen, in millimeters; common practice, no printed source. */
const SEEN_GAP: number = 0.25;
/** Below this plan miter the joint is nearly end grain to end grain, in degrees; common practice, no printed source. */
const END_GRAIN: number = 22.5;

function raise(
  code: string,
  severity: Caution["severity"],
  steps: readonly number[],
  sentence: string,
  numbers: Caution["numbers"] = {},
): StepCaution {
  return { caution: { code, severity, sentence, numbers, source: COMMON_PRACTICE }, steps };
}

const shortPiece: Rule = ({ geometry, unit, cutSteps }) => {
  const { length } = geometry.sticks[0]!.longest;
  const [byHand, heldDown] = [ruleLength(HAND_HELD, unit), ruleLength(HELD_DOWN, unit)];
  if (length >= byHand) return null;
  if (length < heldDown) {
    const sentence =
      "The pieces are too short to be cut safely even with a hold-down: cut them by hand, or choose a larger frame or another joint.";
    return raise("short-piece", "danger", cutSteps, sentence, { length, limit: heldDown });
  }
  const sentence =
    "The pieces are too short to be held by hand at the saw: use a hold-down that keeps both hands away from the blade.";
  return raise("short-piece", "danger", cutSteps, sentence, { length, limit: byHand });
};

const trappedPiece: Rule = ({ plan, lastStep }) => {
  if (plan.rough.method !== "none") return null;
  const sentence =
    "The last cut frees a piece that lies between blade and stop. Hold the piece itself against the fence until the blade has stopped, or use a stop that is moved away before the cut.";
  return raise("trapped-piece", "danger", [lastStep], sentence, { length: plan.rough.length });
};

const trappedUnderBevel: Rule = ({ option, cutSteps }) => {
  const { underBlade, bevel } = option.first;
  if (underBlade === "none") return null;
  const numbers = { bevel: bevel.degrees };
  if (underBlade === "offcut") {
    const sentence =
      "The offcut lies under the leaning blade and cannot fall away: never put a stop or a fence on its side, and let the blade stop before you reach for it.";
    return raise("trapped-under-bevel", "danger", cutSteps, sentence, numbers);
  }
  const sentence =
    "The piece that is kept lies under the leaning blade: clamp it to the fence, since it is cut wrong and thrown if it creeps.";
  return raise("trapped-under-bevel", "care", cutSteps, sentence, numbers);
};

const thrownOffcut: Rule = ({ geometry, unit, cutSteps }) => {
  const { longest, shortest } = geometry.sticks[0]!;
  const base = 2 * (longest.out - shortest.out) * tanDeg(geometry.corners[0]!.planMiter);
  const limit = ruleLength(THROWN, unit);
  if (base >= limit) return null;
  const sentence =
    "The wedge that falls off between two pieces is small and can be thrown by the blade: keep its side of the blade clear, stand aside, and let the blade stop before you remove it.";
  return raise("thrown-offcut", "care", cutSteps, sentence, { base, limit });
};

const tips: Rule = ({ option, cutSteps }) => {
  const { cradle } = option;
  if (cradle === null || cradle.steady) return null;
  const sentence =
    "The stick's center of gravity is not above its cradle: widen the cradle's base or clamp stick and cradle to the fence.";
  return raise("tip", "danger", cutSteps, sentence, { overhang: cradle.widenBy });
};

const fasteners: Rule = ({ option, cutSteps }) => {
  if (option.cradle === null) return null;
  const sentence = "The blade cuts into the cradle: keep screws, nails and clamps out of its path.";
  return raise("fasteners", "danger", cutSteps, sentence, { rise: option.cradle.rise });
};

const feather: Rule = ({ plan, lastStep }) => {
  const pointAngle = plan.operations.at(-1)?.measure?.pointAngle ?? null;
  if (pointAngle === null || pointAngle >= FEATHER) return null;
  const sentence =
    "The point that meets the stop is sharp and creeps under fence and stop: give the stop a square face that reaches the table and push gently.";
  return raise("feather", "care", [lastStep], sentence, { angle: pointAngle, limit: FEATHER });
};

const flipError: Rule = ({ plan }) => {
  const flipped = plan.operations.find((operation) => operation.move === "flip end for end");
  if (flipped === undefined) return null;
  const sentence =
    "Between the two ends the stick is flipped and its other edge comes to the fence: check which edge is at the fence before every cut.";
  return raise("flip-error", "note", [flipped.step], sentence);
};

const endGrain: Rule = ({ geometry }) => {
  const { planMiter } = geometry.corners[0]!;
  if (planMiter >= END_GRAIN) return null;
  const sentence =
    "The joints are nearly end grain to end grain, which glue alone does not hold: reinforce them with keys, splines or dowels.";
  return raise("end-grain", "care", [], sentence, { planMiter, limit: END_GRAIN });
};

/**
 * To first order the last joint of a ring of n sticks cut in a lay rolled by r opens by 2n (cos r dm + cos m sin r db); its V is the level width over
 * cos h times that.
 */
const reach: Rule = ({ geometry, option, unit, cutSteps }) => {
  const { miter, bevel } = option.first;
  const perEnd =
    Math.abs(cosDeg(option.rotation)) * miter.miss +
    cosDeg(miter.degrees) * Math.abs(sinDeg(option.rotation)) * bevel.miss;
  const angle = 2 * geometry.sides * perEnd;
  const gap = ((geometry.levelWidth / cosDeg(geometry.corners[0]!.planMiter)) * angle * Math.PI) / 180;
  const limit = ruleLength(SEEN_GAP, unit);
  if (!(gap > limit)) return null;
  const sentence =
    "Setting the scales to their nearest marks can open the last joint visibly: set finer than the marks, and prove the setting on scrap by closing a ring of test pieces.";
  return raise("reach", "care", cutSteps, sentence, { gap, limit, miterMiss: miter.miss, bevelMiss: bevel.miss });
};

const dust: Rule = () =>
  raise(
    "dust",
    "note",
    [],
    "Wear eye and ear protection, and keep wood dust out of your lungs with extraction and a mask.",
  );

const RULES: readonly Rule[] = [
  shortPiece,
  trappedPiece,
  trappedUnderBevel,
  thrownOffcut,
  tips,
  fasteners,
  feather,
  flipError,
  endGrain,
  reach,
  dust,
];

function beyondSaw(plan: CuttingPlan): StepCaution {
  const nearest = plan.lays[0]!;
  const reasons = nearest.obstacles.map((obstacle) => obstacle.sentence).join(" ");
  return raise("capacity", "danger", [], `No lay of the stick suits this saw. ${reasons}`, {
    miter: nearest.first.miter.degrees,
    bevel: nearest.first.bevel.degrees,
  });
}

/**
 * The cautions that come with cutting a frame's sticks.
 *
 * @param geometry - the frame
 * @param plan - how it is cut, so far without cautions
 * @param unit - unit of the lengths
 * @returns the cautions, each with the steps on which it bears
 */
export function cuttingCautions(geometry: FrameGeometry, plan: CuttingPlan, unit: LengthUnit): StepCaution[] {
  const option = plan.lay;
  if (option === null) return [beyondSaw(plan)];
  const situation: Situation = {
    geometry,
    plan,
    option,
    unit,
    cutSteps: plan.operations.filter(({ kind }) => kind !== "crosscut").map(({ step }) => step),
    lastStep: plan.operations.length,
  };
  return RULES.flatMap((rule) => rule(situation) ?? []);
}
