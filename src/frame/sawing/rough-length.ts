import type { EndCut } from "../../miter/index.js";
import type { StockStick } from "../../stock/index.js";
import type { RoughMethod } from "../brief/brief.js";
import { checkLength, checkObject, checkWord } from "../../core/check.js";

/** Checks how pieces are parted from the stick. */
export function checkRough(value: unknown): RoughMethod {
  const rough = checkObject(value, "rough");
  const method = checkWord(rough["method"], "rough.method", ["none", "square", "mitered"]);
  if (method === "none") return { method };
  return { method, allowance: checkLength(rough["allowance"], "rough.allowance") };
}

/** What a piece takes of its stick before it is finished. */
export interface RoughPiece {
  /** How pieces are parted from the stick. */
  readonly method: RoughMethod["method"];
  /** Length of the piece as it comes off the stick, along its longest arris; the finished length where every end is cut on the stick. */
  readonly length: number;
  /** Stick that one more piece uses up: its length and one cut. */
  readonly pitch: number;
  /** What one parting cut takes of the stick's length: the kerf, or kerf / cos(180/n) where it is mitered. */
  readonly kerfAlong: number;
}

/**
 * What one piece takes of the stick.
 *
 * A cut takes kerf / |plane.along| of the stick's length, whatever the lay. Cut direct, a piece has the pitch L + kerf / cos h; crosscut square
 * L + 2 allowance + kerf; parted with the finished cut of one end L + allowance + kerf / cos h.
 */
export function roughPiece(longest: number, cut: EndCut, kerf: number, rough: RoughMethod): RoughPiece {
  const mitered = kerf / Math.abs(cut.plane.along);
  const { method } = rough;
  if (method === "none") return { method, length: longest, pitch: longest + mitered, kerfAlong: mitered };
  const length = longest + (method === "square" ? 2 : 1) * rough.allowance;
  const kerfAlong = method === "square" ? kerf : mitered;
  return { method, length, pitch: length + kerfAlong, kerfAlong };
}

/** Whether none of the sticks on offer is long enough for a piece between its two trimmed ends. */
export function sticksTooShort(sticks: readonly StockStick[], piece: RoughPiece): boolean {
  return sticks.length > 0 && sticks.every(({ length }) => length < piece.length + 2 * piece.kerfAlong);
}
