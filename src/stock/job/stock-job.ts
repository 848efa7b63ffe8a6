import type { OneOf } from "../../core/geometry-types.js";

/** Pieces that share a slanted cut with a neighbor of the same key; see {@link StockPiece}. */
export interface ShareKey {
  /** Pieces of one key share cuts with each other, pieces of different keys don't. */
  readonly key: string;
  /**
   * Length saved in every gap between two neighbors of this key, in the job's unit; from 0 to half the length of the shortest piece of the key, so that its two
   * neighbors do not reach each other, and the same for all of them. With a joint width W and a plan miter h it is W tan h.
   */
  readonly saving: number;
}

/**
 * A piece to be cut, or a sequence of pieces that must come out of one stick, next to each other and in order.
 *
 * Give `length` for a piece and `sequence` for a sequence of them. A sequence counts as one piece: `count` says how many such sequences, and it is
 * placed as a whole or not at all.
 */
export type StockPiece = OneOf<{
  /** Length along the stick, long point to long point, 1e-100 to 1e100. */
  length: number;
  /** Lengths of a sequence's parts in their order along the stick, at least one. */
  sequence: readonly number[];
}> & {
  /** Name, unique among the pieces. */
  readonly id: string;
  /** How many; an integer from 0 to 1e9. Default 1. */
  readonly count?: number | undefined;
  /** What two neighbors save by sharing a slanted cut. Not for sequences: a shared cut rolls the stick between two pieces. */
  readonly share?: ShareKey | undefined;
};

/** A stretch of a stick, measured from the stick's start in the job's unit. */
export interface Stretch {
  /** Where it starts, included. */
  readonly start: number;
  /** Where it ends, included. */
  readonly end: number;
}

/** A kind of stick that can be bought, or lies in the rack. */
export interface StockStick {
  /** Name, unique among the sticks. */
  readonly id: string;
  /** Length, 1e-100 to 1e100. */
  readonly length: number;
  /** How many there are; an integer from 0 to 1e9. Default: as many as needed, or 1 if the stick has defects. */
  readonly count?: number | undefined;
  /**
   * What using one costs: a number for the whole stick, 0 to 1e100 in any currency. It is never an amount per length, for `stock` knows no units. Default: its
   * length. Give every stick 1 for the fewest sticks.
   */
  readonly cost?: number | undefined;
  /** Stretches that no piece may reach into, such as knots; each counts as one kerf wide at least. Default none. */
  readonly defects?: readonly Stretch[] | undefined;
}

/** What is lost at the two ends of every stick, the saw cut included. Behind an offcut that cut is not made. */
export interface Trims {
  /** At its start, from 0. */
  readonly start: number;
  /** At its end, from 0. */
  readonly end: number;
}

/** What is to be cut, and from what. All lengths are in one unit of the caller's. */
export interface StockJob {
  /** The pieces; may be empty. */
  readonly pieces: readonly StockPiece[];
  /** The sticks; at least one. */
  readonly sticks: readonly StockStick[];
  /** Length that a saw cut takes away along the stick, from 0. A mitered cut takes kerf / cos(180/n). Default 0. */
  readonly kerf?: number | undefined;
  /** Length lost at each end of a stick, the saw cut included, from 0; or one length for each end. Default 0. */
  readonly trim?: number | Trims | undefined;
  /** Shortest offcut worth keeping, from 0. Default: every offcut if there is a `credit`, else none. */
  readonly keep?: number | undefined;
  /** What an offcut that is kept is worth per length, from 0 in the unit of the costs. Default 0: it is only listed. */
  readonly credit?: number | undefined;
  /**
   * Grid on which to compute: pieces, kerf and trims are rounded up to it and sticks down. Default: the coarsest grid
   * that holds all lengths exactly, or a fine one if there is none.
   */
  readonly resolution?: number | undefined;
  /** Which form of job it is, for jobs that are stored; default 1, the only one that is known here. */
  readonly schemaVersion?: 1 | undefined;
}
