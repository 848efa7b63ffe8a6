import { count, finite, list, maybe, record, text, word, type Fields, type Reader } from "../../core/stored.js";
import { checkVersion } from "../../core/schema-version.js";
import type { PieceCount, StickCount, PlacedPiece, StockFit, StockLayout, StopReason } from "./stock-fit.js";
import type { Stretch } from "../job/stock-job.js";

const STRETCH: Fields<Stretch> = { start: finite, end: finite };
const PLACED_PIECE: Fields<PlacedPiece> = {
  piece: text,
  part: (value, path) => maybe(value, path, count),
  count,
  pitch: (value, path) => maybe(value, path, finite),
  start: finite,
  end: finite,
};
const LAYOUT: Fields<StockLayout> = {
  stick: text,
  times: count,
  pieces: (value, path) => list(value, path, (placed, at) => record(placed, at, PLACED_PIECE)),
  offcut: finite,
  kept: (value, path) => list(value, path, (rest, at) => record(rest, at, STRETCH)),
};
const PIECES: Fields<PieceCount> = { piece: text, count };
const STICKS: Fields<StickCount> = { stick: text, count };
const REASONS: Readonly<Record<StopReason, true>> = { time: true, steps: true, asked: true };
const FIT: Fields<StockFit> = {
  schemaVersion: (value, path) => checkVersion(value, path ?? "", "fit"),
  status: (value, path) => word(value, path, { optimal: true, feasible: true, short: true }),
  layouts: (value, path) => list(value, path, (layout, at) => record(layout, at, LAYOUT)),
  cost: finite,
  bound: finite,
  relativeGap: finite,
  resolution: finite,
  unplaced: (value, path) => list(value, path, (one, at) => record(one, at, PIECES)),
  shortage: (value, path) => maybe(value, path, (v, p) => word(v, p, { proven: true, "not-found": true })),
  stopped: (value, path) => maybe(value, path, (v, p) => word(v, p, REASONS)),
  sticks: (value, path) => list(value, path, (one, at) => record(one, at, STICKS)),
  sticksLength: finite,
  piecesLength: finite,
  keptLength: finite,
  wasteLength: finite,
};

/** What `fitStock` made of a job. Whether it is a plan for the job is not looked at. */
export const stockFit: Reader<StockFit> = (value, path) => record(value, path, FIT);
