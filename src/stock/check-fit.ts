import { checkArray, checkInteger, checkNumber, checkObject, checkText, MAX_LENGTH } from "../core/check.js";
import { checkJob } from "./check-job.js";
import { fromGrid, type Grid, toGrid } from "./grid.js";
import { integerModel, type ModelPiece, type ModelStick, type StockModel } from "./integer-model.js";
import type { StockCut, StockFit } from "./stock-fit.js";
import type { StockJob } from "./stock-job.js";
import { gapBetween } from "./write-fit.js";

/** What is wrong with a plan. */
export interface FitFault {
  /** Which rule it breaks. */
  readonly code:
    | "unknown-piece"
    | "unknown-stick"
    | "length"
    | "gap"
    | "clear"
    | "run"
    | "offcut"
    | "demand"
    | "limit"
    | "total"
    | "status";
  /** Where, e.g. `layouts[2].cuts[0]`. */
  readonly path: string;
  /** A sentence. */
  readonly message: string;
}

/** Verdict of {@link checkFit}. */
export type FitCheck = FitHolds | FitFails;

/** The fit does what the job asks, and its totals are true. */
export interface FitHolds {
  /** Nothing is wrong. */
  readonly ok: true;
}

/** The fit does not do what the job asks, or its totals are not true. */
export interface FitFails {
  /** Something is wrong. */
  readonly ok: false;
  /** All that is. */
  readonly faults: readonly FitFault[];
}

/** A cut on the grid, with the piece it belongs to. */
interface GridCut {
  readonly piece: ModelPiece;
  readonly part: number;
  readonly start: number;
  readonly end: number;
  readonly path: string;
}

type Report = (code: FitFault["code"], path: string, message: string) => void;

const quote = (text: string): string => JSON.stringify(text);

/** Equal but for the rounding of some sums of doubles. */
function sameValue(a: number, b: number, scale: number): boolean {
  return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b), scale);
}

function readCut(
  model: StockModel,
  pieces: ReadonlyMap<string, ModelPiece>,
  value: StockCut,
  path: string,
  report: Report,
): GridCut | undefined {
  const cut = checkObject(value, path);
  const id = checkText(cut["piece"], `${path}.piece`);
  const start = checkNumber(cut["start"], `${path}.start`, 0, MAX_LENGTH);
  const end = checkNumber(cut["end"], `${path}.end`, start, MAX_LENGTH);
  const piece = pieces.get(id);
  if (piece === undefined) {
    report("unknown-piece", path, `The job has no piece ${quote(id)}`);
    return undefined;
  }
  const part = piece.run ? checkInteger(cut["part"], `${path}.part`, 0, piece.parts.length - 1) : 0;
  const wanted = piece.lengths[part]!;
  // The difference of two positions is as uncertain as the positions are.
  if (Math.abs(end - start - wanted) > 1e-12 * Math.max(end, fromGrid(1, model.grid))) {
    report("length", path, `Piece ${quote(id)} is ${wanted} long, not ${end - start}`);
  }
  // A position between two grid numbers counts as the worse of the two, whichever neighbor looks at it.
  const from = toGrid(start, model.grid, "down");
  return { piece, part, start: from, end: toGrid(start, model.grid, "up") + piece.parts[part]!, path };
}

/** Whether a cut is the part of its run that comes next after another; a piece that is no run is its own first part. */
function follows(cut: GridCut | undefined, before: GridCut | undefined): boolean {
  return before !== undefined && cut?.piece === before.piece && cut.part === before.part + 1;
}

/** Runs have to be complete and in order, with nothing in between. */
function checkRuns(cuts: readonly GridCut[], report: Report): void {
  cuts.forEach((cut, k) => {
    const { piece, part, path } = cut;
    const starts = part === 0 || follows(cut, cuts[k - 1]);
    const ends = part === piece.parts.length - 1 || follows(cuts[k + 1], cut);
    if (!starts || !ends) report("run", path, `Part ${part} of run ${quote(piece.id)} is not next to its neighbors`);
  });
}

/** Places of the pieces against each other and against the clear stretches; returns the offcuts. */
function checkPlaces(model: StockModel, stick: ModelStick, cuts: readonly GridCut[], report: Report) {
  const show = (steps: number): number => fromGrid(steps, model.grid);
  const ends = stick.clear.map(({ start }) => start);
  const filled = new Set<number>();
  cuts.forEach((cut, k) => {
    const name = quote(cut.piece.id);
    const room = stick.clear.findIndex(({ start, end }) => cut.start >= start && cut.end <= end);
    if (room < 0) {
      const place = `from ${show(cut.start)} to ${show(cut.end)}`;
      report("clear", cut.path, `Piece ${name} ${place} reaches into a trim or defect, or beyond the stick`);
    } else {
      ends[room] = Math.max(ends[room]!, cut.end);
      filled.add(room);
    }
    const before = cuts[k - 1];
    if (before === undefined) return;
    const shared =
      before.piece.key !== undefined && before.piece.key === cut.piece.key && !before.piece.run ? cut.piece.saving : 0;
    const from = before.end + model.kerf - shared;
    if (cut.start < from)
      report("gap", cut.path, `Piece ${name} starts at ${show(cut.start)}, not from ${show(from)} on`);
  });
  return stick.clear
    .map(({ end }, room) => ({ start: ends[room]! + (filled.has(room) ? model.kerf : 0), end }))
    .filter(({ start, end }) => end > start);
}

