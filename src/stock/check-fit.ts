import { checkArray, checkInteger, checkNumber, checkObject, checkText, checkWord } from "../core/check.js";
import { checkJob } from "./check-job.js";
import { fromGrid, toGrid } from "./grid.js";
import { integerModel, type ModelPiece, type ModelStick, type StockModel } from "./integer-model.js";
import type { StockFit } from "./stock-fit.js";
import type { StockJob } from "./stock-job.js";
import { largestOf, sumOf } from "./sums.js";
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
  /** Where, e.g. `fit.layouts[2].cuts[0]`. */
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
  readonly id: string;
  readonly piece: ModelPiece;
  readonly part: number;
  readonly start: number;
  readonly end: number;
  readonly path: string;
}

/** What the checks share: the job, and where to tell what is wrong. */
interface Inspection {
  readonly model: StockModel;
  readonly places: ReadonlyMap<string, number>;
  readonly report: (code: FitFault["code"], path: string, message: string) => void;
}

/** Reads a number and compares it with the right one, which may differ by some slack and by the rounding of some sums. */
function compare(
  { report }: Inspection,
  code: FitFault["code"],
  path: string,
  value: unknown,
  right: number,
  slack = 0,
): void {
  const given = checkNumber(value, path, -Number.MAX_VALUE, Number.MAX_VALUE);
  if (!(Math.abs(given - right) <= slack + 1e-12 * Math.max(Math.abs(given), Math.abs(right)))) {
    report(code, path, `Expected ${right}, got ${given}`);
  }
}

function readCut(inspection: Inspection, value: unknown, path: string): GridCut | undefined {
  const { grid, ids, pieces } = inspection.model;
  const cut = checkObject(value, path);
  const id = checkText(cut["piece"], `${path}.piece`);
  const start = checkNumber(cut["start"], `${path}.start`, 0, Number.MAX_VALUE);
  const end = checkNumber(cut["end"], `${path}.end`, start, Number.MAX_VALUE);
  const place = inspection.places.get(id);
  if (place === undefined) {
    inspection.report("unknown-piece", path, `The job has no piece ${JSON.stringify(id)}`);
    return undefined;
  }
  const piece = pieces[place]!;
  if (!piece.run && cut["part"] !== undefined) {
    inspection.report("run", path, `Piece ${JSON.stringify(id)} is no run and has no parts`);
  }
  const part = piece.run ? checkInteger(cut["part"], `${path}.part`, 0, piece.parts.length - 1) : 0;
  // The difference of two positions is as uncertain as the positions are.
  compare(inspection, "length", path, end - start, piece.lengths[part]!, 1e-12 * Math.max(end, fromGrid(1, grid)));
  // A position between two grid numbers counts as the worse of the two, whichever neighbor looks at it.
  const from = toGrid(start, grid, "down");
  return { id: ids[place]!, piece, part, start: from, end: toGrid(start, grid, "up") + piece.parts[part]!, path };
}

/** Whether a cut is the part of its run that comes next after another; a piece that is no run is its own first part. */
function follows(cut: GridCut | undefined, before: GridCut | undefined): boolean {
  return before !== undefined && cut?.id === before.id && cut.part === before.part + 1;
}

/** Places of the pieces against each other and against the clear stretches; returns the offcuts. */
function checkPlaces({ model, report }: Inspection, stick: ModelStick, cuts: readonly GridCut[]) {
  const { kerf, grid } = model;
  // Where the next piece can start in each stretch.
  const nexts = stick.clear.map(({ start }) => start);
  cuts.forEach((cut, k) => {
    const { id, piece, part, path, start, end } = cut;
    const before = cuts[k - 1];
    // Runs have to be complete and in order, with nothing in between.
    const starts = part === 0 || follows(cut, before);
    const ends = part === piece.parts.length - 1 || follows(cuts[k + 1], cut);
    if (!starts || !ends) report("run", path, `Part ${part} of run ${JSON.stringify(id)} is not next to its neighbors`);
    const room = stick.clear.findIndex((stretch) => start >= stretch.start && end <= stretch.end);
    if (room < 0) report("clear", path, "The piece reaches into a trim or defect, or beyond the stick");
    else nexts[room] = Math.max(nexts[room]!, end + kerf);
    if (before === undefined) return;
    const shared = piece.key !== undefined && before.piece.key === piece.key ? piece.saving : 0;
    const from = before.end + kerf - shared;
    if (start < from) report("gap", path, `The piece can't start before ${fromGrid(from, grid)}`);
  });
  return stick.clear
    .map(({ reach }, room) => ({ start: nexts[room]!, end: reach }))
    .filter(({ start, end }) => end > start);
}

