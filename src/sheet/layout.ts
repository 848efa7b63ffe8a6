import type { SectionName } from "../words/index.js";

/** The name that a section's heading has among its blocks. */
export const HEADING: string = "heading";

/** A block by its section and name, `frame.above`; a section's small heading, `cradle.heading`; or a whole section under that, `contents`. */
export type Item = SectionName | `${SectionName}.${string}`;

/** Columns beside each other; one that has nothing to show leaves its room to the rest. */
export interface Row {
  /** Its class in the style sheet. */
  readonly style: string;
  /** What stands in each column. */
  readonly columns: readonly (readonly Item[])[];
}

/** What stands under one heading. */
export interface Group {
  /** The section that gives the heading; `null` for none. */
  readonly heading: SectionName | null;
  /** What stands there. What its section has besides follows. */
  readonly rows: readonly Row[];
}

/** How the sections of a plan stand on paper; any other section follows in the order of its report. */
export const LAYOUT: readonly Group[] = [
  { heading: null, rows: [{ style: "", columns: [["glance.not-ready", "glance.measures"]] }] },
  {
    heading: "frame",
    rows: [
      {
        style: "frame",
        columns: [
          ["frame.above", "contents"],
          ["frame.section", "frame.lengths", "materials.molding", "hangers"],
        ],
      },
    ],
  },
  { heading: "stock", rows: [] },
  { heading: "hazards", rows: [] },
  {
    heading: "saw",
    rows: [
      { style: "", columns: [["saw.saw", "saw.no-lay", "saw.lies", "saw.order"]] },
      { style: "scales", columns: [["saw.settings", "saw.lays"], ["proof"]] },
      { style: "step", columns: [["cradle.heading", "cradle.make"], ["cradle.cradle"]] },
      { style: "", columns: [["steps.steps"]] },
    ],
  },
  {
    heading: "checks",
    rows: [
      { style: "beside keep", columns: [["checks.checks"], ["gluing"]] },
      { style: "two", columns: [["trueness"], ["year"]] },
    ],
  },
  {
    heading: "panel",
    rows: [
      {
        style: "panel keep",
        columns: [
          ["panel.blank", "panel.cuts", "panel.corners", "panel.more-corners"],
          ["panel.panel"],
          ["panel.panel-cut"],
        ],
      },
    ],
  },
  {
    heading: "pane",
    rows: [{ style: "beside keep", columns: [["pane.pane", "pane.corners", "pane.more-corners"], ["pane.panel"]] }],
  },
];

/** How a figure is drawn: the width that it aims at, and whether its signs are explained below it. */
export interface FigureShape {
  /** Width, in units of the drawing. */
  readonly width: number;
  /** Whether it has a key. */
  readonly key: boolean;
}

const WIDE: FigureShape = { width: 660, key: true };

/** The shape of every figure by its place; any other is as wide as the paper. */
const SHAPES: Readonly<Record<string, FigureShape>> = {
  // Less than half the sheet, so that the frame fits on one page with the rest.
  "frame.above": { width: 216, key: true },
  // Less than its column, so that what stands below it stays on the page.
  "frame.section": { width: 230, key: false },
  "steps.cut": { width: 310, key: true },
  "steps.piece": { width: 260, key: false },
  "cradle.cradle": { width: 220, key: false },
  "panel.panel": { width: 190, key: false },
  "pane.panel": { width: 190, key: false },
  "panel.panel-cut": { width: 180, key: true },
  "stock.stock": { width: 700, key: true },
};

/** The shape of a figure at its place. */
export function shapeOf(section: SectionName, figure: string): FigureShape {
  return SHAPES[`${section}.${figure}`] ?? WIDE;
}

/** Tables that hold names of the caller, which may be words of any length and break anywhere. */
export const TABLES_WITH_NAMES: readonly string[] = ["lengths", "layers", "cut-list"];
