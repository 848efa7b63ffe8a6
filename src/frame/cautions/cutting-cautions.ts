import { tanDeg } from "../../core/degrees.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { CuttingPlan } from "../cutting-plan-types.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { HAND_HELD, HELD_DOWN, ruleLength } from "./common-practice.js";
import { raise, type CuttingRule, type Situation, type StepCaution } from "./cutting-rule.js";
import { reach } from "./reach.js";

/** An offcut with a longer side shorter than this is thrown by the blade, in millimeters; common practice, no printed source. */
const THROWN: number = 50;
/** An arris sharper than this creeps under fence and stop, in degrees; common practice, no printed source. */
const FEATHER: number = 60;
/** Below this plan miter the joint is nearly end grain to end grain, in degrees; common practice, no printed source. */
const END_GRAIN: number = 22.5;

const shortPiece: CuttingRule = ({ geometry, unit, cutSteps }) => {
  const { length } = geometry.sticks[0]!.longest;
  const [byHand, heldDown] = [ruleLength(HAND_HELD, unit), ruleLength(HELD_DOWN, unit)];
  if (length >= byHand) return null;
  if (length < heldDown) {
    const sentence =
      "The pieces are too short to be cut safely even with a hold-down: cut them by hand, or choose a larger frame or another joint.";
    return raise("short-piece", "danger", cutSteps, sentence, { length: { length, limit: heldDown } });
  }
  const sentence =
    "The pieces are too short to be held by hand at the saw: use a hold-down that keeps both hands away from the blade.";
  return raise("short-piece", "danger", cutSteps, sentence, { length: { length, limit: byHand } });
};

const trappedPiece: CuttingRule = ({ plan, lastStep }) => {
  if (plan.rough.method !== "none") return null;
  const sentence =
    "The last cut frees a piece that lies between blade and stop. Hold the piece itself against the fence until the blade has stopped, or use a stop that is moved away before the cut.";
  return raise("trapped-piece", "danger", [lastStep], sentence, { length: { length: plan.rough.length } });
};

const trappedUnderBevel: CuttingRule = ({ option, cutSteps }) => {
  const { underBlade, bevel } = option.first;
  if (underBlade === "none") return null;
  const numbers = { angle: { bevel: bevel.degrees } };
  if (underBlade === "offcut") {
    const sentence =
      "The offcut lies under the leaning blade and cannot fall away: never put a stop or a fence on its side, and let the blade stop before you reach for it.";
    return raise("trapped-under-bevel", "danger", cutSteps, sentence, numbers);
  }
  const sentence =
    "The piece that is kept lies under the leaning blade: clamp it to the fence, since it is cut wrong and thrown if it creeps.";
  return raise("trapped-under-bevel", "care", cutSteps, sentence, numbers);
};

/**
 * What falls off is a wedge between two pieces that are cut straight from the stick, and at the end of a rough its spare length with one wedge's half, or with
 * both where the rough was parted at the finished cut of its neighbor.
 */
const thrownOffcut: CuttingRule = ({ geometry, plan, unit, cutSteps }) => {
  const { longest, shortest } = geometry.sticks[0]!;
  const half = (longest.out - shortest.out) * tanDeg(geometry.corners[0]!.planMiter);
  const { method, length } = plan.rough;
  const spare = length - longest.length;
  const base = method === "square" ? spare / 2 + half : spare + 2 * half;
  const limit = ruleLength(THROWN, unit);
  if (base >= limit) return null;
  const what = method === "none" ? "wedge that falls off between two pieces" : "offcut at the end of a rough";
  const sentence = `The ${what} is small and can be thrown by the blade: keep its side of the blade clear, stand aside, and let the blade stop before you remove it.`;
  return raise("thrown-offcut", "care", cutSteps, sentence, { length: { base, limit } });
};

const tips: CuttingRule = ({ option, cutSteps }) => {
  const { cradle } = option;
  if (cradle === null || cradle.steady) return null;
  const sentence =
    "The stick's center of gravity is not above its cradle: widen the cradle's base or clamp stick and cradle to the fence.";
  return raise("tip", "danger", cutSteps, sentence, { length: { overhang: cradle.widenBy } });
};

const fasteners: CuttingRule = ({ option, cutSteps }) => {
  if (option.cradle === null) return null;
  const sentence = "The blade cuts into the cradle: keep screws, nails and clamps out of its path.";
  return raise("fasteners", "danger", cutSteps, sentence, { length: { rise: option.cradle.rise } });
};

const feather: CuttingRule = ({ plan, lastStep }) => {
  const pointAngle = plan.operations.at(-1)?.measure?.pointAngle ?? null;
  if (pointAngle === null || pointAngle >= FEATHER) return null;
  const sentence =
    "The point that meets the stop is sharp and creeps under fence and stop: give the stop a square face that reaches the table and push gently.";
  return raise("feather", "care", [lastStep], sentence, { angle: { angle: pointAngle, limit: FEATHER } });
};

const flipError: CuttingRule = ({ plan }) => {
  const flipped = plan.operations.find((operation) => operation.move === "flip end for end");
  if (flipped === undefined) return null;
  const sentence =
    "Between the two ends the stick is flipped and its other edge comes to the fence: check which edge is at the fence before every cut.";
  return raise("flip-error", "note", [flipped.step], sentence);
};

const endGrain: CuttingRule = ({ geometry }) => {
  const { planMiter } = geometry.corners[0]!;
  if (planMiter >= END_GRAIN) return null;
  const sentence =
    "The joints are nearly end grain to end grain, which glue alone does not hold: reinforce them with keys, splines or dowels.";
  return raise("end-grain", "care", [], sentence, { angle: { planMiter, limit: END_GRAIN } });
};

const dust: CuttingRule = () =>
  raise(
    "dust",
    "note",
    [],
    "Wear eye and ear protection, and keep wood dust out of your lungs with extraction and a mask.",
  );

const RULES: readonly CuttingRule[] = [
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
    angle: { miter: nearest.first.miter.degrees, bevel: nearest.first.bevel.degrees },
  });
}

/**
 * The cautions that come with cutting a frame's sticks.
 *
 * @param geometry - the frame
 * @param plan - how it is cut, so far without cautions
 * @param unit - unit of the lengths
 * @param gap - the gap accepted at the last joint
 * @returns the cautions, each with the steps on which it bears
 */
export function cuttingCautions(
  geometry: FrameGeometry,
  plan: CuttingPlan,
  unit: LengthUnit,
  gap: number,
): StepCaution[] {
  const option = plan.lay;
  if (option === null) return [beyondSaw(plan)];
  const situation: Situation = {
    geometry,
    plan,
    option,
    unit,
    gap,
    cutSteps: plan.operations.filter(({ kind }) => kind !== "crosscut").map(({ step }) => step),
    lastStep: plan.operations.length,
  };
  return RULES.flatMap((rule) => rule(situation) ?? []);
}
