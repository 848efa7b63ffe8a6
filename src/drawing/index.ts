/**
 * Pictures and tables of what the other modules computed: printable SVG, and tables as HTML, Markdown and plain text, with labels through formatters that are
 * passed in.
 *
 * @module
 */
export type { Drawing, SvgElement } from "./drawing.js";
export type { PageDocument } from "./rich-display.js";
export type { DrawingOptions } from "./drawing-options.js";
export type { SawingToDraw, FrameToDraw } from "./read-frame.js";
export { drawPlanView } from "./plan-view.js";
export { drawSection } from "./section-view.js";
export { drawPiece } from "./piece-view.js";
export { drawCut, type CutOptions } from "./cut-view.js";
export { drawCradle } from "./cradle-view.js";
export { drawPanel } from "./panel-view.js";
export { drawPanelCut, type PanelCutOptions } from "./panel-cut-view.js";
export { drawStock } from "./stock-view.js";
export type { CellKind, TableColumn, TableData } from "./table-data.js";
export type { Table, TableElement } from "./table.js";
export type { TableOptions } from "./table-options.js";
export { tabulate, type ColumnToWrite, type TableToWrite } from "./tabulate.js";
export { tabulatePolygons, type PolygonQuantity, type PolygonTableOptions } from "./polygon-table.js";
export { tabulateMiters, type MiterTableOptions } from "./miter-table.js";
export type { FrameTableOptions } from "./frame-table-options.js";
export { tabulateLengths } from "./length-table.js";
export { tabulateLays } from "./lay-table.js";
export { tabulateChecks } from "./check-table.js";
