/**
 * The shop sheet: one printable page of a plan and of how its sticks are cut up.
 *
 * @module
 */
export { shopSheet } from "./shop-sheet.js";
export type { SheetOptions } from "./sheet-options.js";
