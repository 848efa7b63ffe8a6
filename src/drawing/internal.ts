/** What other modules of the library use of this one, and no entry shows. */
export { arrisLetters } from "./arris-letters.js";
export { hiddenCorners } from "./hidden-corners.js";
export { layoutText, piecesText, summarizeLayouts } from "./layout-summary.js";
export { escapeText, oneLine } from "./markup.js";
export { readFrame, readGeometry, readSawing, type FrameToTell } from "./read-frame.js";
export { freezeShowing, type PageDocument } from "./rich-display.js";
