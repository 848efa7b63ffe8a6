import { tanDeg } from "../../core/degrees.js";
import type { StockStick } from "../../stock/index.js";
import { roundLength, type RoundLength } from "../round-length.js";
import { sticksTooShort, type RoughPiece } from "../sawing/rough-length.js";
import { COMPUTED, raise, type HazardRule, type SawingFacts } from "./hazard-rule.js";

/** Pieces shorter than this are not held by hand; common practice, no printed source. */
const HAND_HELD: RoundLength = { millimeters: 300, inches: 12 };
/** Pieces shorter than this are not cut even with a hold-down; common practice, no printed source. */
const HELD_DOWN: RoundLength = { millimeters: 150, inches: 6 };
/** An offcut with a longer side shorter than this is thrown by the blade; common practice, no printed source. */
const THROWN: RoundLength = { millimeters: 50, inches: 2 };
/** Below this plan miter the joint is nearly end grain to end grain, in degrees; common practice, no printed source. */
const END_GRAIN: number = 22.5;
/** Sticks from this length on need help at the saw: 3 m, or 10 ft; common practice, no printed source. */
const LONG_STICK: RoundLength = { millimeters: 3000, inches: 120 };

/** A piece too short to be held by hand, or even with a hold-down. */
export const shortPiece: HazardRule<SawingFacts> = ({ geometry, unit, cutSteps: steps }) => {
  const { length } = geometry.pieces[0].longest;
  const [byHand, heldDown] = [roundLength(HAND_HELD, unit), roundLength(HELD_DOWN, unit)];
  if (length >= byHand) return [];
  const isTiny = length < heldDown;
  const limit = isTiny ? heldDown : byHand;
  return raise("short-piece", isTiny ? "danger" : "warning", { steps, quantities: { length: { length, limit } } });
};

/** A gauge's own stop travels with the piece, which is not caught; one that stays on the fence holds what is freed against the blade. */
export const trappedPiece: HazardRule<SawingFacts> = ({ sawing, unit }) => {
  const steps = sawing.operations.filter(({ stopRule }) => stopRule.moveAway).map(({ step }) => step);
  if (steps.length === 0) return [];
  const { length } = sawing.rough;
  const hold = length < roundLength(HAND_HELD, unit) ? "held-down" : "by-hand";
  const fence = sawing.saw.fence === "near" ? "gauge" : "saw";
  return raise("trapped-piece", "warning", { steps, quantities: { length: { length } }, facts: { fence, hold } });
};

/**
 * Between two pieces that are cut straight from the stick, a wedge falls off. At the end of a rough, its spare length falls off with half a wedge, or with a
 * whole one where the rough was parted at the finished cut of its neighbor.
 */
export const thrownOffcut: HazardRule<SawingFacts> = ({ geometry, sawing, unit, cutSteps: steps }) => {
  const { longest, shortest } = geometry.pieces[0];
  const half = (longest.out - shortest.out) * tanDeg(geometry.corners[0].planMiter);
  const { method, length } = sawing.rough;
  const spare = length - longest.length;
  const base = method === "square" ? spare / 2 + half : spare + 2 * half;
  const limit = roundLength(THROWN, unit);
  if (base >= limit) return [];
  const offcut = method === "none" ? "wedge" : "blank-end";
  return raise("thrown-offcut", "warning", { steps, quantities: { length: { base, limit } }, facts: { offcut } });
};

/** A joint that is nearly end grain to end grain, which glue holds badly. */
export const endGrain: HazardRule<SawingFacts> = ({ geometry }) => {
  const { planMiter } = geometry.corners[0];
  if (planMiter >= END_GRAIN) return [];
  return raise("end-grain", "notice", { steps: [], quantities: { angle: { planMiter, limit: END_GRAIN } } });
};

/** The sticks on offer. */
function sticksOf({ brief }: Parameters<HazardRule>[0]): readonly StockStick[] {
  return (brief.sticks ?? []).filter(({ count }) => count !== 0);
}

/** The length of the longest; 0 where there is none. */
function longestOf(sticks: readonly StockStick[]): number {
  return sticks.reduce((most, { length }) => Math.max(most, length), 0);
}

/** A stick that needs help at the saw. */
export const longStick: HazardRule = (facts) => {
  const limit = roundLength(LONG_STICK, facts.unit);
  const length = longestOf(sticksOf(facts));
  return length >= limit ? raise("long-stick", "warning", { quantities: { length: { length, limit } } }) : [];
};

/** What is left of a stick beyond the blade when its last piece is cut, as far as one frame's pieces go and no defect is in the way. */
function restBeyondBlade({ length }: StockStick, { pitch, kerfAlong }: RoughPiece, pieces: number): number {
  const clear = length - kerfAlong;
  const count = Math.min(pieces, Math.floor(clear / pitch));
  return count === 0 ? 0 : clear - count * pitch;
}

/** What is left beyond the blade at the last cut of a stick is too short to be held. */
export const shortRest: HazardRule = (facts) => {
  const { brief, sawing, unit } = facts;
  const limit = roundLength(HAND_HELD, unit);
  const rests = sticksOf(facts).map((stick) => restBeyondBlade(stick, sawing.rough, brief.sides));
  const rest = Math.min(...rests.filter((one) => one > 0));
  return rest < limit ? raise("short-rest", "warning", { quantities: { length: { rest, limit } } }) : [];
};

/** No stick on offer is long enough for one piece. */
export const shortStick: HazardRule = (facts) => {
  const sticks = sticksOf(facts);
  const piece = facts.sawing.rough;
  if (!sticksTooShort(sticks, piece)) return [];
  const quantities = { length: { longest: longestOf(sticks), piece: piece.length } };
  return raise("short-stick", "notice", { quantities, source: COMPUTED });
};
