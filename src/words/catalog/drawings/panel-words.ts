import type { BlankEdge } from "../panel-words.js";

/** A panel in its blank. Lengths come as texts. */
export interface PanelDrawingWords {
  /** The drawing's title. */
  readonly title: (values: { readonly sides: number }) => string;
  /** What is seen, in a sentence. */
  readonly seen: (values: { readonly sides: number; readonly width: string; readonly height: string }) => string;
  /** Which of its sides, numbered from 1, are edges of the blank, in a sentence. */
  readonly onEdges: (values: { readonly sides: readonly number[] }) => string;
  /** A cut by its number. */
  readonly cut: (values: { readonly step: number }) => string;
  /** The outline of the blank. */
  readonly blank: string;
  /** The heavy sides. */
  readonly existing: string;
  /** How far a corner lies from two edges of the blank. */
  readonly corner: (values: {
    readonly fromSide: { readonly distance: string; readonly edge: BlankEdge };
    readonly fromBase: { readonly distance: string; readonly edge: BlankEdge };
  }) => string;
}

/** A panel in its blank, in English. */
export const englishPanelDrawing: PanelDrawingWords = {
  title: ({ sides }) => `Panel of ${sides} sides in its panel blank`,
  seen: ({ sides, width, height }) =>
    `A panel of ${sides} sides, front up, in a panel blank ${width} wide and ${height} high.`,
  onEdges: ({ sides }) => {
    if (sides.length === 0) return "None of its sides is an edge of the panel blank.";
    return sides.length === 1
      ? `Its side ${sides[0]!} is an edge of the panel blank.`
      : `Its sides ${sides.slice(0, -1).join(", ")} and ${sides.at(-1)!} are edges of the panel blank.`;
  },
  cut: ({ step }) => `cut ${step}`,
  blank: "panel blank",
  existing: "sides that the panel blank has already",
  corner: ({ fromSide, fromBase }) =>
    `${fromSide.distance} from the ${fromSide.edge} edge, ${fromBase.distance} from the ${fromBase.edge}`,
};
