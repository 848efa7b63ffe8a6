import { checkArray, checkInteger, checkNumber, checkObject, checkText, checkWord } from "../../core/check.js";
import { checkJob } from "../job/check-job.js";
import { checkPlaces, type Rest } from "./check-places.js";
import { doubleOf, exactOf, exactProduct, largerOf } from "./exact.js";
import type { FitFault, Inspection } from "./inspection.js";
import { makesAll } from "./makes-all.js";
import { statedJob, type StatedPiece, type StatedStick } from "./stated-job.js";
import type { StockFit } from "../fit/stock-fit.js";
import type { StockJob } from "../job/stock-job.js";

/** Verdict of {@link verifyFit}. */
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

/** Any finite number, sign and all: what is wrong with it is told, not thrown. */
function readNumber(value: unknown, path: string): number {
  return checkNumber(value, path, -Number.MAX_VALUE, Number.MAX_VALUE);
}

/** By how much rounding may move a sum of decimals: 2^-40 of its size. */
function noiseOf(size: bigint): bigint {
  return (size < 0n ? -size : size) >> 40n;
}

function isNear(one: bigint, other: bigint, off: bigint): boolean {
  return one - other <= off && other - one <= off;
}

/** Reads a number and compares it with the right one, which may differ by some slack. */
function compare(
  { report }: Inspection,
  code: FitFault["code"],
  path: string,
  value: unknown,
  right: bigint,
  slack: bigint,
): void {
  const given = readNumber(value, path);
  if (!isNear(exactOf(given), right, slack)) report(code, path, `Expected ${doubleOf(right)}, got ${given}`);
}

/**
 * How far the plan's grid may make it give away: nothing where all lengths of the job are steps of it, else some steps. A grid that does not hold them all is
 * the one that was asked for, or a fine one: a hundred-thousandth of the longest stick at most.
 */
function slackOf(job: StockJob, resolution: number, report: Inspection["report"]): bigint {
  const { trim = 0, pieces, sticks } = job;
  const ends = typeof trim === "number" ? [trim] : [trim.start, trim.end];
  const lengths = [job.kerf ?? 0, job.keep ?? 0, ...ends];
  for (const { length, sequence, share } of pieces) {
    for (const part of sequence ?? [length]) lengths.push(part);
    lengths.push(share?.saving ?? 0);
  }
  let longest = 0;
  for (const { length, defects = [] } of sticks) {
    longest = Math.max(longest, length);
    lengths.push(length);
    for (const { start, end } of defects) lengths.push(start, end);
  }
  const isStep = (length: number): boolean => {
    const steps = length / resolution;
    return Math.abs(steps - Math.round(steps)) <= 2 ** -46 * steps;
  };
  // Longer than the longest stick a kerf may have any length.
  const holdsAll = resolution > 0 && lengths.every((length) => length > longest || isStep(length));
  const asked = job.resolution;
  const sound =
    asked === undefined ? holdsAll || resolution <= longest / 1e5 : Math.abs(resolution - asked) <= 1e-12 * asked;
  if (!(resolution > 0 && sound)) {
    report(
      "total",
      "fit.resolution",
      `Expected ${asked ?? "a grid that holds the job's lengths, or a fine one"}, got ${resolution}`,
    );
    return 0n;
  }
  return holdsAll ? 0n : 4n * exactOf(resolution);
}

/** Compares the offcuts that a layout lists with what is left of its stick; returns the length of those that are kept. */
function checkOffcuts(
  inspection: Inspection,
  stick: StatedStick,
  rests: readonly Rest[],
  layout: Readonly<Record<string, unknown>>,
  path: string,
): bigint {
  const { job, slack, report } = inspection;
  const off = 2n * slack + 2n * stick.noise;
  const longest = rests.reduce((most, { start, end }) => largerOf(most, end - start), 0n);
  compare(inspection, "offcut", `${path}.offcut`, layout["offcut"], longest, off);
  const { keep } = job;
  const listed = checkArray(layout["kept"], `${path}.kept`).map((value, k) => {
    const at = `${path}.kept[${k}]`;
    const { start, end } = checkObject(value, at);
    return { start: exactOf(readNumber(start, `${at}.start`)), end: exactOf(readNumber(end, `${at}.end`)), at };
  });
  let kept = 0n;
  let next = 0;
  for (const { start, end } of rests) {
    const entry = listed[next];
    const isListed = entry !== undefined && isNear(entry.start, start, off) && isNear(entry.end, end, off);
    if (isListed) {
      next++;
      kept += entry.end - entry.start;
      if (keep !== undefined && entry.end - entry.start >= keep - off) continue;
      report("offcut", entry.at, "The offcut is shorter than is worth keeping");
    } else if (keep !== undefined && end - start >= keep + off && end - start > off) {
      const text = `from ${doubleOf(start)} to ${doubleOf(end)}`;
      kept += end - start;
      report("offcut", `${path}.kept`, `The offcut ${text} is worth keeping, and not listed`);
    }
  }
  for (const { at } of listed.slice(next)) report("offcut", at, "There is no such offcut");
  return kept;
}

