import type { Stretch } from "../job/stock-job.js";

/**
 * Equal pieces that follow one another in a stick, or one piece alone. `start` and `end` are those of the first; piece k, from 0, lies `k * pitch` further on.
 *
 * Where sequences follow one another, each part has one record: the records have the same `count`, and their `pitch` is that from sequence to sequence.
 */
export interface PlacedPiece extends Stretch {
  /** Id of the piece. */
  readonly piece: string;
  /** For a sequence: which of its parts, from 0. */
  readonly part?: number;
  /** How many there are, an integer from 1. */
  readonly count: number;
  /** From the start of one to the start of the next: length and kerf, less what a shared cut saves. Missing where there is one only. */
  readonly pitch?: number;
}

/** How to cut one stick, and how many sticks to cut that way. */
export interface StockLayout {
  /** Id of the stick. */
  readonly stick: string;
  /** How many sticks are cut so, from 1. */
  readonly times: number;
  /** The pieces from the stick's start to its end, equal neighbors together. Two that share a slanted cut overlap by what they save beyond the kerf. */
  readonly pieces: readonly PlacedPiece[];
  /**
   * Length of the longest offcut, 0 if there is none. It lies between the last saw cut and the defect or the stick's end that follows; of the end's `trim` it
   * loses what is more than one kerf, since the cut in it is not made behind an offcut.
   */
  readonly offcut: number;
  /** The offcuts of at least `keep`. */
  readonly kept: readonly Stretch[];
}

/** How many of one piece. */
export interface PieceCount {
  /** The piece's id. */
  readonly piece: string;
  /** How many, 1 or more. */
  readonly count: number;
}

/** How many of one kind of stick. */
export interface StickCount {
  /** The stick's id. */
  readonly stick: string;
  /** How many, 1 or more. */
  readonly count: number;
}

/**
 * A plan for a {@link StockJob}.
 *
 * `optimal`: every piece is placed and no plan costs less; a lower bound computed in integers equals the cost. `feasible`:
 * every piece is placed, and the cheapest plan costs between `bound` and `cost`. `short`: the limited sticks ran out.
 */
export interface StockFit {
  /** Which form of fit it is. `verifyFit`, drawings and sheets refuse a fit of another. */
  readonly schemaVersion: 1;
  /** How good the plan is. */
  readonly status: "optimal" | "feasible" | "short";
  /** The layouts. */
  readonly layouts: readonly StockLayout[];
  /** The sum of the used sticks' costs, less `credit` times the length of every kept offcut. */
  readonly cost: number;
  /** No plan that makes every piece costs less. When `short`: nothing is claimed, and it is the smaller of 0 and `cost`. */
  readonly bound: number;
  /** (cost - bound) over the larger magnitude of the two, 0 when they are equal; 1 when `short`. */
  readonly relativeGap: number;
  /** Grid on which the plan was computed, in the job's unit. */
  readonly resolution: number;
  /** Pieces for which there was no room; empty unless `short`. */
  readonly unplaced: readonly PieceCount[];
  /** When `short`: whether it is proven that no plan makes every piece. */
  readonly shortage?: "proven" | "not-found";
  /** Why the search ended early: a limit, or `onProgress`. Missing when it ended by itself. */
  readonly stopped?: StopReason;
  /** How many sticks of each kind are used, in the job's order, those that are not used left out. */
  readonly sticks: readonly StickCount[];
  /** Total length of the sticks used. */
  readonly sticksLength: number;
  /** Total length of the pieces made. */
  readonly piecesLength: number;
  /** Total length of the kept offcuts. */
  readonly keptLength: number;
  /** What is neither piece nor kept offcut: `sticksLength` - `piecesLength` - `keptLength`, 0 at least (where pieces share cuts, they can be longer than their sticks). */
  readonly wasteLength: number;
}

/** Why a search ended before its proof. */
export type StopReason = "time" | "steps" | "asked";
