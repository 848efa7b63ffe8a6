import { checkArray, checkNumber, checkObject, refuse } from "../core/check.js";
import type { StockCut, StockFit, StockJob, StockLayout, StockPiece } from "../stock/index.js";

/** Equal pieces of one layout. */
export interface LayoutPieces {
  /** Id of the piece. */
  readonly piece: string;
  /** Length of one. */
  readonly length: number;
  /** How many come out of one stick. */
  readonly count: number;
}

/** A layout with the lengths that the job knows. */
export interface LayoutSummary {
  /** The layout. */
  readonly layout: StockLayout;
  /** Length of the stick. */
  readonly length: number;
  /** Its pieces, equal ones together, in the order of their first. */
  readonly pieces: readonly LayoutPieces[];
  /** The length of each cut's piece, as the job gives it. */
  readonly lengths: readonly number[];
}

function lengthOf(piece: StockPiece, cut: StockCut, path: string): number {
  const length = piece.run === undefined ? piece.length : piece.run[cut.part ?? 0];
  return checkNumber(length, `${path}.part`, 0, Number.MAX_VALUE, "a part of the piece");
}

function summarize(job: StockJob, layout: StockLayout, path: string): LayoutSummary {
  const stick = job.sticks.find(({ id }) => id === layout.stick);
  if (stick === undefined) return refuse("unknown", `${path}.stick`, layout.stick, "the id of a stick of the job");
  const pieces: { piece: string; length: number; count: number }[] = [];
  const lengths = layout.cuts.map((cut, index) => {
    const piece = job.pieces.find(({ id }) => id === cut.piece);
    if (piece === undefined)
      return refuse("unknown", `${path}.cuts[${index}].piece`, cut.piece, "the id of a piece of the job");
    const length = lengthOf(piece, cut, `${path}.cuts[${index}]`);
    const known = pieces.find((other) => other.piece === cut.piece && other.length === length);
    if (known === undefined) pieces.push({ piece: cut.piece, length, count: 1 });
    else known.count++;
    return length;
  });
  return { layout, length: stick.length, pieces, lengths };
}

/**
 * Brings a fit and its job together.
 *
 * @param job - the job
 * @param fit - a plan for it
 * @returns every layout with its lengths
 * @throws {InputError} when the plan is not one for the job
 */
export function summarizeLayouts(job: StockJob, fit: Pick<StockFit, "layouts">): LayoutSummary[] {
  const given = checkObject(job, "job");
  checkArray(given["sticks"], "job.sticks", "an array of sticks");
  checkArray(given["pieces"], "job.pieces", "an array of pieces");
  checkArray(checkObject(fit, "fit")["layouts"], "fit.layouts", "an array of layouts");
  return fit.layouts.map((layout, index) => {
    const path = `fit.layouts[${index}]`;
    checkArray(checkObject(layout, path)["cuts"], `${path}.cuts`, "an array of cuts");
    return summarize(job, layout, path);
  });
}

/**
 * A layout in words.
 *
 * @param summary - the layout
 * @param length - writes a length
 * @returns what is cut from the stick, how often, and what is left
 */
export function describeLayout(summary: LayoutSummary, length: (value: number) => string): string {
  const { layout, length: whole, pieces } = summary;
  const made = pieces.map(({ piece, length: size, count }) => `${count} × ${piece} ${length(size)}`);
  const kept = layout.kept.map(({ start, end }) => length(end - start));
  const times = layout.times === 1 ? "" : `${layout.times} times `;
  const left =
    kept.length > 0 ? `; keep ${kept.join(" and ")}` : layout.offcut > 0 ? `; offcut ${length(layout.offcut)}` : "";
  return `${times}${layout.stick} ${length(whole)}: ${made.join(", ")}${left}`;
}
