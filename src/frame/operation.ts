import type { CutPlacement, StopContact } from "../saw/index.js";
import type { MeasureAlong } from "./measure-along.js";

/** What an operation does to the stick. */
export type OperationKind =
  /** Crosscuts a rough piece off the stick. */
  | "crosscut"
  /** Cuts the first end of a piece. */
  | "first-end"
  /** Cuts the second end and so gives the piece its length. */
  | "second-end";

/** One instruction for a person at the saw. */
export interface Operation {
  /** Its place in the order of work, from 1. */
  readonly step: number;
  /** What it does. */
  readonly kind: OperationKind;
  /** How many times it is done. */
  readonly times: number;
  /** Which way the stick lies, which edge is at the fence, how the saw is set and which side is kept. */
  readonly placement: CutPlacement;
  /** How the stick comes from where the operation before left it; `null` for a fresh stick. */
  readonly move: "flip end for end" | "slide past the blade" | null;
  /** Where the stop touches the other, finished end; `null` without a stop or without a known section. */
  readonly stop: StopContact | null;
  /** The length to set, and along which arris; `null` where the cut only trims an end. */
  readonly measure: MeasureAlong | null;
  /** Codes of the cautions that bear on this operation. */
  readonly cautions: readonly string[];
}