/** Sums over all layouts, in grid numbers. */
interface Totals {
  cost: bigint;
  used: bigint;
  made: bigint;
  kept: bigint;
  readonly pieces: Map<string, bigint>;
  readonly sticks: Map<string, bigint>;
}

function checkLayouts(model: StockModel, fit: StockFit, report: Report): Totals {
  const pieces = new Map(model.pieces.map((piece) => [piece.id, piece]));
  const sticks = new Map(model.sticks.map((stick) => [stick.id, stick]));
  const totals: Totals = { cost: 0n, used: 0n, made: 0n, kept: 0n, pieces: new Map(), sticks: new Map() };
  checkArray(fit.layouts, "fit.layouts").forEach((value, k) => {
    const path = `layouts[${k}]`;
    const layout = checkObject(value, path);
    const times = BigInt(checkInteger(layout["times"], `${path}.times`, 1, 1e9));
    const id = checkText(layout["stick"], `${path}.stick`);
    const stick = sticks.get(id);
    if (stick === undefined) {
      report("unknown-stick", path, `The job has no stick ${quote(id)}`);
      return;
    }
    const given = checkArray(layout["cuts"], `${path}.cuts`);
    if (given.length === 0) report("offcut", path, "A stick is used for nothing");
    const cuts = given.flatMap((cut, n) => readCut(model, pieces, cut as StockCut, `${path}.cuts[${n}]`, report) ?? []);
    checkRuns(cuts, report);
    const rests = checkPlaces(model, stick, cuts, report);
    const longest = rests.reduce((most, { start, end }) => Math.max(most, end - start), 0);
    const offcut = checkNumber(layout["offcut"], `${path}.offcut`, 0, MAX_LENGTH);
    if (!sameValue(offcut, fromGrid(longest, model.grid), stick.given)) {
      report("offcut", `${path}.offcut`, `The longest offcut is ${fromGrid(longest, model.grid)}, not ${offcut}`);
    }
    const keptOnes = rests.filter(({ start, end }) => end - start >= model.keep);
    const kept = keptOnes.reduce((sum, { start, end }) => sum + BigInt(end - start), 0n);
    const listed = checkArray(layout["kept"], `${path}.kept`);
    const right = keptOnes.every(({ start, end }, n) => {
      const { start: from, end: to } = checkObject(listed[n] ?? {}, `${path}.kept[${n}]`);
      return from === fromGrid(start, model.grid) && to === fromGrid(end, model.grid);
    });
    if (!right || listed.length !== keptOnes.length) {
      report("offcut", `${path}.kept`, `There are ${keptOnes.length} offcuts to keep, and not where it says`);
    }
    totals.cost += times * (BigInt(stick.cost) - BigInt(model.credit) * kept);
    totals.used += times * BigInt(stick.length);
    totals.kept += times * kept;
    totals.sticks.set(id, (totals.sticks.get(id) ?? 0n) + times);
    for (const { piece, part } of cuts) {
      totals.made += times * BigInt(piece.parts[part]!);
      // A run is counted by its first part; checkRuns saw to the others.
      if (part === 0) totals.pieces.set(piece.id, (totals.pieces.get(piece.id) ?? 0n) + times);
    }
  });
  return totals;
}

function checkDemand(model: StockModel, fit: StockFit, totals: Totals, report: Report): void {
  const unplaced = new Map<string, bigint>();
  const known = new Set(model.pieces.map(({ id }) => id));
  checkArray(fit.unplaced, "fit.unplaced").forEach((value, k) => {
    const entry = checkObject(value, `unplaced[${k}]`);
    const id = checkText(entry["piece"], `unplaced[${k}].piece`);
    const count = BigInt(checkInteger(entry["count"], `unplaced[${k}].count`, 1, 1e9));
    if (!known.has(id)) {
      report("unknown-piece", `unplaced[${k}]`, `The job has no piece ${quote(id)}`);
    }
    unplaced.set(id, (unplaced.get(id) ?? 0n) + count);
  });
  for (const { id, count } of model.pieces) {
    const placed = totals.pieces.get(id) ?? 0n;
    const left = unplaced.get(id) ?? 0n;
    if (placed + left !== BigInt(count)) {
      report(
        "demand",
        "layouts",
        `Of piece ${quote(id)}, ${placed} are placed and ${left} unplaced, not ${count} in all`,
      );
    }
  }
  for (const { id, limit } of model.sticks) {
    const count = totals.sticks.get(id) ?? 0n;
    if (limit !== Infinity && count > BigInt(limit)) {
      report("limit", "layouts", `Stick ${quote(id)} is used ${count} times, but there are ${limit}`);
    }
  }
  const short = unplaced.size > 0;
  if (short !== (fit.status === "short") || short !== (fit.shortage !== undefined)) {
    report("status", "status", `A plan is short, and tells of a shortage, if and only if pieces are unplaced`);
  }
}

