import { glueUpLines, lastJointText, surfaceLabel } from "miterwright/words";
import { html, type Part } from "../html.js";
import type { Card } from "./card.js";
import { bullets } from "./tables.js";

/** In which order the joints are glued, on what, and how the last one is made. */
export const assemblyCard: Card = {
  id: "assembly",
  heading: "Gluing up",
  column: "frame",
  write: ({ plan, writers }) => {
    const { glueUp, lastJoint, tolerance } = plan.assembly;
    const { bevelBlocks, cauls } = glueUp;
    const { angle: slope, high } = bevelBlocks;
    const lines: Part[] = [
      ...(high === "neither"
        ? []
        : [`Prop every piece on a bevel block of ${writers.angle(slope)}, its ${surfaceLabel(high)} the higher.`]),
      `Clamp against cauls of ${writers.angle(cauls.angle)} fixed to the outside, so that the pull is square to the joint.`,
      lastJointText(lastJoint),
      ...(tolerance === null
        ? []
        : [
            `Every cut may be off by ${writers.angle(tolerance.shared.each)} if all are off alike, for a last joint within ${writers.small(plan.brief.acceptedGap)}.`,
          ]),
    ];
    return html`<p>Corner 1 is where side 1 starts, counter-clockwise as seen from above.</p>
      <ol class="steps">
        ${glueUpLines(glueUp).map((stage) => html`<li>${stage}</li>`)}
      </ol>
      ${bullets(lines)}`;
  },
};
