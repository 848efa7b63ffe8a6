import type { Pose } from "../../../core/geometry-types.js";
import type { MeasuredLabel } from "./measured-label.js";

/** The frame seen from above. Lengths come as texts. */
export interface AboveWords {
  /** The drawing's title. */
  readonly title: (values: { readonly sides: number }) => string;
  /** What is seen, in a sentence. */
  readonly seen: (values: { readonly sides: number; readonly pose: Pose }) => string;
  /** The dimensions of the outermost edge, in a sentence; each is one of the labels below. */
  readonly outermost: (values: { readonly measures: readonly string[] }) => string;
  /** The opening's size, in a sentence. */
  readonly openingSize: (values: { readonly width: string; readonly height: string }) => string;
  /** A side of the outermost edge. */
  readonly side: MeasuredLabel;
  /** The outermost edge across flats. */
  readonly acrossFlats: MeasuredLabel;
  /** The outermost edge across corners. */
  readonly acrossCorners: MeasuredLabel;
  /** The opening's height. */
  readonly opening: MeasuredLabel;
  /** The dashed line of an opening under the lip. */
  readonly openingUnderLip: (values: { readonly side: string }) => string;
  /** What the frame must hold. */
  readonly contained: (values: {
    readonly width: string;
    readonly height: string;
    readonly isDrawn: boolean;
  }) => string;
  /** The sheet that the panel is cut from. */
  readonly sheet: (values: { readonly width: string; readonly height: string; readonly isDrawn: boolean }) => string;
  /** Joints of which not all are drawn. */
  readonly joints: (values: { readonly sides: number; readonly every: number }) => string;
}

/** The frame seen from above, in English. */
export const englishAbove: AboveWords = {
  title: ({ sides }) => `Frame of ${sides} sides seen from above`,
  seen: ({ sides, pose }) =>
    `A frame of ${sides} sides that stands on a ${pose === "side-down" ? "side" : "corner"}, seen from above.`,
  outermost: ({ measures }) => `Outermost edge: ${measures.join(", ")}.`,
  openingSize: ({ width, height }) => `Opening: ${width} wide and ${height} high.`,
  side: ({ value }) => `side ${value}`,
  acrossFlats: ({ value }) => `across flats ${value}`,
  acrossCorners: ({ value }) => `across corners ${value}`,
  opening: ({ value }) => `opening ${value}`,
  openingUnderLip: ({ side }) => `Opening where the contents touch, under the lip: side ${side}.`,
  contained: ({ width, height, isDrawn }) =>
    `The frame must hold ${width} × ${height}${isDrawn ? "" : ", which is not drawn"}.`,
  sheet: ({ width, height, isDrawn }) =>
    `The panel is cut from a sheet of ${width} × ${height}${isDrawn ? "" : ", which is not drawn"}.`,
  joints: ({ sides, every }) => `Of ${sides} joints one in ${every} is drawn.`,
};
