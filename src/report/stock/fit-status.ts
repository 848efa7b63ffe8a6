import type { StockFit } from "../../stock/index.js";
import { pieceLabel } from "../../words/internal.js";
import type { Pen } from "../pen.js";

/** That some pieces are missing, and which. */
export function shortageText({ shortage, unplaced }: StockFit, { words }: Pen): string {
  const missing = unplaced.map(({ piece, count }) => `${count} × ${pieceLabel(piece, words.stock)}`).join(", ");
  return words.stock.status.short({ isProven: shortage === "proven", missing });
}

/** How good the fit is, in the words of its proof. */
export function statusText(fit: StockFit, pen: Pen): string {
  const { status, relativeGap, stopped = null } = fit;
  const { optimal, feasible } = pen.words.stock.status;
  if (status === "optimal") return optimal;
  if (status === "feasible") return feasible({ saved: pen.formats.percent(100 * relativeGap), stopped });
  return shortageText(fit, pen);
}
