import type { Hazard } from "../../core/hazard.js";
import type { FilledBrief } from "../brief/brief.js";
import type { ContainedRest } from "../contents/contained-rest.js";
import type { ContentsStack } from "../contents/contents-stack.js";
import type { FrameContents } from "../contents/contents-plan.js";
import { isPane } from "../contents/layer-names.js";
import type { RoundLength } from "./round-length.js";
import { ruleLength } from "./common-practice.js";
import { makeHazard } from "./make-hazard.js";

/** A lip that laps less than this holds nothing once the wood has moved; common practice, no printed source. */
const LEAST_LAP: RoundLength = { millimeters: 3, inches: 0.125 };

/** The stack against the rabbet: too thick, or too thick when the glass is. */
function stackHazards({ verdict, left, leftAtLeast }: ContentsStack, room: number): Hazard[] {
  if (verdict === null || left === null || leftAtLeast === null || verdict === "roomy") return [];
  if (verdict === "tight") {
    const quantities = { length: { left: leftAtLeast, limit: room } };
    return [makeHazard("glass-tolerance", "notice", { quantities, source: "EN 572-2 (values from memory)" })];
  }
  const quantities = { length: { left, limit: room } };
  return [makeHazard("shallow-rabbet", "notice", { quantities, facts: { verdict } })];
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
    const quantities = { length: { clearance: brief.clearance } };
    return [makeHazard("no-contents-left", "notice", { quantities, source: "geometry of the opening" })];
  }
  if (seating?.possible === false) {
    return [
      makeHazard("seating-impossible", "notice", {
        quantities: { angle: { slope: brief.slope } },
        facts: { reason: seating.reason },
        source: "geometry of the tilted rabbet",
      }),
    ];
  }
  const hazards = stack === null ? [] : stackHazards(stack, brief.fastenerRoom);
  if (brief.measured !== undefined && brief.slope !== 0 && brief.contents.length > 0) {
    hazards.push(makeHazard("seating-not-known", "notice", { quantities: { angle: { slope: brief.slope } } }));
  }
  const [lap, room] = lapAndRoom(contents, rest, brief);
  const limit = Math.max(ruleLength(LEAST_LAP, brief.unit), room);
  // Another hazard says that contents miss the lip altogether.
  if (seating?.possible === true && lap > 0 && lap < limit) {
    const signal = brief.contents.some(isPane) ? "warning" : "caution";
    hazards.unshift(makeHazard("narrow-lip", signal, { quantities: { length: { lap, limit } } }));
  }
  return hazards;
}
