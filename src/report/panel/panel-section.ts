import { sideNumber } from "../../core/side-number.js";
import { hiddenCorners } from "../../drawing/internal.js";
import type { FrameContents } from "../../frame/index.js";
import type { LocatedPoint, PanelPlan } from "../../panel/index.js";
import { figureOf, listOf, paragraph, sectionOf, tableOf, type Pen } from "../pen.js";
import type { Block, ReportSection } from "../report.js";
import { column, plainTable } from "../tables/plain-table.js";

/** More cuts or corners than this are not listed one by one. */
const MOST_ROWS: number = 60;

/** How far a point lies from two edges of the blank. */
function distances({ fromSide, fromBase }: LocatedPoint, { words, formats: { length } }: Pen): [string, string] {
  return [
    words.panel.fromEdge({ distance: length(fromSide.distance), edge: fromSide.edge }),
    words.panel.fromEdge({ distance: length(fromBase.distance), edge: fromBase.edge }),
  ];
}

/** The corners that lie inside the blank; nothing where all lie on its outline. */
function cornerBlocks(panel: PanelPlan, work: "sawn" | "glass", pen: Pen): Block[] {
  const hidden = hiddenCorners(panel);
  const { caption, heads } = pen.words.panel.corners;
  const columns = [column(heads.corner), column(heads.fromSide), column(heads.fromBase)];
  const rows = hidden.slice(0, MOST_ROWS).map((corner) => [corner.name, ...distances(corner, pen)]);
  const rest = hidden.length - rows.length;
  return [
    ...tableOf("corners", plainTable(caption[work], columns, rows)),
    ...listOf("more-corners", rest > 0 ? [pen.words.panel.moreCorners({ count: rest })] : [], { marker: "none" }),
  ];
}

/** What a glazier has to know of a pane, which is not sawn. */
function paneSection(plan: PanelPlan, pen: Pen): ReportSection[] {
  const { length, angle } = pen.formats;
  const { panel, blank } = plan;
  const { sides, side, interiorAngle, acrossFlats, acrossCorners } = panel;
  const pane = pen.words.panel.pane({
    sides,
    side: length(side),
    interiorAngle: angle(interiorAngle),
    acrossFlats: length(acrossFlats),
    acrossCorners: length(acrossCorners),
    width: length(blank.width),
    height: length(blank.height),
  });
  return sectionOf("pane", pen, [...paragraph("pane", [pane]), ...cornerBlocks(plan, "glass", pen), figureOf("panel")]);
}

/** The cuts, which share one setting of the gauge. */
function cutBlocks(plan: PanelPlan, pen: Pen): Block[] {
  const { cuts, setting } = plan;
  if (cuts.length === 0) return [];
  const { words, formats } = pen;
  const { caption, heads, up } = words.panel.cuts;
  const rows = cuts
    .slice(0, MOST_ROWS)
    .map((cut) => [
      String(cut.step),
      String(sideNumber(cut.side)),
      String(sideNumber(cut.against)),
      up[cut.up],
      distances(cut.middle, pen).join(", "),
    ]);
  const columns = [heads.cut, heads.side, heads.against, heads.up, heads.middle].map((head) => column(head));
  const rest = cuts.length - rows.length;
  const told = plainTable(caption({ setting: formats.angle(setting), swing: cuts[0]!.swing }), columns, rows);
  return [
    ...tableOf("cuts", told),
    ...cornerBlocks(plan, "sawn", pen),
    ...listOf("more-cuts", rest > 0 ? [words.panel.moreCuts({ count: rest })] : [], { marker: "none" }),
    figureOf("panel"),
    figureOf("panel-cut", { step: 1 }),
  ];
}

/** How the panel is cut from a squared blank, or what a glazier has to know of a pane; nothing where nothing goes into the frame. */
export function panelSection(
  plan: PanelPlan,
  { work, panes }: Pick<FrameContents, "work" | "panes">,
  pen: Pen,
): ReportSection[] {
  if (work === "none") return [];
  if (work === "glass") return paneSection(plan, pen);
  const { words, formats } = pen;
  const { width, height } = plan.blank;
  const start = [
    words.panel.blank({ width: formats.length(width), height: formats.length(height) }),
    ...(plan.cuts.length === 0 ? [] : [words.panel.order, words.labels.numbering[plan.pose]]),
    ...(panes ? [words.panel.panes] : []),
  ];
  return sectionOf("panel", pen, [...paragraph("blank", start), ...cutBlocks(plan, pen)]);
}
