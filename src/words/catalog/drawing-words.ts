import { englishAbove, type AboveWords } from "./drawings/above-words.js";
import { englishSectionDrawing, type SectionDrawingWords } from "./drawings/section-words.js";
import { englishPieceDrawing, type PieceDrawingWords } from "./drawings/piece-words.js";
import { englishCutDrawing, type CutDrawingWords } from "./drawings/cut-words.js";
import { englishCradleDrawing, type CradleDrawingWords } from "./drawings/cradle-words.js";
import { englishPanelDrawing, type PanelDrawingWords } from "./drawings/panel-words.js";
import { englishPanelCutDrawing, type PanelCutDrawingWords } from "./drawings/panel-cut-words.js";

/** Every text in drawings that no other area has. */
export interface DrawingWords {
  /** The frame seen from above. */
  readonly above: AboveWords;
  /** A side cut across. */
  readonly section: SectionDrawingWords;
  /** A finished piece. */
  readonly piece: PieceDrawingWords;
  /** A step at the saw. */
  readonly cut: CutDrawingWords;
  /** The cradle. */
  readonly cradle: CradleDrawingWords;
  /** A panel in its blank. */
  readonly panel: PanelDrawingWords;
  /** A cut of the panel. */
  readonly panelCut: PanelCutDrawingWords;
}

/** In English. */
export const englishDrawings: DrawingWords = {
  above: englishAbove,
  section: englishSectionDrawing,
  piece: englishPieceDrawing,
  cut: englishCutDrawing,
  cradle: englishCradleDrawing,
  panel: englishPanelDrawing,
  panelCut: englishPanelCutDrawing,
};
