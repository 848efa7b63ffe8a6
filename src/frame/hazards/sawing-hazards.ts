import { tanDeg } from "../../core/degrees.js";
import type { Lay } from "../../miter/index.js";
import type { Obstacle } from "../../saw/index.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { RoundLength } from "../round-length.js";
import type { SawPlan } from "../saw-plan-types.js";
import { depthAt } from "../lay-result.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { usualDepth } from "../usual-lengths.js";
import { HAND_HELD, HELD_DOWN, ruleLength } from "./common-practice.js";
import { fenceOf, raise, type SawingRule, type PieceRule, type StepHazard } from "./sawing-rule.js";
import { feather } from "./feather.js";
import { reach } from "./reach.js";

/** An offcut with a longer side shorter than this is thrown by the blade; common practice, no printed source. */
const THROWN: RoundLength = { millimeters: 50, inches: 2 };
/** Below this plan miter the joint is nearly end grain to end grain, in degrees; common practice, no printed source. */
const END_GRAIN: number = 22.5;

const shortPiece: PieceRule = ({ geometry, unit, cutSteps }) => {
  const { length } = geometry.pieces[0].longest;
  const [byHand, heldDown] = [ruleLength(HAND_HELD, unit), ruleLength(HELD_DOWN, unit)];
  if (length >= byHand) return null;
  const isTiny = length < heldDown;
  const sentence = isTiny
    ? "The pieces are too short to be cut safely even with a hold-down: cut them by hand, or choose a larger frame or another joint."
    : "The pieces are too short to be held by hand at the saw: use a hold-down that keeps both hands away from the blade.";
  const limit = isTiny ? heldDown : byHand;
  return raise("short-piece", isTiny ? "danger" : "warning", cutSteps, sentence, { length: { length, limit } });
};

/** A gauge's own stop travels with the piece, which is not caught; one that stays on the fence holds what is freed against the blade. */
const trappedPiece: SawingRule = ({ plan, unit }) => {
  const steps = plan.operations.filter(({ stopRule }) => stopRule.moveAway).map(({ step }) => step);
  if (steps.length === 0) return null;
  const isShort = plan.rough.length < ruleLength(HAND_HELD, unit);
  const hold = isShort ? "Keep the piece itself down with a hold-down" : "Hold the piece itself";
  const sentence = `The cut frees the piece between the blade and a stop that stays where it is: move the stop away before the cut. ${hold} against ${fenceOf(plan.saw)} until the blade has stopped.`;
  return raise("trapped-piece", "warning", steps, sentence, { length: { length: plan.rough.length } });
};

/** With the piece on the open side of the blade only what is loose lies under it. */
const offcutUnderBevel: SawingRule = ({ lay, cutSteps }) => {
  const { underBlade, bevel } = lay.first;
  if (underBlade !== "offcut") return null;
  const sentence =
    "The offcut lies under the leaning blade and cannot fall away: never put a stop or a fence on its side, and let the blade stop before you reach for it.";
  return raise("offcut-under-bevel", "warning", cutSteps, sentence, { angle: { bevel: bevel.degrees } });
};

/** Under the blade the hand and the stop are on the side of the wood that can bind. */
const pieceUnderBevel: SawingRule = ({ plan, lay, cutSteps }) => {
  const { underBlade, bevel } = lay.first;
  if (underBlade !== "kept") return null;
  const sentence = `The piece that is kept lies under the leaning blade, which can throw it if it creeps: clamp it to ${fenceOf(plan.saw)}, and keep your hands off it.`;
  return raise("piece-under-bevel", "warning", cutSteps, sentence, { angle: { bevel: bevel.degrees } });
};

const depthNotKnown: SawingRule = ({ unit, lay, cutSteps }) => {
  if (!lay.depthInDoubt) return null;
  const sentence =
    "It is not said how deep this saw cuts, and this cut takes more of the blade than usual saws have: look it up in the saw's manual before you lay the stick so.";
  return raise("depth-not-known", "caution", cutSteps, sentence, {
    length: { depth: lay.size!.depth, usual: usualDepth(unit) },
  });
};

/**
 * Between two pieces that are cut straight from the stick, a wedge falls off. At the end of a rough, its spare length falls off with half a wedge, or with a
 * whole one where the rough was parted at the finished cut of its neighbor.
 */
const thrownOffcut: PieceRule = ({ geometry, plan, unit, cutSteps }) => {
  const { longest, shortest } = geometry.pieces[0];
  const half = (longest.out - shortest.out) * tanDeg(geometry.corners[0].planMiter);
  const { method, length } = plan.rough;
  const spare = length - longest.length;
  const base = method === "square" ? spare / 2 + half : spare + 2 * half;
  const limit = ruleLength(THROWN, unit);
  if (base >= limit) return null;
  const what = method === "none" ? "wedge that falls off between two pieces" : "offcut at the end of a blank";
  const sentence = `The ${what} is small and can be thrown by the blade: keep its side of the blade clear, stand aside, and let the blade stop before you remove it.`;
  return raise("thrown-offcut", "warning", cutSteps, sentence, { length: { base, limit } });
};

