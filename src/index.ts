/**
 * Every module at one address, but for the high-precision ones.
 *
 * @module
 */
export * from "./errors/index.js";
export * from "./units/index.js";
export * from "./polygon/index.js";
export * from "./miter/index.js";
export * from "./profile/index.js";
export * from "./wood/index.js";
export * from "./stock/index.js";
export * from "./saw/index.js";
export * from "./panel/index.js";
export * from "./closure/index.js";
export * from "./frame/index.js";
export * from "./words/index.js";
export * from "./drawing/index.js";
export * from "./report/index.js";
export * from "./sheet/index.js";