/** How many of each name; a name that is not there counts as 0. */
type Tally = Map<string, number>;

function add(tally: Tally, id: string, count: number): void {
  tally.set(id, (tally.get(id) ?? 0) + count);
}

/** Sums over all layouts, in grid numbers. */
interface Sums {
  cost: number;
  /** The cost if nothing were credited: what its rounding goes by. */
  price: number;
  used: number;
  kept: number;
  readonly placed: Tally;
  readonly sticks: Tally;
}

function checkLayouts(inspection: Inspection, layouts: readonly unknown[]): Sums {
  const { model, report } = inspection;
  const { grid, keep } = model;
  const sums: Sums = { cost: 0, price: 0, used: 0, kept: 0, placed: new Map(), sticks: new Map() };
  const sticks = new Map(model.sticks.map((stick) => [stick.id, stick]));
  layouts.forEach((value, k) => {
    const path = `fit.layouts[${k}]`;
    const layout = checkObject(value, path);
    const times = checkInteger(layout["times"], `${path}.times`, 1, 1e9);
    const id = checkText(layout["stick"], `${path}.stick`);
    const stick = sticks.get(id);
    if (stick === undefined) {
      report("unknown-stick", path, `The job has no stick ${JSON.stringify(id)}`);
      return;
    }
    const given = checkArray(layout["cuts"], `${path}.cuts`);
    if (given.length === 0) report("offcut", path, "A stick is used for nothing");
    const cuts = given.flatMap((cut, n) => readCut(inspection, cut, `${path}.cuts[${n}]`) ?? []);
    const rests = checkPlaces(inspection, stick, cuts);
    const longest = largestOf(
      rests.map(({ start, end }) => end - start),
      0,
    );
    compare(inspection, "offcut", `${path}.offcut`, layout["offcut"], fromGrid(longest, grid));
    const worthy = rests.filter(({ start, end }) => end - start >= keep);
    const listed = checkArray(layout["kept"], `${path}.kept`);
    compare(inspection, "offcut", `${path}.kept.length`, listed.length, worthy.length);
    worthy.forEach((rest, n) => {
      const { start = 0, end = 0 } = checkObject(listed[n] ?? {}, `${path}.kept[${n}]`);
      compare(inspection, "offcut", `${path}.kept[${n}].start`, start, fromGrid(rest.start, grid));
      compare(inspection, "offcut", `${path}.kept[${n}].end`, end, fromGrid(rest.end, grid));
    });
    const kept = sumOf(worthy.map(({ start, end }) => end - start));
    sums.cost += times * (stick.price - model.worth * kept);
    sums.price += times * stick.price;
    sums.used += times * stick.length;
    sums.kept += times * kept;
    add(sums.sticks, id, times);
    // A run is counted by its first part; the others were seen to be next to it.
    for (const cut of cuts) if (cut.part === 0) add(sums.placed, cut.id, times);
  });
  return sums;
}

/** Reads a list of names and how many there are of each. */
function tallyOf(list: unknown, path: string, key: "piece" | "stick"): Tally {
  const tally: Tally = new Map();
  checkArray(list, path).forEach((value, k) => {
    const entry = checkObject(value, `${path}[${k}]`);
    const id = checkText(entry[key], `${path}[${k}].${key}`);
    add(tally, id, checkInteger(entry["count"], `${path}[${k}].count`, 1, 1e9));
  });
  return tally;
}

