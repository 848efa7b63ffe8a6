import type { Point } from "../core/geometry-types.js";
import type { FrameGeometry } from "../frame/index.js";
import type { Canvas } from "./canvas.js";
import type { AboveWords } from "../words/index.js";
import type { ReadyOptions } from "./drawing-options.js";

/** What the parts of a plan view share. */
export interface PlanSheet {
  /** The picture. */
  readonly canvas: Canvas;
  /** The frame. */
  readonly geometry: FrameGeometry;
  /** The formatters. */
  readonly options: ReadyOptions;
  /** The words. */
  readonly words: AboveWords;
  /** The corners of a polygon of the frame with this apothem, on the paper. */
  readonly corners: (apothem: number) => Point[];
  /** Apothem of the innermost edge. */
  readonly sight: number;
  /** Units of the paper per unit of length. */
  readonly scale: number;
}
