import { escapeText } from "./markup.js";

/** What a figure shows. */
export type FigureName = "above" | "section" | "piece" | "cut" | "cradle" | "panel" | "panel-cut" | "stock";

/** What an element of a drawing is, as its `data-part` says. */
export type DrawingPart =
  // In every drawing.
  | "paper"
  | "dimension"
  | "arrow"
  | "extension"
  | "leader"
  | "label"
  | "remark"
  | "number"
  | "key"
  // The frame seen from above.
  | "wood"
  | "side"
  | "joint"
  | "arris"
  | "outermost"
  | "innermost"
  | "opening"
  | "contained"
  | "sheet"
  // A side cut across, and the cradle.
  | "section"
  | "unknown-section"
  | "layer"
  | "slope"
  | "level"
  | "back"
  | "bench"
  | "ground"
  | "wedge"
  | "ledge"
  | "base"
  | "gravity"
  // The piece, and the cuts.
  | "face"
  | "cut"
  | "end-grain"
  | "left-out"
  | "break"
  | "tape"
  | "hook"
  | "pencil"
  | "square"
  | "fence"
  | "stop"
  | "table"
  | "blade-path"
  | "blade"
  | "kept"
  | "kept-side"
  | "off-side"
  // The panel and its cuts.
  | "blank"
  | "panel"
  | "existing"
  | "sawn"
  | "corner"
  | "gauge"
  // The sticks.
  | "stick"
  | "piece"
  | "pieces"
  | "kept-offcut";

/** What a dimension states, as its `data-measure` says. */
export type DrawingMeasure =
  | "side"
  | "acrossFlats"
  | "acrossCorners"
  | "opening"
  | "levelWidth"
  | "lap"
  | "jointWidth"
  | "height"
  | "depth"
  | "slope"
  | "longest"
  | "shortest"
  | "tape"
  | "miter"
  | "bevel"
  | "levelRun"
  | "rise"
  | "width"
  | "setting";

/** What of the data an element shows; each but `null` stands in the attribute of its name. Indexes count from 0, as in the data. */
interface ShownData {
  readonly side?: number;
  readonly corner?: number;
  readonly arris?: string | null;
  readonly measure?: DrawingMeasure;
  readonly end?: "start" | "end";
  readonly body?: "piece" | "kept" | "offcut";
  readonly layer?: number;
  readonly step?: number;
  readonly layout?: number;
  readonly stick?: string | null;
  readonly piece?: string | null;
}

/** What an element is, and what of the data it shows. */
export type Meaning = DrawingPart | ({ readonly part: DrawingPart } & ShownData);

/** The attributes by which a program finds what an element stands for. */
export function meaningAttributes(meaning: Meaning): string {
  const given = typeof meaning === "string" ? { part: meaning } : meaning;
  return Object.entries(given)
    .map(([name, value]) =>
      value === null || value === undefined ? "" : ` data-${name}="${escapeText(String(value))}"`,
    )
    .join("");
}
