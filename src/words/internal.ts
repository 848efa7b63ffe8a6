/** What other modules of the library use of this one, and no entry shows. */
export { checkTellOptions, checkWords, type Telling } from "./tell-options.js";
export { englishAbove } from "./catalog/drawings/above-words.js";
export { englishSectionDrawing } from "./catalog/drawings/section-words.js";
export { englishPieceDrawing } from "./catalog/drawings/piece-words.js";
export { englishCutDrawing } from "./catalog/drawings/cut-words.js";
export { englishCradleDrawing } from "./catalog/drawings/cradle-words.js";
export { englishPanelDrawing } from "./catalog/drawings/panel-words.js";
export { englishPanelCutDrawing } from "./catalog/drawings/panel-cut-words.js";
export { englishNumbering } from "./catalog/label-words.js";
export { englishSaws } from "./catalog/saw-words.js";
export { englishStock } from "./catalog/stock-words.js";
export { englishTables } from "./catalog/table-words.js";
export { pieceLabel } from "./texts/piece-label.js";
export { heedText } from "./texts/heed-text.js";
