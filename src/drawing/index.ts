/**
 * Pictures of what the other modules computed: printable SVG with labels through a formatter that is passed in.
 *
 * @module
 */
export type { Drawing, SvgDocument, SvgElement } from "./drawing.js";
export type { DrawingOptions } from "./drawing-options.js";
export type { CuttingToDraw, FrameToDraw } from "./read-frame.js";
export { drawPlanView } from "./plan-view.js";
export { drawSection } from "./section-view.js";
export { drawStick } from "./stick-view.js";
export { drawCut, type CutOptions } from "./cut-view.js";
export { drawCradle } from "./cradle-view.js";
export { drawPanel } from "./panel-view.js";
export { drawPanelCut, type PanelCutOptions } from "./panel-cut-view.js";
export { drawStock } from "./stock-view.js";
