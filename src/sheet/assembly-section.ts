import { type FramePlan } from "../frame/index.js";
import { describeGlueUp, describeLastJoint, describeSawFault, surfaceLabel } from "../words/index.js";
import { element, list, type Markup } from "./html.js";
import { finely, type Words } from "./sheet-options.js";

/** What the last joint takes at the accepted gap. */
function lastJointText({ assembly, brief }: FramePlan, { length, angle }: Words): string {
  const { lastJoint } = assembly;
  const how = describeLastJoint(lastJoint);
  if (lastJoint.made === "trimmed-halves") {
    if (lastJoint.trim === null || lastJoint.loss === null) return how;
    return `${how} For a gap of ${length(brief.acceptedGap)} that is ${length(lastJoint.trim)} at each end, and the frame becomes ${length(lastJoint.loss)} narrower there.`;
  }
  if (lastJoint.length === null || lastJoint.planMiter === null) return how;
  return `${how} Instead of a gap of ${length(brief.acceptedGap)}, it comes out ${length(lastJoint.length)} longer or shorter than the others, and each end ${angle(lastJoint.planMiter)} off, seen from above.`;
}

/**
 * Order of gluing, bevel blocks and cauls, and how the last joint is made.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the block
 */
export function glueBlock(plan: FramePlan, words: Words): Markup {
  const { glueUp } = plan.assembly;
  const { bevelBlocks, cauls } = glueUp;
  const { angle: slope, high } = bevelBlocks;
  const propped =
    high === "neither"
      ? ""
      : `Prop every piece on a bevel block of ${words.angle(slope)}, its ${surfaceLabel(high)} the higher. `;
  return element(
    "div",
    element("h3", "Gluing up"),
    list("ol", describeGlueUp(glueUp)),
    element(
      "p",
      `${propped}Clamp against cauls of ${words.angle(cauls.angle)} fixed to the outside, so that the pull is square to the joint. Corner 1 starts side 1.`,
    ),
    element("p", lastJointText(plan, finely(words))),
  );
}

function toleranceText({ assembly, brief }: FramePlan, { length, angle }: Words): string[] {
  if (assembly.tolerance === null) return [];
  const { shared, random } = assembly.tolerance;
  const both = (["miter", "bevel"] as const).flatMap((name) => {
    const [alike, each] = [shared[name], random[name]];
    if (alike === null) return [];
    return [
      `the ${name} to ${angle(alike)} where all cuts are off alike${each === null ? "" : `, ${angle(each)} where each is off by its own`}`,
    ];
  });
  if (both.length === 0) return [];
  return [`For a last joint within ${length(brief.acceptedGap)}, cut ${both.join("; ")}.`];
}

/** What the graduations to set do where they are not exact, and why they are not the nearest ones. */
function graduationsText({ sawing, geometry }: FramePlan, { length, angle }: Words): string[] {
  if (sawing.graduations === null) return [];
  const { best, nearest } = sawing.graduations;
  if (Math.max(best.miterMiss, best.bevelMiss) < 1e-9) return [];
  const isNearest = best.miter === nearest.miter && best.bevel === nearest.bevel;
  const why = isNearest ? "" : ` The nearest mark of each would open it ${length(nearest.jointGap)}.`;
  const slopes = Math.abs(best.slopeOff) < 0.01 ? "" : ` and the sides slope ${angle(geometry.slope + best.slopeOff)}`;
  return [
    `On the best marks, miter ${angle(best.miter)} with bevel ${angle(best.bevel)}, the last joint opens ${length(best.jointGap)}${slopes}.${why}`,
  ];
}

/** What a tenth of a degree of each fault does, where that can be seen. */
function faultTexts({ assembly, brief }: FramePlan, { length, angle }: Words): string[] {
  if (assembly.sawErrors === null) return [];
  const isSeen = (size: number): boolean => size > brief.acceptedGap / 10;
  return assembly.sawErrors.faults.flatMap((fault) => {
    const { jointGap, slopeOff, step } = fault;
    const does = [
      ...(isSeen(jointGap) ? [`gap ${length(jointGap)}`] : []),
      ...(slopeOff >= 0.01 ? [`slope ${angle(slopeOff)}`] : []),
      ...(isSeen(step) ? [`step ${length(step)}`] : []),
    ];
    return does.length === 0 ? [] : [`${describeSawFault(fault)} (${angle(0.1)}: ${does.join(", ")})`];
  });
}

/**
 * How true the saw must be, which graduations to set, and what its errors do to this frame.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the block, empty when no lay works
 */
export function truenessBlock(plan: FramePlan, words: Words): Markup {
  const fine = finely(words);
  const lines = [...toleranceText(plan, fine), ...graduationsText(plan, fine), ...faultTexts(plan, fine)];
  if (lines.length === 0) return { html: "" };
  return element("div", element("h3", "How true the saw must be"), list("ul", lines));
}
