import { drawPanel, drawPanelCut } from "../drawing/index.js";
import { sideNumber } from "../core/side-number.js";
import { hiddenCorners } from "../drawing/hidden-corners.js";
import { numberingText } from "../words/internal.js";
import type { FramePlan } from "../frame/index.js";
import type { PanelPlan } from "../panel/index.js";
import { element, table, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

/** More cuts than this are not listed one by one. */
const MOST_CUTS: number = 60;

/** What to do about panes among layers that are sawn. */
const PANES = "Glass is not sawn: have it cut by a glazier to the same sizes.";

/** The corners that lie inside the blank, from two of its edges; nothing where all lie on its outline. */
function cornersTable(panel: PanelPlan, caption: string, { length }: Words): Markup[] {
  const hidden = hiddenCorners(panel);
  if (hidden.length === 0) return [];
  const rest = hidden.length - MOST_CUTS;
  const named = `${caption}: P and the number of the side that starts there`;
  const rows = hidden
    .slice(0, MOST_CUTS)
    .map(({ name, fromSide, fromBase }) => [
      name,
      `${length(fromSide.distance)} from ${fromSide.edge}`,
      `${length(fromBase.distance)} from ${fromBase.edge}`,
    ]);
  return [
    table({ caption: named, heads: ["corner", "from the side", "from the base"], rows }),
    ...(rest > 0 ? [element("p", `${rest} more corners follow in the same way.`)] : []),
  ];
}

/** What a glazier has to know of a pane, which is not sawn. */
function paneSection(panel: PanelPlan, words: Words): Markup {
  const { length, angle } = words;
  const { sides, side, acrossFlats, acrossCorners, interiorAngle } = panel.panel;
  const size = `${sides} equal sides of ${length(side)} at ${angle(interiorAngle)}, across flats ${length(acrossFlats)}, across corners ${length(acrossCorners)}, out of ${length(panel.blank.width)} × ${length(panel.blank.height)}`;
  return element(
    "section",
    element("h2", "The pane"),
    element(
      'div class="beside keep"',
      element(
        "div",
        element("p", `Glass is not sawn. Have it cut by a glazier: ${size}.`),
        ...cornersTable(panel, "Corners inside that rectangle", words),
      ),
      element("figure", { html: drawPanel(panel, { ...words, width: 190, key: false }).svg }),
    ),
  );
}

/**
 * How the panel is cut from a squared blank, or what a glazier has to know of a pane.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section, empty where nothing is said to go into the frame
 */
export function panelSection(plan: FramePlan, words: Words): Markup {
  const { panel } = plan;
  const { work } = plan.contents;
  if (panel === undefined || work === "none") return { html: "" };
  if (work === "glass") return paneSection(panel, words);
  const { length, angle } = words;
  const { blank, cuts, setting } = panel;
  const panes = plan.contents.panes ? ` ${PANES}` : "";
  const start = `Square the panel blank to ${length(blank.width)} × ${length(blank.height)}.`;
  if (cuts.length === 0) return element("section", element("h2", "The panel"), element("p", `${start}${panes}`));
  // One setting serves all cuts.
  const comparison = cuts[0]!.swing === "closed" ? "less" : "more";
  const caption = `Cuts at the miter gauge, swung ${angle(setting)} from square: gauge and blade stand at ${comparison} than a right angle`;
  const rows = cuts
    .slice(0, MOST_CUTS)
    .map(({ step, side, against, up, middle }) => [
      String(step),
      String(sideNumber(side)),
      String(sideNumber(against)),
      up,
      `${middle.fromSide.edge} ${length(middle.fromSide.distance)}, ${middle.fromBase.edge} ${length(middle.fromBase.distance)}`,
    ]);
  const heads = ["cut", "side", "against", "up", "its middle from the panel blank's edges"];
  return element(
    "section",
    element("h2", "The panel"),
    element(
      'div class="panel keep"',
      element(
        "div",
        element(
          "p",
          `${start} Cut its sides in this order with one setting of the gauge. ${numberingText(panel.pose)}${panes}`,
        ),
        table({ caption, heads, rows }),
        ...cornersTable(panel, "Corners inside the panel blank, marked before the first cut", words),
      ),
      element("figure", { html: drawPanel(panel, { ...words, width: 190, key: false }).svg }),
      element("figure", { html: drawPanelCut(panel, { ...words, step: 1, width: 180 }).svg }),
    ),
    ...(cuts.length > MOST_CUTS ? [element("p", `${cuts.length - MOST_CUTS} more cuts follow in the same way.`)] : []),
  );
}
