/** The one accent: dimensions and the tape. Dark enough for a printer without colors. */
export const ACCENT: string = "#0b5563";

/** Height of letters, in units of the drawing. */
export const TEXT_SIZE: number = 11;
/** Height of the letters of small labels. */
export const SMALL_SIZE: number = 9.5;
/** From one line of text to the next. */
export const LINE_HEIGHT: number = 14;

/** From a figure to a label above it. */
export const LABEL_RISE: number = 8;

/** How a line or surface looks. */
export type Look =
  /** A surface along the grain. */
  | "wood"
  /** A sawn end. */
  | "end-grain"
  /** A section. */
  | "section"
  /** A heavy outline. */
  | "outline"
  /** An edge that is seen. */
  | "edge"
  /** An edge that is hidden. */
  | "hidden"
  /** Something that is not part of the frame. */
  | "phantom"
  /** A reference line, or hatching. */
  | "thin"
  /** Blank paper over what is below. */
  | "paper"
  /** A layer of the contents. */
  | "layer"
  /** The next layer of the contents. */
  | "next-layer"
  /** A small solid dot. */
  | "dot"
  /** A line of a dimension. */
  | "dimension"
  /** An arrowhead. */
  | "arrow"
  /** A tape measure. */
  | "tape"
  /** The saw blade's path. */
  | "blade"
  /** A part of the saw. */
  | "saw";

/**
 * The attributes of every look. The drawing's own defaults are: no fill, ink, a line 1 wide.
 *
 * Ink (#1d1d1b) and the accent are written out: a table of computed texts would run at import.
 */
export const LOOKS: Readonly<Record<Look, string>> = {
  wood: ' fill="#f4ebdc" stroke="none"',
  "end-grain": ' fill="#e3d3b7"',
  section: ' fill="#f0e4cf" stroke-width="1.4"',
  outline: ' stroke-width="1.4"',
  edge: "",
  hidden: ' stroke-width=".9" stroke-dasharray="5 3"',
  phantom: ' stroke-width=".9" stroke-dasharray="9 3 1.5 3"',
  thin: ' stroke-width=".5"',
  paper: ' fill="#fff" stroke="none"',
  layer: ' fill="#fff" stroke-width=".8"',
  "next-layer": ' fill="#e2e6e6" stroke-width=".8"',
  dot: ' fill="#1d1d1b" stroke="none"',
  dimension: ' stroke="#0b5563" stroke-width=".7"',
  arrow: ' fill="#0b5563" stroke="none"',
  tape: ' stroke="#0b5563" stroke-width="1.6" stroke-dasharray="2 2.6"',
  blade: ' stroke="#0b5563" stroke-width="1.8"',
  saw: ' fill="#d9d9d6" stroke="#1d1d1b"',
};
