/** What other modules of the library use of this one, and no entry shows. */
export { element, join, type Markup } from "./html/html.js";
export { writeBlock, type BlockStyle } from "./html/write-block.js";
export { storedReport } from "./stored-report.js";