/** The numbers of pieces and sticks, and the sums. */
function checkTotals(inspection: Inspection, fit: StockFit, sums: Sums): void {
  const { model, report, places } = inspection;
  const { grid } = model;
  const unplaced = tallyOf(fit.unplaced, "fit.unplaced", "piece");
  for (const id of unplaced.keys()) {
    if (!places.has(id)) report("unknown-piece", "fit.unplaced", `The job has no piece ${JSON.stringify(id)}`);
  }
  let made = 0;
  let parts = 0;
  model.ids.forEach((id, k) => {
    const placed = sums.placed.get(id) ?? 0;
    const { parts: all } = model.pieces[k]!;
    made += placed * sumOf(all);
    parts += placed * all.length;
    if (placed + (unplaced.get(id) ?? 0) === model.counts[k]) return;
    report("demand", "fit.layouts", `Expected ${model.counts[k]!} of piece ${JSON.stringify(id)}, got ${placed}`);
  });
  const listed = tallyOf(fit.sticks, "fit.sticks", "stick");
  const names = new Set(model.sticks.map(({ id }) => id));
  for (const id of listed.keys()) {
    if (!names.has(id)) report("unknown-stick", "fit.sticks", `The job has no stick ${JSON.stringify(id)}`);
  }
  for (const { id, limit } of model.sticks) {
    const count = sums.sticks.get(id) ?? 0;
    if (count > limit)
      report("limit", "fit.layouts", `Expected at most ${limit} of stick ${JSON.stringify(id)}, got ${count}`);
    compare(inspection, "total", "fit.sticks", listed.get(id) ?? 0, count);
  }
  const { status, cost, used } = fit;
  if (fit.stopped !== undefined) checkWord(fit.stopped, "fit.stopped", ["time", "work", "asked"]);
  if (fit.shortage !== undefined) checkWord(fit.shortage, "fit.shortage", ["proven", "not found"]);
  const bound = checkNumber(fit.bound, "fit.bound", -Number.MAX_VALUE, Number.MAX_VALUE);
  const short = unplaced.size > 0;
  compare(inspection, "total", "fit.cost", cost, sums.cost, 1e-12 * sums.price);
  compare(inspection, "total", "fit.gap", fit.gap, short ? 1 : gapBetween(cost, bound), 1e-12);
  compare(inspection, "total", "fit.resolution", fit.resolution, fromGrid(1, grid));
  // Where lengths were rounded to the grid, the plan's sums are those of the given lengths: off by a step for each.
  const slack = (grid.exact ? 0 : fromGrid(8 * parts, grid)) + 1e-9 * fromGrid(sums.used, grid);
  compare(inspection, "total", "fit.used", used, fromGrid(sums.used, grid), slack);
  compare(inspection, "total", "fit.made", fit.made, fromGrid(made, grid), slack);
  compare(inspection, "total", "fit.kept", fit.kept, fromGrid(sums.kept, grid), slack);
  compare(inspection, "total", "fit.waste", fit.waste, Math.max(0, used - fit.made - fit.kept), 1e-12 * used);
  const right = short ? "short" : bound === cost ? "optimal" : "feasible";
  const most = short ? Math.min(0, cost) : cost;
  if (!(bound <= most) || status !== right || short !== (fit.shortage !== undefined)) {
    report("status", "fit.status", `Expected "${right}" and a bound of at most the cost, got "${status}" and ${bound}`);
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
  const faults: FitFault[] = [];
  const inspection: Inspection = {
    model,
    places: new Map(model.ids.map((id, k) => [id, k])),
    report: (code, path, message) => faults.push({ code, path, message }),
  };
  checkObject(fit, "fit");
  checkTotals(inspection, fit, checkLayouts(inspection, checkArray(fit.layouts, "fit.layouts")));
  return faults.length === 0 ? { ok: true } : { ok: false, faults };
}
