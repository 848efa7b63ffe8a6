import type { Point } from "../core/geometry-types.js";
import type { FrameGeometry } from "../frame/index.js";
import type { SectionDrawingWords } from "../words/index.js";
import type { Canvas } from "./canvas.js";
import type { ReadyOptions } from "./drawing-options.js";

/** What the parts of a section view share. */
export interface SectionSheet {
  /** The picture. */
  readonly canvas: Canvas;
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** The formatters. */
  readonly options: ReadyOptions;
  /** The words. */
  readonly words: SectionDrawingWords;
  /** A point of the section as it stands in the frame, on the paper. */
  readonly toPaper: (out: number, up: number) => Point;
  /** Height of the bench on the paper. */
  readonly bench: number;
}
