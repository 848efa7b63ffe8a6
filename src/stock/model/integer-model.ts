import { refuse } from "../../core/check.js";
import type { CheckedJob, CheckedPiece } from "../job/check-job.js";
import type { CheckedStick } from "../job/check-sticks.js";
import { commonGrid, fineGrid, fromGrid, type Grid, MAX_GRID_NUMBER, toGrid } from "./grid.js";
import { largestOf, sumOf } from "../sums.js";

/** A piece on the grid; pieces that are alike are one object. */
export interface ModelPiece {
  /** Lengths of its parts, rounded up. */
  readonly parts: readonly number[];
  /** Lengths of its parts as given. */
  readonly lengths: readonly number[];
  /** From the start of its first part to the end of its last. */
  readonly length: number;
  /** With which pieces it shares cuts. */
  readonly key: string | undefined;
  /** What two neighbors of its key save, rounded down. */
  readonly saving: number;
  /** Whether it was given as a sequence. */
  readonly sequence: boolean;
}

/** A stretch of grid numbers. */
export interface ClearStretch {
  /** First grid number that a piece may touch. */
  readonly start: number;
  /** Last one. */
  readonly end: number;
  /**
   * Where an offcut in it ends: at the defect, or at the trim less the one kerf that it holds. The cut that takes the trim
   * is the one that parts a last piece from it; behind an offcut no cut is made.
   */
  readonly reach: number;
}

/** A stick on the grid. */
export interface ModelStick {
  /** Name. */
  readonly id: string;
  /** Length, rounded down. */
  readonly length: number;
  /** Length as given. */
  readonly given: number;
  /** Cost as given. */
  readonly cost: number;
  /** How many there are, Infinity for as many as needed. */
  readonly limit: number;
  /** Where pieces may lie, in order; one stretch unless there are defects. */
  readonly clear: readonly ClearStretch[];
}

/** A job in integers. */
export interface StockModel {
  /** Grid of the lengths. */
  readonly grid: Grid;
  /** Width of a saw cut, rounded up. */
  readonly kerf: number;
  /** Shortest offcut worth keeping, rounded up; Infinity if none is. */
  readonly keep: number;
  /** Worth of one grid step of a kept offcut, as given. */
  readonly worth: number;
  /** Names of the pieces, in the job's order. */
  readonly ids: readonly string[];
  /** How many of each. */
  readonly counts: Float64Array;
  /** What each is. */
  readonly pieces: readonly ModelPiece[];
  /** The sticks, in the job's order. */
  readonly sticks: readonly ModelStick[];
}

function chooseGrid(job: CheckedJob, pieces: readonly CheckedPiece[], longest: number, kerf: number): Grid {
  if (job.resolution !== undefined) {
    const least = longest / MAX_GRID_NUMBER;
    if (job.resolution < least) {
      refuse("range", "job.resolution", job.resolution, `at least ${least}`);
    }
    // A resolution such as 0.1 is kept as 1/10, so that positions come out as decimals.
    return { ...(commonGrid([job.resolution]) ?? { times: job.resolution, per: 1 }), exact: false };
  }
  const parts = pieces.flatMap((piece) => piece.parts);
  const lengths = [kerf, job.trim.start, job.trim.end, job.keep ?? 0, ...parts];
  for (const { share } of pieces) lengths.push(share?.saving ?? 0);
  for (const { length, defects } of job.sticks) {
    lengths.push(length);
    for (const { start, end } of defects) lengths.push(start, end);
  }
  return (
    commonGrid(lengths) ??
    fineGrid(
      longest,
      parts.reduce((least, part) => Math.min(least, part), longest),
    )
  );
}

/** What trims and defects leave of a stick. */
function clearStretches(stick: CheckedStick, job: CheckedJob, grid: Grid, kerf: number): ClearStretch[] {
  const length = toGrid(stick.length, grid, "down");
  const trim = toGrid(job.trim.end, grid, "up");
  const zones = stick.defects.map(({ start, end }) => ({
    start: toGrid(start, grid, "down"),
    end: toGrid(end, grid, "up"),
  }));
  zones.sort((a, b) => a.start - b.start);
  const clear: ClearStretch[] = [];
  let from = toGrid(job.trim.start, grid, "up");
  for (const { start, end } of [...zones, { start: Infinity, end: Infinity }]) {
    clear.push({
      start: from,
      end: Math.min(start, length - trim),
      reach: Math.min(start, length - Math.max(0, trim - kerf)),
    });
    // The kerf of the last piece before a defect falls into the defect, which must be wide enough for it.
    from = Math.max(from, end, start > from ? start + kerf : 0);
  }
  return clear.filter((stretch) => stretch.end > stretch.start);
}

/**
 * Puts a job on the grid of its lengths; refuses a piece longer than every stick, and a resolution that is too fine.
 */
export function integerModel(job: CheckedJob): StockModel {
  // Each kind of piece once.
  const distinct = [...new Set(job.pieces)];
  const longest = largestOf(
    job.sticks.map(({ length }) => length),
    0,
  );
  // Beyond the longest stick a kerf is as wide as can be: no second piece fits.
  const kerfGiven = Math.min(job.kerf, longest);
  const grid = chooseGrid(job, distinct, longest, kerfGiven);
  const kerf = toGrid(kerfGiven, grid, "up");
  const sticks = job.sticks.map((stick) => ({
    id: stick.id,
    length: toGrid(stick.length, grid, "down"),
    given: stick.length,
    cost: stick.cost,
    limit: stick.count,
    clear: clearStretches(stick, job, grid, kerf),
  }));
  const room = largestOf(
    sticks.flatMap(({ clear }) => clear.map(({ start, end }) => end - start)),
    0,
  );
  const onGrid = new Map(
    distinct.map((piece): [CheckedPiece, ModelPiece] => {
      const { parts: lengths, share, sequence } = piece;
      const parts = lengths.map((part) => toGrid(part, grid, "up"));
      const length = sumOf(parts) + (parts.length - 1) * kerf;
      const saving = toGrid(share?.saving ?? 0, grid, "down");
      return [piece, { parts, lengths, length, key: share?.key, saving, sequence }];
    }),
  );
  const pieces = job.pieces.map((piece) => onGrid.get(piece)!);
  const long = pieces.findIndex(({ length }, k) => length > room && job.counts[k]! > 0);
  if (long >= 0) {
    const { sequence, lengths, length } = pieces[long]!;
    const path = `job.pieces[${long}].${sequence ? "sequence" : "length"}`;
    const name = JSON.stringify(job.ids[long]);
    // A sequence is given as its parts: its length is told as it counts, kerfs and all.
    refuse(
      "impossible",
      path,
      sequence ? lengths : lengths[0],
      `${fromGrid(room, grid)} at most for ${name}, ${fromGrid(length, grid)} long`,
    );
  }
  return {
    grid,
    kerf,
    keep: job.keep === undefined ? Infinity : toGrid(job.keep, grid, "up"),
    worth: job.credit * fromGrid(1, grid),
    ids: job.ids,
    counts: job.counts,
    pieces,
    sticks,
  };
}