/** How many of each name; a name that is not there counts as 0. */
type Tally = Map<string, bigint>;

function add(tally: Tally, id: string, count: bigint): void {
  tally.set(id, (tally.get(id) ?? 0n) + count);
}

/** Sums over all layouts. */
interface Sums {
  cost: bigint;
  sticksLength: bigint;
  keptLength: bigint;
  readonly placed: Tally;
  readonly sticks: Tally;
}

function checkLayouts(inspection: Inspection, layouts: readonly unknown[]): Sums {
  const { job, report } = inspection;
  const sums: Sums = { cost: 0n, sticksLength: 0n, keptLength: 0n, placed: new Map(), sticks: new Map() };
  layouts.forEach((value, k) => {
    const path = `fit.layouts[${k}]`;
    const layout = checkObject(value, path);
    const times = BigInt(checkInteger(layout["times"], `${path}.times`, 1, 1e9));
    const id = checkText(layout["stick"], `${path}.stick`);
    const stick = job.sticks.get(id);
    if (stick === undefined) {
      report("unknown-stick", path, `The job has no stick ${JSON.stringify(id)}`);
      return;
    }
    const { placed, rests } = checkPlaces(inspection, stick, layout["pieces"], `${path}.pieces`);
    sums.keptLength += times * checkOffcuts(inspection, stick, rests, layout, path);
    sums.cost += times * stick.cost;
    sums.sticksLength += times * stick.length;
    add(sums.sticks, id, times);
    for (const [piece, count] of placed) add(sums.placed, piece, times * count);
  });
  return sums;
}

/** Reads a list of names and how many there are of each. */
function tallyOf(list: unknown, path: string, key: "piece" | "stick"): Tally {
  const tally: Tally = new Map();
  checkArray(list, path).forEach((value, k) => {
    const entry = checkObject(value, `${path}[${k}]`);
    const id = checkText(entry[key], `${path}[${k}].${key}`);
    add(tally, id, BigInt(checkInteger(entry["count"], `${path}[${k}].count`, 1, 1e9)));
  });
  return tally;
}

/** The numbers of pieces and sticks; returns the length of the pieces that are made. */
function checkNumbers({ job, report }: Inspection, fit: StockFit, sums: Sums, unplaced: Tally): bigint {
  for (const id of unplaced.keys()) {
    if (!job.pieces.has(id)) report("unknown-piece", "fit.unplaced", `The job has no piece ${JSON.stringify(id)}`);
  }
  let piecesLength = 0n;
  for (const { id, count, parts } of job.pieces.values()) {
    const placed = sums.placed.get(id) ?? 0n;
    for (const part of parts) piecesLength += placed * part;
    if (placed + (unplaced.get(id) ?? 0n) === count) continue;
    report("demand", "fit.layouts", `Expected ${count} of piece ${JSON.stringify(id)}, got ${placed}`);
  }
  const listed = tallyOf(fit.sticks, "fit.sticks", "stick");
  for (const id of listed.keys()) {
    if (!job.sticks.has(id)) report("unknown-stick", "fit.sticks", `The job has no stick ${JSON.stringify(id)}`);
  }
  for (const { id, limit } of job.sticks.values()) {
    const count = sums.sticks.get(id) ?? 0n;
    const said = listed.get(id) ?? 0n;
    if (limit !== undefined && count > limit) {
      report("limit", "fit.layouts", `Expected at most ${limit} of stick ${JSON.stringify(id)}, got ${count}`);
    }
    if (said !== count) report("total", "fit.sticks", `Expected ${count} of stick ${JSON.stringify(id)}, got ${said}`);
  }
  return piecesLength;
}

function checkSums(inspection: Inspection, fit: StockFit, sums: Sums, piecesLength: bigint): void {
  const { job } = inspection;
  const credited = exactProduct(job.credit, sums.keptLength);
  compare(inspection, "total", "fit.cost", fit.cost, sums.cost - credited, noiseOf(sums.cost + credited));
  compare(inspection, "total", "fit.sticksLength", fit.sticksLength, sums.sticksLength, noiseOf(sums.sticksLength));
  compare(
    inspection,
    "total",
    "fit.piecesLength",
    fit.piecesLength,
    piecesLength,
    noiseOf(largerOf(piecesLength, sums.sticksLength)),
  );
  compare(inspection, "total", "fit.keptLength", fit.keptLength, sums.keptLength, noiseOf(sums.sticksLength));
  const wasteLength = largerOf(0n, sums.sticksLength - piecesLength - sums.keptLength);
  compare(
    inspection,
    "total",
    "fit.wasteLength",
    fit.wasteLength,
    wasteLength,
    noiseOf(largerOf(piecesLength, sums.sticksLength)),
  );
}

