import { describeCaution, type FramePlan } from "miterwright/frame";
import type { Writers } from "./writers.js";

/**
 * How far a plan is: ready, or what is in its way.
 *
 * @param plan - the plan
 * @param writers - how lengths and angles are written
 * @returns a sentence or two
 */
export function readyText({ cutting, geometry, cautions, contents }: FramePlan, writers: Writers): string {
  const missed = cautions.find(({ code, severity }) => code === "missed-lip" && severity !== "note");
  if (missed !== undefined) {
    const { sentence, numbers } = describeCaution(missed, writers);
    return `Not ready yet. ${sentence} (${numbers})`;
  }
  if (contents.possible === false) return `Not ready yet. The contents can't be held. ${contents.why ?? ""}`;
  if (cutting.lay === null) return "No way to lay the stick suits this saw.";
  const { length, angle } = writers;
  const { longest, count } = geometry.sticks[0]!;
  const { miter, bevel } = cutting.lay.first;
  return `The plan is ready: ${count} pieces of ${length(longest.length)}, miter scale at ${angle(miter.reading)}, bevel scale at ${angle(bevel.reading)}.`;
}
