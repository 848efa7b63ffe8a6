import type { Caution } from "../../core/caution.js";
import type { FilledBrief } from "../brief.js";
import { sticksTooShort, type RoughPiece } from "../rough-length.js";
import { ruleLength } from "./common-practice.js";
import { makeCaution } from "./make-caution.js";

/** Sticks longer than this need help at the saw, in millimeters; common practice, no printed source. */
const LONG_STICK: number = 2400;

/**
 * The cautions of the sticks on offer.
 *
 * @param brief - the filled brief
 * @param piece - what one piece takes of its stick
 * @returns the cautions
 */
export function stickCautions(brief: FilledBrief, piece: RoughPiece): Caution[] {
  const { sticks = [], unit } = brief;
  const cautions: Caution[] = [];
  const limit = ruleLength(LONG_STICK, unit);
  const longest = sticks.reduce((most, { length }) => Math.max(most, length), 0);
  if (longest > limit) {
    const sentence =
      "The sticks are long: support them beyond the saw's table on both sides, level with it, or crosscut them into roughs first.";
    cautions.push(makeCaution("long-stick", "care", sentence, { length: { length: longest, limit } }));
  }
  if (sticksTooShort(sticks, piece)) {
    const sentence =
      "No stick on offer is long enough for a piece: find longer ones, or choose a smaller frame or more sides.";
    const numbers = { length: { longest, piece: piece.length } };
    cautions.push(makeCaution("short-stick", "care", sentence, numbers, "geometry of the pieces"));
  }
  return cautions;
}