/** Whether a piece can be cut whole from a stick that nobody runs out of. */
function hasEndlessRoom({ job, slack }: Inspection, { length, parts }: StatedPiece): boolean {
  const rounded = length + slack * BigInt(parts.length);
  return [...job.sticks.values()].some(
    ({ limit, clear, noise }) => limit === undefined && clear.some(({ start, end }) => end - start + noise >= rounded),
  );
}

/** What is said of the plan: that it is the cheapest, or that there is no room for some pieces. */
function checkClaims(inspection: Inspection, fit: StockFit, unplaced: Tally): void {
  const { job, report } = inspection;
  const { cost, shortage } = fit;
  const status = checkWord(fit.status, "fit.status", ["optimal", "feasible", "short"]);
  if (fit.stopped !== undefined) checkWord(fit.stopped, "fit.stopped", ["time", "steps", "asked"]);
  if (shortage !== undefined) checkWord(shortage, "fit.shortage", ["proven", "not-found"]);
  const bound = readNumber(fit.bound, "fit.bound");
  const short = unplaced.size > 0;
  const gap = short ? 1 : bound === cost ? 0 : (cost - bound) / Math.max(Math.abs(cost), Math.abs(bound));
  if (!(Math.abs(readNumber(fit.relativeGap, "fit.relativeGap") - gap) <= 1e-12))
    report("total", "fit.relativeGap", `Expected ${gap}, got ${fit.relativeGap}`);
  const right = short ? "short" : bound === cost ? "optimal" : "feasible";
  const most = short ? Math.min(0, cost) : cost;
  if (!(bound <= most) || status !== right || short !== (shortage !== undefined)) {
    report("status", "fit.status", `Expected "${right}" and a bound of at most the cost, got "${status}" and ${bound}`);
  }
  for (const id of unplaced.keys()) {
    const piece = job.pieces.get(id);
    if (piece === undefined || !hasEndlessRoom(inspection, piece)) continue;
    report("status", "fit.unplaced", `There are sticks without end that hold piece ${JSON.stringify(id)}`);
  }
  if (short && shortage === "proven" && makesAll(inspection)) {
    report("status", "fit.shortage", "The sticks give all pieces, in another way");
  }
}

/**
 * Verifies a plan against its job, from the two alone and in the job's own lengths: sums and differences of them are exact, and no grid is used.
 *
 * Checked are the places of all pieces (lengths, kerfs, shared cuts, trims, defects, sequences), the demand, the limits, and every sum the plan gives. Positions may
 * be off by 2^-45 of the stick, which is what decimals are off as doubles; where the job's lengths lie on no common grid, an offcut may be short by eight steps
 * of the plan's `resolution`.
 *
 * Two claims can't be read off a plan. That no plan costs less than `bound` is taken as told. So is a `shortage` that is said to be proven, unless some pieces
 * would fit sticks that never run out, or a simple plan makes all pieces, or with some ten pieces any plan does.
 *
 * @param job - the job
 * @param fit - a plan for it, also one read back from JSON or changed by hand
 * @returns `{ ok: true }`, or what is wrong
 * @throws {InputError} when the job is malformed, or the plan lacks a field or has one of another type
 * @example
 * ```ts
 * import { verifyFit, fitStock } from "miterwright/stock";
 *
 * const job = { pieces: [{ id: "side", length: 500, count: 4 }], sticks: [{ id: "stick", length: 2100 }], kerf: 3 };
 * const fit = fitStock(job);
 * verifyFit(job, fit); //=> { ok: true }
 * const [layout] = fit.layouts;
 * const shifted = { ...fit, layouts: [{ ...layout!, pieces: [{ ...layout!.pieces[0]!, start: -3, end: 497 }] }] };
 * verifyFit(job, shifted).ok; //=> false
 * ```
 */
export function verifyFit(job: StockJob, fit: StockFit): FitCheck {
  checkJob(job);
  const faults: FitFault[] = [];
  const report: Inspection["report"] = (code, path, message) => faults.push({ code, path, message });
  checkObject(fit, "fit");
  const slack = slackOf(job, readNumber(fit.resolution, "fit.resolution"), report);
  const inspection: Inspection = { job: statedJob(job, slack), slack, report };
  const sums = checkLayouts(inspection, checkArray(fit.layouts, "fit.layouts"));
  const unplaced = tallyOf(fit.unplaced, "fit.unplaced", "piece");
  checkSums(inspection, fit, sums, checkNumbers(inspection, fit, sums, unplaced));
  checkClaims(inspection, fit, unplaced);
  return faults.length === 0 ? { ok: true } : { ok: false, faults };
}
