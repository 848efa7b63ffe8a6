/**
 * The printable page: reports on paper, above all the shop sheet of a frame.
 *
 * @module
 */
export type { FigureShape } from "./layout.js";
export { reportSheet, type Paper, type PaperOptions, type ReportSheetOptions } from "./report-sheet.js";
export { shopSheet, type SheetOptions } from "./shop-sheet.js";
