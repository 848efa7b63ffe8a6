import { tanDeg } from "../../core/degrees.js";
import type { Lay } from "../../miter/index.js";
import type { Obstacle } from "../../saw/index.js";
import type { LengthUnit } from "../../core/geometry-types.js";
import type { RoundLength } from "./round-length.js";
import type { SawPlan } from "../sawing/saw-plan-types.js";
import { depthAt } from "../sawing/lay-result.js";
import type { FrameGeometry } from "../frame-geometry.js";
import { usualDepth } from "../sawing/usual-lengths.js";
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
  const limit = isTiny ? heldDown : byHand;
  return raise("short-piece", isTiny ? "danger" : "warning", cutSteps, { quantities: { length: { length, limit } } });
};

/** A gauge's own stop travels with the piece, which is not caught; one that stays on the fence holds what is freed against the blade. */
const trappedPiece: SawingRule = ({ plan, unit }) => {
  const steps = plan.operations.filter(({ stopRule }) => stopRule.moveAway).map(({ step }) => step);
  if (steps.length === 0) return null;
  const { length } = plan.rough;
  const hold = length < ruleLength(HAND_HELD, unit) ? "held-down" : "by-hand";
  const facts = { fence: fenceOf(plan.saw), hold } as const;
  return raise("trapped-piece", "warning", steps, { quantities: { length: { length } }, facts });
};

/** With the piece on the open side of the blade only what is loose lies under it. */
const offcutUnderBevel: SawingRule = ({ lay, cutSteps }) => {
  const { underBlade, bevel } = lay.first;
  if (underBlade !== "offcut") return null;
  return raise("offcut-under-bevel", "warning", cutSteps, { quantities: { angle: { bevel: bevel.degrees } } });
};

/** Under the blade the hand and the stop are on the side of the wood that can bind. */
const pieceUnderBevel: SawingRule = ({ plan, lay, cutSteps }) => {
  const { underBlade, bevel } = lay.first;
  if (underBlade !== "kept") return null;
  const quantities = { angle: { bevel: bevel.degrees } };
  return raise("piece-under-bevel", "warning", cutSteps, { quantities, facts: { fence: fenceOf(plan.saw) } });
};

const depthNotKnown: SawingRule = ({ unit, lay, cutSteps }) => {
  if (!lay.depthInDoubt) return null;
  const length = { depth: lay.size!.depth, usual: usualDepth(unit) };
  return raise("depth-not-known", "caution", cutSteps, { quantities: { length } });
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
  const facts = { offcut: method === "none" ? "wedge" : "blank-end" } as const;
  return raise("thrown-offcut", "warning", cutSteps, { quantities: { length: { base, limit } }, facts });
};

const balanceNotKnown: SawingRule = ({ plan, lay, cutSteps }) => {
  const { cradle, first } = lay;
  if (cradle !== null || !first.cradled) return null;
  return raise("balance-not-known", "warning", cutSteps, { facts: { fence: fenceOf(plan.saw) } });
};

const tips: SawingRule = ({ plan, lay, cutSteps }) => {
  const { cradle } = lay;
  if (cradle === null || cradle.steady) return null;
  const quantities = { length: { overhang: cradle.widenBy } };
  return raise("tip", "warning", cutSteps, { quantities, facts: { fence: fenceOf(plan.saw) } });
};

const fasteners: SawingRule = ({ lay, cutSteps }) => {
  if (!lay.first.cradled) return null;
  const quantities = lay.cradle === null ? {} : { length: { rise: lay.cradle.rise } };
  return raise("fasteners", "warning", cutSteps, { quantities });
};

const flipError: SawingRule = ({ plan }) => {
  const flipped = plan.operations.find((operation) => operation.move === "flip-end-for-end");
  return flipped === undefined ? null : raise("flip-error", "notice", [flipped.step], {});
};

const endGrain: PieceRule = ({ geometry }) => {
  const { planMiter } = geometry.corners[0];
  if (planMiter >= END_GRAIN) return null;
  return raise("end-grain", "notice", [], { quantities: { angle: { planMiter, limit: END_GRAIN } } });
};

const ripFence: PieceRule = ({ plan, cutSteps }) =>
  plan.saw.fence === "far" ? null : raise("rip-fence", "warning", cutSteps, {});

const dust: PieceRule = () => raise("dust", "warning", [], {});

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
  const othersWork = lays.some(({ possible }) => possible);
  const isBeyond = (code: Obstacle["code"]): boolean => obstacles.some((obstacle) => obstacle.code === code);
  const length = {
    ...(size !== null && isBeyond("depth") ? { height: size.height, depth: depthAt(saw, bevel) } : {}),
    ...(size !== null && isBeyond("crosscut") ? { line: size.line, crosscut: saw.crosscut! } : {}),
  };
  return raise("capacity", "warning", [], {
    quantities: { length, angle: { miter: first.miter.degrees, bevel: first.bevel.degrees } },
    facts: {
      lay: asked === undefined ? "none-works" : othersWork ? "asked-for-others-work" : "asked-for",
      obstacles: obstacles.map(({ code }) => code),
    },
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
