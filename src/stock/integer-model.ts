import { refuse, reject } from "../core/check.js";
import type { CheckedJob, CheckedStick } from "./check-job.js";
import { commonGrid, fineGrid, fromGrid, type Grid, MAX_GRID_NUMBER, toGrid } from "./grid.js";

/** A piece on the grid. */
export interface ModelPiece {
  /** Name. */
  readonly id: string;
  /** How many. */
  readonly count: number;
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
  /** Whether it was given as a run. */
  readonly run: boolean;
}

/** A stretch of grid numbers. */
export interface ClearStretch {
  /** First grid number that a piece may touch. */
  readonly start: number;
  /** Last one. */
  readonly end: number;
}

/** A stick on the grid. */
export interface ModelStick {
  /** Name. */
  readonly id: string;
  /** Length, rounded down. */
  readonly length: number;
  /** Length as given. */
  readonly given: number;
  /** Cost in steps of the cost grid. */
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
  /** Grid of the costs. */
  readonly costGrid: Grid;
  /** Width of a saw cut, rounded up. */
  readonly kerf: number;
  /** Shortest offcut worth keeping, rounded up; Infinity if none is. */
  readonly keep: number;
  /** Worth of one grid step of a kept offcut, in steps of the cost grid. */
  readonly credit: number;
  /** The pieces, in the job's order. */
  readonly pieces: readonly ModelPiece[];
  /** The sticks, in the job's order. */
  readonly sticks: readonly ModelStick[];
}

function chooseGrid(job: CheckedJob): Grid {
  const longest = job.sticks.reduce((most, { length }) => Math.max(most, length), 0);
  if (job.resolution !== undefined) {
    if (longest / job.resolution > MAX_GRID_NUMBER) {
      const least = longest / MAX_GRID_NUMBER;
      refuse("range", "job.resolution", job.resolution, `at least ${least}, longest stick / 2^40`);
    }
    // A resolution such as 0.1 is kept as 1/10, so that positions come out as decimals.
    const grid = commonGrid([job.resolution]);
    return { ...(grid ?? { times: job.resolution, per: 1 }), exact: false };
  }
  const lengths = [job.kerf, job.trim.start, job.trim.end, job.keep ?? 0];
  let shortest = longest;
  for (const { parts, share } of job.pieces) {
    lengths.push(...parts);
    if (share !== undefined) lengths.push(share.saving);
    for (const part of parts) shortest = Math.min(shortest, part);
  }
  for (const { length, defects } of job.sticks) {
    lengths.push(length);
    for (const { start, end } of defects) lengths.push(start, end);
  }
  return commonGrid(lengths) ?? fineGrid(longest, shortest);
}

/**
 * Costs that share no grid are rounded to one that is fine enough for eleven digits and coarse enough for exact sums.
 */
function chooseCostGrid(job: CheckedJob, grid: Grid, total: number): Grid {
  const costs = job.sticks.map(({ cost }) => cost);
  const largest = costs.reduce((most, cost) => Math.max(most, cost), 0);
  if (job.credit > 0) costs.push(job.credit * fromGrid(1, grid));
  const common = commonGrid(costs);
  const mostSum = 2 ** 52 / Math.max(1, total);
  if (common !== undefined && toGrid(largest, common, "nearest") <= mostSum) return common;
  return { times: largest === 0 ? 1 : largest / Math.min(MAX_GRID_NUMBER, Math.floor(mostSum)), per: 1, exact: false };
}

/** What trims and defects leave of a stick. */
function clearStretches(stick: CheckedStick, job: CheckedJob, grid: Grid, kerf: number): ClearStretch[] {
  const zones = stick.defects
    .map(({ start, end }) => ({ start: toGrid(start, grid, "down"), end: toGrid(end, grid, "up") }))
    .sort((a, b) => a.start - b.start || a.end - b.end);
  const end = toGrid(stick.length, grid, "down") - toGrid(job.trim.end, grid, "up");
  const clear: ClearStretch[] = [];
  let from = toGrid(job.trim.start, grid, "up");
  for (const zone of zones) {
    if (zone.start > from) {
      clear.push({ start: from, end: Math.min(zone.start, end) });
      // The kerf of the last piece before a defect falls into the defect, which must be wide enough for it.
      from = zone.start + kerf;
    }
    from = Math.max(from, zone.end);
  }
  clear.push({ start: from, end });
  return clear.filter((stretch) => stretch.end > stretch.start);
}

/**
 * Puts a job on its grids.
 *
 * @param job - the checked job
 * @returns the job in integers
 * @throws {InputError} when a piece is longer than every stick, or the resolution is too fine
 */
export function integerModel(job: CheckedJob): StockModel {
  const grid = chooseGrid(job);
  const kerf = toGrid(job.kerf, grid, "up");
  const costGrid = chooseCostGrid(
    job,
    grid,
    job.pieces.reduce((sum, piece) => sum + piece.count, 0),
  );
  const sticks = job.sticks.map((stick) => ({
    id: stick.id,
    length: toGrid(stick.length, grid, "down"),
    given: stick.length,
    cost: toGrid(stick.cost, costGrid, "nearest"),
    limit: stick.count,
    clear: clearStretches(stick, job, grid, kerf),
  }));
  const room = sticks.reduce(
    (most, { clear }) => clear.reduce((longest, { start, end }) => Math.max(longest, end - start), most),
    0,
  );
  const pieces = job.pieces.map((piece, k) => {
    const parts = piece.parts.map((part) => toGrid(part, grid, "up"));
    const length = parts.reduce((sum, part) => sum + part, kerf * (parts.length - 1));
    if (length > room && piece.count > 0) {
      const at = `job.pieces[${k}].${piece.run ? "run" : "length"}`;
      const given = piece.run ? fromGrid(length, grid) : piece.parts[0];
      reject(
        "impossible",
        at,
        piece.run ? piece.parts : given,
        `Expected piece ${JSON.stringify(piece.id)} to fit into a stick, of which the longest has ${fromGrid(room, grid)} clear, got ${given}`,
      );
    }
    const { id, count, run, share } = piece;
    const saving = share === undefined ? 0 : toGrid(share.saving, grid, "down");
    return { id, count, parts, lengths: piece.parts, length, key: share?.key, saving, run };
  });
  return {
    grid,
    costGrid,
    kerf,
    keep: job.keep === undefined ? Infinity : toGrid(job.keep, grid, "up"),
    credit: toGrid(job.credit * fromGrid(1, grid), costGrid, "nearest"),
    pieces,
    sticks,
  };
}
