/**
 * Fits pieces into sticks at least cost, with a proof or a bound.
 *
 * @module
 */
export { verifyFit, type FitVerdict, type FitFails, type FitHolds } from "./verify/verify-fit.js";
export { parseStockJob, stockJobSchema, tryParseStockJob } from "./job/parse-stock-job.js";
export type { FitAsyncOptions, FitOptions, FitProgress, FitSignal } from "./fit-options.js";
export { fitStock } from "./fit-stock.js";
export { fitStockAsync } from "./fit-stock-async.js";
export type { FitFault } from "./verify/inspection.js";
export type { PieceCount, StickCount, PlacedPiece, StockFit, StockLayout, StopReason } from "./fit/stock-fit.js";
export type { ShareKey, StockJob, StockPiece, StockStick, Stretch, Trims } from "./job/stock-job.js";
