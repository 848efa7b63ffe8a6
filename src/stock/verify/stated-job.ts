import { exactOf, largerOf, smallerOf } from "./exact.js";
import type { StockJob, StockStick } from "../job/stock-job.js";

/** A piece or sequence as a job states it, lengths exact. */
export interface StatedPiece {
  /** Name. */
  readonly id: string;
  /** How many are wanted. */
  readonly count: bigint;
  /** Lengths of its parts; one for a piece that is no sequence. */
  readonly parts: readonly bigint[];
  /** From the start of its first part to the end of its last. */
  readonly length: bigint;
  /** Whether it is a sequence. */
  readonly sequence: boolean;
  /** With which pieces it shares cuts. */
  readonly key: string | undefined;
  /** What two neighbors of its key save. */
  readonly saving: bigint;
}

/** A stretch of a stick that pieces may lie in. */
export interface StatedStretch {
  /** Where it starts. */
  readonly start: bigint;
  /** Where it ends. */
  readonly end: bigint;
  /** Where an offcut in it ends: of the trim at the stick's end it loses only what is wider than one kerf. */
  readonly reach: bigint;
}

/** A stick as a job states it, lengths exact. */
export interface StatedStick {
  /** Name. */
  readonly id: string;
  /** Length. */
  readonly length: bigint;
  /** What using one costs. */
  readonly cost: bigint;
  /** How many there are; undefined for as many as needed. */
  readonly limit: bigint | undefined;
  /** What trims and defects leave of it, in order. */
  readonly clear: readonly StatedStretch[];
  /** How far a position on it may be off: what the rounding of its decimals and of their sums can make. */
  readonly noise: bigint;
}

/** A job in its own lengths. */
export interface StatedJob {
  /** The pieces by their names. */
  readonly pieces: ReadonlyMap<string, StatedPiece>;
  /** The sticks by their names. */
  readonly sticks: ReadonlyMap<string, StatedStick>;
  /** Width of a saw cut. */
  readonly kerf: bigint;
  /** Shortest offcut worth keeping; undefined if none is. */
  readonly keep: bigint | undefined;
  /** What an offcut that is kept is worth per length. */
  readonly credit: bigint;
}

/** Positions are sums of decimals, each a hair off as a double: 2^-45 of the stick, a ten-thousandth of a micrometer on three meters. */
const NOISE_BITS = 45n;

/** What is lost of every stick: a kerf, the trims at its start and end, and how far the grid of the plan may move a place. */
interface Losses {
  readonly kerf: bigint;
  readonly start: bigint;
  readonly end: bigint;
  readonly slack: bigint;
}

/** What trims and defects leave of a stick. */
function clearStretches(stick: StockStick, { kerf, start, end, slack }: Losses): StatedStretch[] {
  const length = exactOf(stick.length);
  const zones = (stick.defects ?? []).map((zone) => ({ start: exactOf(zone.start), end: exactOf(zone.end) }));
  zones.sort((a, b) => (a.start < b.start ? -1 : 1));
  const last = length - end;
  const reach = length - largerOf(0n, end - kerf);
  const clear: StatedStretch[] = [];
  let from = start;
  for (const zone of zones) {
    clear.push({ start: from, end: smallerOf(zone.start, last), reach: smallerOf(zone.start, reach) });
    // A defect behind a clear stretch is one kerf wide at least, since the kerf of the stretch's last piece may fall into it: on the plan's grid. Between
    // that piece and the next there is a whole kerf whatever the grid is.
    from = largerOf(from, largerOf(zone.end, zone.start - from > slack ? zone.start + kerf - slack : 0n));
  }
  clear.push({ start: from, end: last, reach });
  return clear.filter((stretch) => stretch.end > stretch.start);
}

/**
 * Reads a job that was checked, as it stands there and without any grid. The slack is how far the grid of a plan may move
 * a place, 0 where all lengths lie on it.
 */
export function statedJob(job: StockJob, slack: bigint): StatedJob {
  const kerf = exactOf(job.kerf ?? 0);
  const { trim = 0, credit = 0, keep = credit > 0 ? 0 : undefined } = job;
  const [start, end] = typeof trim === "number" ? [trim, trim] : [trim.start, trim.end];
  const losses: Losses = { kerf, start: exactOf(start), end: exactOf(end), slack };
  const pieces = job.pieces.map((piece): StatedPiece => {
    const parts = (piece.sequence ?? [piece.length]).map(exactOf);
    return {
      id: piece.id,
      count: BigInt(piece.count ?? 1),
      parts,
      length: parts.reduce((sum, part) => sum + part + kerf, -kerf),
      sequence: piece.sequence !== undefined,
      key: piece.share?.key,
      saving: exactOf(piece.share?.saving ?? 0),
    };
  });
  const sticks = job.sticks.map((stick): StatedStick => {
    const { defects = [], count = defects.length > 0 ? 1 : undefined, cost = stick.length } = stick;
    return {
      id: stick.id,
      length: exactOf(stick.length),
      cost: exactOf(cost),
      limit: count === undefined ? undefined : BigInt(count),
      clear: clearStretches(stick, losses),
      noise: exactOf(stick.length) >> NOISE_BITS,
    };
  });
  return {
    pieces: new Map(pieces.map((piece) => [piece.id, piece])),
    sticks: new Map(sticks.map((stick) => [stick.id, stick])),
    kerf,
    keep: keep === undefined ? undefined : exactOf(keep),
    credit: exactOf(credit),
  };
}
