import { isolate } from "../../core/isolate.js";
import type { StockWords } from "../catalog/stock-words.js";

/** What to call a piece of a stock job: the word for a frame's own pieces, else the name that the caller gave. */
export function pieceLabel(id: string, { pieceNames }: StockWords): string {
  return Object.hasOwn(pieceNames, id) ? pieceNames[id]! : isolate(id);
}
