/** What other modules of the library use of this one, and no entry shows. */
export { checkTellOptions, checkWords, type Telling } from "./tell-options.js";
export {
  englishAbove,
  englishCradleDrawing,
  englishCutDrawing,
  englishPanelCutDrawing,
  englishPanelDrawing,
  englishPieceDrawing,
  englishSectionDrawing,
} from "./catalog/drawing-words.js";
export { englishNumbering } from "./catalog/label-words.js";
export { englishSaws } from "./catalog/saw-words.js";
export { englishStock } from "./catalog/stock-words.js";
export { englishTables } from "./catalog/table-words.js";
export { pieceLabel } from "./texts/piece-label.js";
export { heedText } from "./texts/heed-text.js";
