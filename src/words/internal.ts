/** What other modules of the library use of this one, and no entry shows. */
export { heedText } from "./heed-text.js";
export { numberingText } from "./numbering-text.js";
export { quantityText } from "./quantity-text.js";
