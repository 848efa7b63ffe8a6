import type { Hazard } from "../../core/hazard.js";
import type { FilledBrief } from "../brief/brief.js";
import type { StockStick } from "../../stock/index.js";
import type { RoundLength } from "./round-length.js";
import { sticksTooShort, type RoughPiece } from "../sawing/rough-length.js";
import { HAND_HELD, ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

/** Sticks from this length on need help at the saw: 3 m, or 10 ft; common practice, no printed source. */
const LONG_STICK: RoundLength = { millimeters: 3000, inches: 120 };

/** What is left of a stick beyond the blade when its last piece is cut, as far as one frame's pieces go and no defect is in the way. */
function restBeyondBlade({ length }: StockStick, { pitch, kerfAlong }: RoughPiece, pieces: number): number {
  const clear = length - kerfAlong;
  const count = Math.min(pieces, Math.floor(clear / pitch));
  return count === 0 ? 0 : clear - count * pitch;
}

/**
 * The hazards of the sticks on offer.
 *
 * @param brief - the filled brief
 * @param piece - what one piece takes of its stick
 * @returns the hazards
 */
export function stickHazards(brief: FilledBrief, piece: RoughPiece): Hazard[] {
  const { sides, unit } = brief;
  const sticks = (brief.sticks ?? []).filter(({ count }) => count !== 0);
  const hazards: Hazard[] = [];
  const limit = ruleLength(LONG_STICK, unit);
  const longest = sticks.reduce((most, { length }) => Math.max(most, length), 0);
  if (longest >= limit) {
    hazards.push(makeHazard("long-stick", "warning", { quantities: { length: { length: longest, limit } } }));
  }
  const heldLimit = ruleLength(HAND_HELD, unit);
  const rests = sticks.map((stick) => restBeyondBlade(stick, piece, sides)).filter((rest) => rest > 0);
  const rest = Math.min(...rests);
  if (rest < heldLimit) {
    hazards.push(makeHazard("short-rest", "warning", { quantities: { length: { rest, limit: heldLimit } } }));
  }
  if (sticksTooShort(sticks, piece)) {
    const quantities = { length: { longest, piece: piece.length } };
    hazards.push(makeHazard("short-stick", "notice", { quantities, source: "geometry of the pieces" }));
  }
  return hazards;
}
