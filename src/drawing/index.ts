/**
 * Pictures of what the other modules computed, as printable SVG; their numbers go through formatters that are passed in, their texts through a catalog of words.
 *
 * @module
 */
export type { Drawing, SvgElement } from "./drawing.js";
export type { PageDocument } from "./rich-display.js";
export type { DrawingOptions } from "./drawing-options.js";
export type { DrawnContents, FrameToDraw, FrameToTell, SawingToDraw } from "./read-frame.js";
export { drawPlanView } from "./plan-view.js";
export { drawSection } from "./section-view.js";
export { drawPiece } from "./piece-view.js";
export { drawCut, type CutOptions } from "./cut-view.js";
export { drawCradle } from "./cradle-view.js";
export { drawPanel } from "./panel-view.js";
export { drawPanelCut, type PanelCutOptions } from "./panel-cut-view.js";
export { drawStock } from "./stock-view.js";
export { drawFigure, type FigureBlock, type DrawnPlan } from "./draw-figure.js";
export { drawingStyles } from "./drawing-styles.js";
export type { DrawingInk } from "./looks.js";
export type { DrawingMeasure, DrawingPart, FigureName } from "./parts.js";
