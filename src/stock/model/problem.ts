import { sumOf } from "../sums.js";
import { gcd, type Grid } from "./grid.js";

/** A kind of stick, as the search sees it. */
export interface Kind {
  /** Index of the stick in the model. */
  readonly stick: number;
  /** Room of each clear stretch: its length and one kerf, since the last piece's kerf may hang over. */
  readonly rooms: readonly number[];
  /** For each room what it loses of what is left in it before that is an offcut: a kerf, less what the trim holds of one. */
  readonly losses: readonly number[];
  /** Cost in steps of the cost grid. */
  readonly cost: number;
  /** How many there are, Infinity for as many as needed. */
  readonly limit: number;
}

/**
 * The problem in bare integers: cover the demand for items by sticks at least cost.
 *
 * With n pieces in a stretch there are n - 1 kerfs between them, so each piece takes its length and one kerf, and the
 * stretch has its length and one kerf. Where m pieces have one share key, the first also takes the key's saving, and each of them
 * that much less. Both are exact.
 */
export interface Problem {
  /** What each item takes, largest first; for items of a share key, less the saving. */
  readonly sizes: Float64Array;
  /** How many of each. */
  readonly demand: Float64Array;
  /** Share key of each item as an index into `setups`, or -1. */
  readonly keys: Int32Array;
  /** What a stretch takes once for each share key in it. */
  readonly setups: Float64Array;
  /** The kinds of sticks. */
  readonly kinds: readonly Kind[];
  /** Grid of the costs. */
  readonly costGrid: Grid;
  /** Worth of one step of a kept offcut, in steps of the cost grid. */
  readonly credit: number;
  /** Shortest offcut that is kept; Infinity if none is. */
  readonly keep: number;
  /** The model's pieces that each item stands for. */
  readonly members: readonly (readonly number[])[];
}

/** What the first item of its share key takes besides its size, 0 for an item without a key. */
export function setupOf(problem: Problem, item: number): number {
  return problem.setups[problem.keys[item]!] ?? 0;
}

/** Worth of what is left in a room of a stick, which loses some before it is an offcut. */
export function creditFor(problem: Problem, left: number, loss: number): number {
  return left >= problem.keep + loss ? problem.credit * (left - loss) : 0;
}

/** Length of the longest offcuts that a stick can have, all rooms together. */
export function mostLeft(kind: Pick<Kind, "rooms" | "losses">): number {
  return sumOf(kind.rooms.map((room, place) => Math.max(0, room - kind.losses[place]!)));
}

/** The step between costs that a plan can have: every bound may be rounded up to it. */
export function costStep(problem: Problem): number {
  const step = problem.kinds.reduce((common, { cost }) => gcd(common, cost), problem.credit);
  return step === 0 ? 1 : step;
}