const balanceNotKnown: SawingRule = ({ plan, lay, cutSteps }) => {
  const { cradle, first } = lay;
  if (cradle !== null || !first.cradled) return null;
  const sentence = `With level measures alone it is not known whether the stick's center of gravity is above its cradle: make the cradle's base wide, and clamp stick and cradle to ${fenceOf(plan.saw)}.`;
  return raise("balance-not-known", "warning", cutSteps, sentence);
};

const tips: SawingRule = ({ plan, lay, cutSteps }) => {
  const { cradle } = lay;
  if (cradle === null || cradle.steady) return null;
  const sentence = `The stick's center of gravity is not above its cradle: widen the cradle's base or clamp stick and cradle to ${fenceOf(plan.saw)}.`;
  return raise("tip", "warning", cutSteps, sentence, { length: { overhang: cradle.widenBy } });
};

const fasteners: SawingRule = ({ lay, cutSteps }) => {
  if (!lay.first.cradled) return null;
  const sentence = "The blade cuts into the cradle: keep screws, nails and clamps out of its path.";
  const numbers = lay.cradle === null ? {} : { length: { rise: lay.cradle.rise } };
  return raise("fasteners", "warning", cutSteps, sentence, numbers);
};

const flipError: SawingRule = ({ plan }) => {
  const flipped = plan.operations.find((operation) => operation.move === "flip-end-for-end");
  if (flipped === undefined) return null;
  const sentence =
    "Between the two ends the stick is flipped and its other edge comes to the fence: check which edge is at the fence before every cut.";
  return raise("flip-error", "notice", [flipped.step], sentence);
};

const endGrain: PieceRule = ({ geometry }) => {
  const { planMiter } = geometry.corners[0];
  if (planMiter >= END_GRAIN) return null;
  const sentence =
    "The joints are nearly end grain to end grain, which glue alone does not hold: reinforce them with keys, splines or dowels.";
  return raise("end-grain", "notice", [], sentence, { angle: { planMiter, limit: END_GRAIN } });
};

const ripFence: PieceRule = ({ plan, cutSteps }) =>
  plan.saw.fence === "far"
    ? null
    : raise(
        "rip-fence",
        "warning",
        cutSteps,
        "Push the rip fence out of the way of every crosscut: a piece between it and the blade is thrown.",
      );

const dust: PieceRule = () =>
  raise(
    "dust",
    "warning",
    [],
    "Wear eye and ear protection, and keep wood dust out of your lungs with extraction and a mask.",
  );

/** The rules that hold for the pieces however they lie. */
const PIECE_RULES: readonly PieceRule[] = [shortPiece, thrownOffcut, endGrain, ripFence, dust];

const RULES: readonly SawingRule[] = [
  shortPiece,
  trappedPiece,
  ripFence,
  offcutUnderBevel,
  pieceUnderBevel,
  depthNotKnown,
  thrownOffcut,
  balanceNotKnown,
  tips,
  fasteners,
  feather,
  flipError,
  endGrain,
  reach,
  dust,
];

/** The hazard of a saw that no lay suits, or not the lay that was asked for, with the obstacles. */
function beyondSaw({ lays, saw }: SawPlan, wanted: Lay | undefined): StepHazard {
  const asked = wanted === undefined ? undefined : lays.find(({ lay }) => lay === wanted);
  const { first, obstacles, size, bevel } = asked ?? lays[0]!;
  const reasons = obstacles.map((obstacle) => obstacle.sentence).join(" ");
  const instead = lays.some(({ possible }) => possible)
    ? " It can be cut in another position: see every way to lay the stick."
    : "";
  const sentence =
    asked === undefined
      ? `No way to lay the stick suits this saw. ${reasons}`
      : `The stick can't be cut lying as was asked for. ${reasons}${instead}`;
  const isBeyond = (code: Obstacle["code"]): boolean => obstacles.some((obstacle) => obstacle.code === code);
  return raise("capacity", "warning", [], sentence, {
    length: {
      ...(size !== null && isBeyond("depth") ? { height: size.height, depth: depthAt(saw, bevel) } : {}),
      ...(size !== null && isBeyond("crosscut") ? { line: size.line, crosscut: saw.crosscut! } : {}),
    },
    angle: { miter: first.miter.degrees, bevel: first.bevel.degrees },
  });
}

/**
 * The hazards that come with sawing a frame's pieces.
 *
 * @param geometry - the frame
 * @param plan - how it is cut, so far without hazards
 * @param unit - unit of the lengths
 * @param acceptedGap - the accepted gap
 * @param wanted - the lay that is asked for, if one is
 * @returns the hazards, each with the steps on which it bears
 */
export function sawingHazards(
  geometry: FrameGeometry,
  plan: SawPlan,
  unit: LengthUnit,
  acceptedGap: number,
  wanted: Lay | undefined,
): StepHazard[] {
  const { lay } = plan;
  const cutSteps = plan.operations.filter(({ kind }) => kind !== "crosscut").map(({ step }) => step);
  const pieces = { geometry, plan, unit, acceptedGap, cutSteps, lastStep: plan.operations.length };
  if (lay === null) return [beyondSaw(plan, wanted), ...PIECE_RULES.flatMap((rule) => rule(pieces) ?? [])];
  const situation = { ...pieces, lay };
  return RULES.flatMap((rule) => rule(situation) ?? []);
}
