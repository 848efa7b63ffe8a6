import { drawPanel, drawPanelCut } from "../drawing/index.js";
import { hiddenCorners } from "../drawing/hidden-corners.js";
import type { FramePlan } from "../frame/index.js";
import { element, table, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

/** More cuts than this are not listed one by one. */
const MOST_CUTS: number = 60;

/**
 * How the panel is cut from a squared blank.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section, empty where nothing is said to go into the frame
 */
export function panelSection(plan: FramePlan, words: Words): Markup {
  const { panel } = plan;
  const isHeld = plan.contents.hidden > 0 || plan.contents.sheet !== null || plan.brief.contents.length > 0;
  if (panel === undefined || !isHeld) return { html: "" };
  const { length, angle } = words;
  const { blank, cuts, setting } = panel;
  const start = `Square a blank to ${length(blank.width)} × ${length(blank.height)}.`;
  if (cuts.length === 0) return element("section", element("h2", "The panel"), element("p", start));
  const hidden = hiddenCorners(panel).slice(0, MOST_CUTS);
  const hiddenTable =
    hidden.length === 0
      ? []
      : [
          table({
            caption: "Corners inside the blank, marked before the first cut",
            heads: ["corner", "from the side", "from the base"],
            rows: hidden.map(({ letter, fromSide, fromBase }) => [
              letter,
              `${length(fromSide.distance)} from ${fromSide.edge}`,
              `${length(fromBase.distance)} from ${fromBase.edge}`,
            ]),
          }),
        ];
  // One setting serves all cuts.
  const turned = cuts[0]!.swing === "closed" ? "less" : "more";
  const caption = `Cuts at the miter gauge, swung ${angle(setting)} from square: gauge and blade stand at ${turned} than a right angle`;
  const rows = cuts
    .slice(0, MOST_CUTS)
    .map(({ step, side, against, up, middle }) => [
      String(step),
      String(side),
      String(against),
      up,
      `${middle.fromSide.edge} ${length(middle.fromSide.distance)}, ${middle.fromBase.edge} ${length(middle.fromBase.distance)}`,
    ]);
  const heads = ["cut", "side", "against", "up", "its middle from the blank's edges"];
  return element(
    "section",
    element("h2", "The panel"),
    element(
      'div class="panel keep"',
      element(
        "div",
        element("p", `${start} Cut its sides in this order with one setting of the gauge.`),
        table({ caption, heads, rows }),
        ...hiddenTable,
      ),
      element("figure", { html: drawPanel(panel, { ...words, width: 190, key: false }).svg }),
      element("figure", { html: drawPanelCut(panel, { ...words, step: 1, width: 180 }).svg }),
    ),
    ...(cuts.length > MOST_CUTS ? [element("p", `${cuts.length - MOST_CUTS} more cuts follow in the same way.`)] : []),
  );
}