function checkTotals(model: StockModel, fit: StockFit, totals: Totals, report: Report): void {
  const onGrid = (steps: bigint, grid: Grid): number => fromGrid(Number(steps), grid);
  const cost = checkNumber(fit.cost, "fit.cost", -Number.MAX_VALUE, Number.MAX_VALUE);
  const bound = checkNumber(fit.bound, "fit.bound", -Number.MAX_VALUE, Number.MAX_VALUE);
  const right = onGrid(totals.cost, model.costGrid);
  if (!sameValue(cost, right, 0)) report("total", "cost", `The cost is ${right}, not ${cost}`);
  if (!(bound <= cost)) report("status", "bound", `A bound of ${bound} above the cost ${cost} is no bound`);
  if (fit.status === "optimal" && bound !== cost)
    report("status", "status", `Status "optimal" needs a bound of ${cost}, not ${bound}`);
  const gap = fit.status === "short" ? 1 : gapBetween(cost, bound);
  if (!sameValue(checkNumber(fit.gap, "fit.gap", 0, 2), gap, 1))
    report("total", "gap", `The gap is ${gap}, not ${fit.gap}`);
  if (fit.resolution !== fromGrid(1, model.grid)) {
    report("total", "resolution", `The grid is ${fromGrid(1, model.grid)}, not ${fit.resolution}`);
  }
  const used = onGrid(totals.used, model.grid);
  // Where lengths were rounded to the grid, the plan's sums are those of the given lengths: off by a step for each.
  const parts =
    totals.pieces.size === 0 ? 0 : Number([...totals.pieces.values()].reduce((sum, count) => sum + count, 0n));
  const slack = model.grid.exact ? 0 : fromGrid(parts * 8, model.grid);
  for (const [name, value, steps] of [
    ["used", fit.used, totals.used],
    ["made", fit.made, totals.made],
    ["kept", fit.kept, totals.kept],
  ] as const) {
    const wanted = onGrid(steps, model.grid);
    if (!(Math.abs(checkNumber(value, `fit.${name}`, 0, Number.MAX_VALUE) - wanted) <= slack + 1e-9 * used)) {
      report("total", name, `The sum is ${wanted}, not ${value}`);
    }
  }
  const waste = Math.max(0, fit.used - fit.made - fit.kept);
  if (!sameValue(checkNumber(fit.waste, "fit.waste", 0, Number.MAX_VALUE), waste, fit.used)) {
    report("total", "waste", `The waste is ${waste}, not ${fit.waste}`);
  }
  const listed = new Map(
    checkArray(fit.sticks, "fit.sticks").map((value, k) => {
      const { stick, count } = checkObject(value, `sticks[${k}]`);
      return [checkText(stick, `sticks[${k}].stick`), BigInt(checkInteger(count, `sticks[${k}].count`, 1, 1e9))];
    }),
  );
  for (const { id } of model.sticks) {
    const count = totals.sticks.get(id) ?? 0n;
    if (count !== (listed.get(id) ?? 0n)) report("total", "sticks", `Stick ${quote(id)} is used ${count} times`);
  }
}

/**
 * Verifies a plan against its job, from the two alone and in integers.
 *
 * Checked are the places of all cuts (lengths, kerfs, shared cuts, trims, defects, runs), the demand, the limits, and every
 * sum the plan gives. That no plan costs less than `bound` is the one thing that can't be read off a plan.
 *
 * @param job - the job
 * @param fit - a plan for it, also one read back from JSON or changed by hand
 * @returns `{ ok: true }`, or what is wrong
 * @throws {InputError} when the job is malformed, or the plan lacks a field or has one of another type
 * @example
 * ```ts
 * import { checkFit, fitStock } from "miterwright/stock";
 *
 * const job = { pieces: [{ id: "side", length: 500, count: 4 }], sticks: [{ id: "stick", length: 2100 }], kerf: 3 };
 * const fit = fitStock(job);
 * checkFit(job, fit); //=> { ok: true }
 * const shifted = { ...fit, layouts: [{ ...fit.layouts[0]!, cuts: fit.layouts[0]!.cuts.slice(1) }] };
 * checkFit(job, shifted).ok; //=> false
 * ```
 */
export function checkFit(job: StockJob, fit: StockFit): FitCheck {
  const model = integerModel(checkJob(job));
  checkObject(fit, "fit");
  const faults: FitFault[] = [];
  const report: Report = (code, path, message) => faults.push({ code, path, message });
  const totals = checkLayouts(model, fit, report);
  checkDemand(model, fit, totals, report);
  checkTotals(model, fit, totals, report);
  return faults.length === 0 ? { ok: true } : { ok: false, faults };
}
