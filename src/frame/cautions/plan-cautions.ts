import type { Caution } from "../../core/caution.js";
import type { FilledBrief } from "../brief.js";
import type { FrameContents } from "../contents-plan.js";
import { sticksTooShort, type RoughPiece } from "../rough-length.js";
import { ruleLength } from "./common-practice.js";
import { makeCaution } from "./make-caution.js";

/** Sticks longer than this need help at the saw, in millimeters; common practice, no printed source. */
const LONG_STICK: number = 2400;
/** A lip that laps less than this holds nothing once the wood has moved, in millimeters; common practice, no printed source. */
const LEAST_LAP: number = 3;

function seatCautions({ fit, why, possible, hidden }: FrameContents, brief: FilledBrief): Caution[] {
  if (possible === false) {
    return [
      makeCaution("seat", "danger", why ?? "", { angle: { slope: brief.slope } }, "geometry of the tilted rabbet"),
    ];
  }
  if (fit?.possible !== true) return [];
  const cautions: Caution[] = [];
  const lap = ruleLength(LEAST_LAP, brief.unit);
  if (hidden < lap) {
    const sentence =
      "The lip laps little of the contents at this slope: they can slip past it when the wood moves or the frame is knocked.";
    cautions.push(makeCaution("seat", "care", sentence, { length: { lap: hidden, limit: lap } }));
  }
  const wall = brief.fastenerRoom;
  if (fit.depthLeft < wall && brief.contents.length > 0) {
    const sentence =
      "The contents fill the rabbet to its back at this slope: there is no room left for points or clips, so plan offset clips or a deeper rabbet.";
    cautions.push(makeCaution("seat", "care", sentence, { length: { depthLeft: fit.depthLeft, limit: wall } }));
  }
  return cautions;
}

function longStick(brief: FilledBrief): Caution[] {
  const limit = ruleLength(LONG_STICK, brief.unit);
  const length = Math.max(0, ...(brief.sticks ?? []).map((stick) => stick.length));
  if (length <= limit) return [];
  const sentence =
    "The sticks are long: support them beyond the saw's table on both sides, level with it, or crosscut them into roughs first.";
  return [makeCaution("long-stick", "care", sentence, { length: { length, limit } })];
}

function shortSticks(brief: FilledBrief, piece: RoughPiece): Caution[] {
  const sticks = brief.sticks ?? [];
  if (!sticksTooShort(sticks, piece)) return [];
  const sentence =
    "No stick on offer is long enough for a piece: find longer ones, or choose a smaller frame or more sides.";
  const longest = sticks.reduce((most, stick) => Math.max(most, stick.length), 0);
  const numbers = { length: { longest, piece: piece.length } };
  return [makeCaution("short-stick", "care", sentence, numbers, "geometry of the pieces")];
}

/**
 * The cautions of a whole plan that do not come from cutting.
 *
 * @param brief - the filled brief
 * @param contents - what goes into the frame
 * @param piece - what one piece takes of its stick
 * @returns the cautions
 */
export function planCautions(brief: FilledBrief, contents: FrameContents, piece: RoughPiece): Caution[] {
  return [...seatCautions(contents, brief), ...longStick(brief), ...shortSticks(brief, piece)];
}
