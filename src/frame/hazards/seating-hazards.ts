import type { Hazard } from "../../core/hazard.js";
import type { SeatingReason } from "../../profile/index.js";
import type { FilledBrief } from "../brief.js";
import type { ContainedRest } from "../contained-rest.js";
import type { ContentsStack, StackVerdict } from "../contents-stack.js";
import type { FrameContents } from "../contents-plan.js";
import { isPane } from "../layer-names.js";
import type { RoundLength } from "../round-length.js";
import { ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

/** A lip that laps less than this holds nothing once the wood has moved; common practice, no printed source. */
const LEAST_LAP: RoundLength = { millimeters: 3, inches: 0.125 };

/** Why the rabbet holds nothing, within the sentence of a hazard. */
const IMPOSSIBLE: Readonly<Record<SeatingReason, string>> = {
  "past-mouth": "The rabbet is too shallow: at this slope its wall ends before it reaches the front of level contents",
  "falls-through": "The rabbet is too narrow: contents small enough to go in would fall through the sight opening",
  "too-steep": "The frame is too steep: at this slope the rabbet's ledge and wall no longer face level contents",
};

/** What too little depth behind the contents calls for. */
const STACKED: Readonly<Record<Exclude<StackVerdict, "roomy">, string>> = {
  tight:
    "Behind the contents there is just room for what holds them, and not enough when the glass is as thick as its tolerance allows: measure it before the frame is cut.",
  short:
    "The contents leave less depth behind them than what holds them takes: use thinner layers, a deeper rabbet, or fasteners that need less.",
  proud:
    "The contents stand proud of the rabbet: hold them with offset clips, build the back up with strips, or use a deeper rabbet.",
};

/** The stack against the rabbet: too thick, or too thick when the glass is. */
function stackHazards({ verdict, left, leftAtLeast }: ContentsStack, room: number): Hazard[] {
  if (verdict === null || left === null || leftAtLeast === null || verdict === "roomy") return [];
  const sentence = STACKED[verdict];
  if (verdict === "tight") {
    const numbers = { length: { left: leftAtLeast, limit: room } };
    return [makeHazard("glass-tolerance", "notice", sentence, numbers, "EN 572-2 (values from memory)")];
  }
  return [makeHazard("shallow-rabbet", "notice", sentence, { length: { left, limit: room } })];
}

/** The least by which the lip laps what it holds, and how far that can slide to one side. */
function lapAndRoom({ lap }: FrameContents, rest: ContainedRest | null, { clearance }: FilledBrief): [number, number] {
  if (rest?.pose !== "side-down") return [lap, clearance];
  return [-Math.max(rest.pastAcross, rest.pastUp), Math.max(rest.roomAcross, rest.roomUp)];
}

/**
 * The hazards of how the contents are seated in the rabbet.
 *
 * @param contents - what goes into the frame
 * @param rest - how a rectangle that a square frame contains lies on its lip; `null` where there is none
 * @param brief - the filled brief
 * @returns the hazards
 */
export function seatingHazards(contents: FrameContents, rest: ContainedRest | null, brief: FilledBrief): Hazard[] {
  const { seating, panel, stack } = contents;
  if (panel === null) {
    const tight = "The clearance leaves nothing of the opening: take less of it, or a larger opening.";
    const numbers = { length: { clearance: brief.clearance } };
    return [makeHazard("no-contents-left", "notice", tight, numbers, "geometry of the opening")];
  }
  if (seating?.possible === false) {
    const sentence = `${IMPOSSIBLE[seating.reason]}. Choose another rabbet, slope or molding before you cut.`;
    const numbers = { angle: { slope: brief.slope } };
    return [makeHazard("seating-impossible", "notice", sentence, numbers, "geometry of the tilted rabbet")];
  }
  const hazards = stack === null ? [] : stackHazards(stack, brief.fastenerRoom);
  if (brief.measured !== undefined && brief.slope !== 0 && brief.contents.length > 0) {
    const sentence =
      "With level measures alone it is not known how the tilted rabbet holds the contents: try them in an offcut of the molding, propped at its slope.";
    hazards.push(makeHazard("seating-not-known", "notice", sentence, { angle: { slope: brief.slope } }));
  }
  const [lap, room] = lapAndRoom(contents, rest, brief);
  const limit = Math.max(ruleLength(LEAST_LAP, brief.unit), room);
  // Another hazard says that contents miss the lip altogether.
  if (seating?.possible === true && lap > 0 && lap < limit) {
    const sentence =
      "The contents bear on little of the lip: they can slip past it when they slide to one side, when the wood moves or when the frame is knocked.";
    const signal = brief.contents.some(isPane) ? "warning" : "caution";
    hazards.unshift(makeHazard("narrow-lip", signal, sentence, { length: { lap, limit } }));
  }
  return hazards;
}
