/** Height of letters, in units of the drawing. */
export const TEXT_SIZE: number = 11;
/** Height of the letters of small labels. */
export const SMALL_SIZE: number = 9.5;
/** From one line of text to the next. */
export const LINE_HEIGHT: number = 14;

/** From a figure to a label above it. */
export const LABEL_RISE: number = 8;

/** A color by what it is for, as `data-fill` and `data-stroke` say. */
export type DrawingInk = "ink" | "paper" | "accent" | "wood" | "end-grain" | "section" | "layer" | "next-layer" | "saw";

/** The colors of a drawing that stands alone. The accent is dark enough for a printer without colors. */
export const INKS: Readonly<Record<DrawingInk, string>> = {
  ink: "#1d1d1b",
  paper: "#fff",
  accent: "#0b5563",
  wood: "#f4ebdc",
  "end-grain": "#e3d3b7",
  section: "#f0e4cf",
  layer: "#fff",
  "next-layer": "#e2e6e6",
  saw: "#d9d9d6",
};

/** How a line or surface looks. What is not said is inherited from the drawing: no fill, ink, a line 1 wide. */
interface LookOf {
  readonly fill?: DrawingInk;
  readonly stroke?: DrawingInk | "none";
  readonly width?: string;
  readonly dashes?: string;
}

/** How a line or surface looks. */
export type Look =
  | "wood"
  | "end-grain"
  | "section"
  | "outline"
  | "heavy"
  | "fine"
  | "edge"
  | "hidden"
  | "phantom"
  | "thin"
  | "paper"
  | "layer"
  | "next-layer"
  | "dot"
  | "dimension"
  | "arrow"
  | "tape"
  | "blade"
  | "saw";

/** The looks by name. */
const LOOKS: Readonly<Record<Look, LookOf>> = {
  /** A surface along the grain. */
  wood: { fill: "wood", stroke: "none" },
  /** A sawn end. */
  "end-grain": { fill: "end-grain" },
  /** A section. */
  section: { fill: "section", width: "1.4" },
  /** A heavy outline. */
  outline: { width: "1.4" },
  /** An edge that stands out from others. */
  heavy: { width: "2.2" },
  /** An edge that others stand out from. */
  fine: { width: ".8" },
  /** An edge that is seen. */
  edge: {},
  /** An edge that is hidden. */
  hidden: { width: ".9", dashes: "5 3" },
  /** Something that is not part of the frame. */
  phantom: { width: ".9", dashes: "9 3 1.5 3" },
  /** A reference line, or hatching. */
  thin: { width: ".5" },
  /** Blank paper over what is below. */
  paper: { fill: "paper", stroke: "none" },
  /** A layer of the contents. */
  layer: { fill: "layer", width: ".8" },
  /** The next layer of the contents. */
  "next-layer": { fill: "next-layer", width: ".8" },
  /** A small solid dot. */
  dot: { fill: "ink", stroke: "none" },
  /** A line of a dimension. */
  dimension: { stroke: "accent", width: ".7" },
  /** An arrowhead. */
  arrow: { fill: "accent", stroke: "none" },
  /** A tape measure. */
  tape: { stroke: "accent", width: "1.6", dashes: "2 2.6" },
  /** The saw blade's path. */
  blade: { stroke: "accent", width: "1.8" },
  /** A part of the saw. */
  saw: { fill: "saw" },
};

/** The attributes of an ink: its color, and its name, by which a style sheet gives it another. */
export function inkAttributes(kind: "fill" | "stroke", ink: DrawingInk | "none"): string {
  return ink === "none" ? ` ${kind}="none"` : ` data-${kind}="${ink}" ${kind}="${INKS[ink]}"`;
}

/** The attributes of a look. */
export function lookAttributes(look: Look): string {
  const { fill, stroke, width, dashes } = LOOKS[look];
  return [
    fill === undefined ? "" : inkAttributes("fill", fill),
    stroke === undefined ? "" : inkAttributes("stroke", stroke),
    width === undefined ? "" : ` stroke-width="${width}"`,
    dashes === undefined ? "" : ` stroke-dasharray="${dashes}"`,
  ].join("");
}
