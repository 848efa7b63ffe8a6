import type { Operation } from "../../../frame/index.js";
import type { MeasuredLabel } from "./measured-label.js";

/** How an end of a piece is cut. Angles come as texts. */
export interface EndValues {
  /** Which end it is. */
  readonly end: "start" | "end";
  /** Its miter. */
  readonly miter: string;
  /** Its bevel; `null` where the blade is upright, `undefined` where no lay suits the saw. */
  readonly bevel: string | null | undefined;
}

/** A finished piece. Lengths and angles come as texts. */
export interface PieceDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly count: number }) => string;
  /** What is seen: with a view from the side where the blade leans; `lay` is `null` where the piece is drawn as it stands in the frame. */
  readonly seen: (values: { readonly isLeaning: boolean; readonly lay: string | null }) => string;
  /** For which lay the angles are, where the piece is not drawn as it lies. */
  readonly anglesFor: (values: { readonly lay: string }) => string;
  /** The longest and the shortest line, in a sentence. */
  readonly lines: (values: { readonly longest: string; readonly shortest: string }) => string;
  /** Both ends, in a sentence. */
  readonly ends: (values: { readonly ends: readonly EndValues[] }) => string;
  /** An end, in short lines one below the other. */
  readonly end: (values: EndValues) => readonly string[];
  /** The longest line. */
  readonly longest: MeasuredLabel;
  /** The shortest line. */
  readonly shortest: MeasuredLabel;
  /** Which surfaces of the stick are at the fence along an edge of the drawing, and at which cuts. */
  readonly atFence: (values: {
    readonly surfaces: readonly { readonly surface: string; readonly cuts: readonly Operation["kind"][] }[];
  }) => string;
  /** How the tape is laid: hooked over a long point, or between two pencil lines. `letter` names the edge in other drawings. */
  readonly tape: (values: {
    readonly hook: boolean;
    readonly edge: string;
    readonly letter: string | null;
    readonly length: string;
  }) => string;
}

function endLines({ end, miter, bevel }: EndValues): string[] {
  if (bevel === undefined) return [end, `miter ${miter}`];
  return [end, `miter ${miter}`, bevel === null ? "no bevel" : `bevel ${bevel}`];
}

/** A finished piece, in English. */
export const englishPieceDrawing: PieceDrawingWords = {
  title: ({ count }) => `Finished piece, one of ${count}`,
  seen: ({ isLeaning, lay }) =>
    `Seen from above${isLeaning ? " and, below it, from its outer edge" : ""}, ${lay === null ? "as it stands in the frame" : `as it lies on the saw, ${lay}`}; the frame's center is toward the top.`,
  anglesFor: ({ lay }) => `The angles are the saw's for the stick ${lay}.`,
  lines: ({ longest, shortest }) => `Longest line ${longest}, shortest ${shortest}.`,
  ends: ({ ends }) => `Its ends: ${ends.map((values) => endLines(values).join(", ")).join("; ")}.`,
  end: endLines,
  longest: ({ value }) => `longest ${value}`,
  shortest: ({ value }) => `shortest ${value}`,
  atFence: ({ surfaces }) => {
    const names = { crosscut: "crosscut", "first-end": "first end", "second-end": "second end" };
    return surfaces
      .map(({ surface, cuts }) => `${surface} at the fence: ${cuts.map((cut) => names[cut]).join(", ")}`)
      .join("; ");
  },
  tape: ({ hook, edge, letter, length }) => {
    const line = letter === null ? edge : `${edge} (${letter})`;
    return hook
      ? `Tape: hook it over a long point of the ${line} and read ${length} at the other.`
      : `Tape: square a pencil line to the piece at both long points of the ${line} and measure ${length} between the lines.`;
  },
};
