import { surfaceLabel } from "miterwright/frame";
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
    const { stages, cauls } = glueUp;
    const lines: Part[] = [
      ...(cauls.high === "neither"
        ? []
        : [`Prop every stick on a caul of ${writers.angle(cauls.bed)}, its ${surfaceLabel(cauls.high)} the higher.`]),
      `Clamp against blocks of ${writers.angle(cauls.blocks)} fixed to the outside, so that the pull is square to the joint.`,
      lastJoint.words,
      ...(tolerance === null
        ? []
        : [
            `Every cut may be off by ${writers.angle(tolerance.shared.each)} if all are off alike, for a last joint within ${writers.small(plan.brief.acceptedGap)}.`,
          ]),
    ];
    return html`<p>Corner 1 is where side 1 starts, counter-clockwise as seen from above.</p>
      <ol class="steps">
        ${stages.map(({ words }) => html`<li>${words}</li>`)}
      </ol>
      ${bullets(lines)}`;
  },
};
