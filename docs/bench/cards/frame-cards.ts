import { drawPanel, drawPlanView, drawSection } from "miterwright/drawing";
import { arrisLabel, reasonText } from "miterwright/words";
import { sideNumber } from "../../../src/core/side-number.js";
import { swingLabel } from "../../../src/drawing/swing-label.js";
import { numberingText } from "../../../src/words/texts/numbering-text.js";
import { html, trusted } from "../html.js";
import type { Card } from "./card.js";
import { bullets, facts, table } from "./tables.js";

/** Side of the largest square that figures in a column may take, in pixels. */
const LARGEST: number = 460;

/** The frame seen from above. */
export const planCard: Card = {
  id: "above",
  heading: "Seen from above",
  column: "frame",
  write: ({ plan, writers, width }) =>
    html`<figure>${trusted(drawPlanView(plan, { ...writers, width: Math.min(width, LARGEST) }).svg)}</figure>`,
};

/** A side cut across, and what lies in it. */
export const sectionCard: Card = {
  id: "section",
  heading: "A side, cut across",
  column: "frame",
  write: ({ plan, writers, width }) => {
    const drawing = drawSection(plan, { ...writers, width: Math.min(width, LARGEST) });
    const { contents } = plan;
    const lines = [
      ...(contents.possible === false
        ? [
            html`<strong>The contents can't be held:</strong>
              ${contents.reason === null ? "" : reasonText(contents.reason)}`,
          ]
        : []),
      ...(contents.hidden > 0
        ? [html`The lip hides ${writers.length(contents.hidden)} of the contents at every side.`]
        : []),
    ];
    return html`<p>As it stands in the frame, whose center is to the left.</p>
      <figure>${trusted(drawing.svg)}</figure>
      ${lines.length === 0 ? null : bullets(lines)}`;
  },
};

/** The lengths of a piece at every arris, and the sizes of the whole. */
export const lengthsCard: Card = {
  id: "lengths",
  heading: "Lengths",
  column: "frame",
  write: ({ plan, writers }) => {
    const { geometry, sawing } = plan;
    const piece = geometry.pieces[0];
    const { length } = writers;
    const measured = sawing.operations.at(-1)?.measure?.arris;
    const { opening, overall } = geometry;
    const rows = Object.keys(geometry.arrises).map((arris) => [
      arrisLabel(arris),
      html`<span class="figure">${length(piece.lengths[arris]!)}</span>`,
      arris === measured ? "measure here" : "",
    ]);
    return html`${table("Finished length of every piece, edge by edge", ["edge", "length", "tape"], rows)}${facts([
      ["opening, one side", length(opening.side)],
      ["opening, across flats", length(opening.acrossFlats)],
      ["overall, across flats", length(overall.polygon.acrossFlats)],
      ["overall, across corners", length(overall.polygon.acrossCorners)],
      ["molding, width taken level", length(geometry.levelWidth)],
      ...(overall.height === null ? [] : [["height on the bench", length(overall.height)] as const]),
    ])}`;
  },
};

/** Most cuts of a panel that are listed. */
const MOST_CUTS: number = 40;

/** How the panel is cut from a squared blank. */
export const panelCard: Card = {
  id: "panel",
  heading: "The panel that goes in",
  column: "frame",
  write: ({ plan, writers, width }) => {
    const { panel, contents } = plan;
    if (panel === undefined || contents.work === "none") return null;
    const { length, angle } = writers;
    const { sheet, work } = contents;
    const isSawn = work === "sawn";
    const panes = contents.panes;
    const lines = [
      `It has ${panel.panel.sides} equal sides of ${length(panel.panel.side)}, and is ${length(panel.panel.acrossFlats)} across flats.`,
      ...(sheet === null ? [] : [`It is cut from a sheet of ${length(sheet.width)} by ${length(sheet.height)}.`]),
      isSawn
        ? `Square the panel blank to ${length(panel.blank.width)} by ${length(panel.blank.height)}.`
        : `It comes out of ${length(panel.blank.width)} by ${length(panel.blank.height)}.`,
      ...(panes ? ["Glass is not sawn: have it cut by a glazier to these sizes."] : []),
      ...(panel.cuts.length === 0 || !isSawn
        ? []
        : [
            `Swing the miter gauge ${angle(panel.setting)} from square, and leave it there for all cuts.`,
            numberingText(panel.pose),
          ]),
    ];
    const rows = (isSawn ? panel.cuts : [])
      .slice(0, MOST_CUTS)
      .map(({ step, side, against, swing, up, middle }) => [
        step,
        sideNumber(side),
        sideNumber(against),
        swingLabel(swing),
        up,
        `${length(middle.fromSide.distance)} from the ${middle.fromSide.edge}, ${length(middle.fromBase.distance)} from the ${middle.fromBase.edge}`,
      ]);
    const heads = [
      "cut",
      "side",
      "side against the gauge",
      "between gauge and blade",
      "up",
      "middle of the new side, on the panel blank",
    ];
    const drawing = drawPanel(panel, { ...writers, width: Math.min(width, 340) });
    return html`${bullets(lines)}
      <figure>${trusted(drawing.svg)}</figure>
      ${rows.length === 0 ? null : table("Its cuts, in order", heads, rows)}${isSawn && panel.cuts.length > MOST_CUTS ? html`<p>${panel.cuts.length - MOST_CUTS} more cuts follow in the same way.</p>` : null}`;
  },
};
