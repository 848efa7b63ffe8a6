import type { FramePlan } from "../frame/index.js";
import { element, list, type Content, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

/** How the contents sit in the rabbet. */
function seatLines({ contents, brief }: FramePlan, { length }: Words): string[] {
  const { fit, why, possible, hidden, visible } = contents;
  if (possible === false) return [`They can't be held: ${why ?? ""}`];
  const seen = `Hidden by the lip: ${length(hidden)} at every side; seen: sides of ${length(visible.side)}.`;
  if (fit?.possible !== true) {
    const { measured } = brief;
    const depth =
      measured?.depth === undefined ? [] : [`The rabbet is ${length(measured.depth)} deep, measured plumb.`];
    return [...(hidden > 0 ? [seen] : []), ...depth];
  }
  const layers = brief.contents.map(({ name, thickness }) => `${name} ${length(thickness)}`);
  const wall = length(fit.depthUsed + fit.depthLeft);
  const left =
    fit.depthLeft < 0
      ? `they stand ${length(-fit.depthLeft)} proud of it`
      : `${length(fit.depthLeft)} of it is left behind them`;
  return [
    seen,
    ...(layers.length === 0
      ? [`The rabbet's wall is ${wall} deep.`]
      : [
          `From the front: ${layers.join(", ")}.`,
          `They use ${length(fit.depthUsed)} of the rabbet's wall of ${wall}; ${left}.`,
        ]),
  ];
}

/**
 * What goes into the frame: the panel's size, what the lip hides, and the rabbet's depth.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns a block that stands beside the lengths
 */
export function contentsBlock(plan: FramePlan, words: Words): Markup {
  const { length } = words;
  const { contents, brief } = plan;
  const { panel, contained, sheet } = contents;
  const lines: Content[] = [];
  if (panel !== null) {
    lines.push(
      `Panel: ${panel.sides} equal sides of ${length(panel.side)}, across flats ${length(panel.acrossFlats)}.`,
    );
  }
  if (brief.clearance > 0) lines.push(`Clearance kept at every side: ${length(brief.clearance)}.`);
  if (contained !== null) lines.push(`It must hold ${length(contained.width)} × ${length(contained.height)}.`);
  if (sheet !== null) lines.push(`It is cut from a sheet of ${length(sheet.width)} × ${length(sheet.height)}.`);
  lines.push(...seatLines(plan, words));
  return element('div class="keep"', element("h3", "Contents"), list("ul", lines));
}
