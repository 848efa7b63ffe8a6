import { checkArray, checkInteger, checkObject, checkText, checkWord } from "../../core/check.js";
import { checkVersion } from "../../core/schema-version.js";
import type { StockFit } from "../fit/stock-fit.js";
import { checkJob } from "../job/check-job.js";
import type { StockJob } from "../job/stock-job.js";
import { add, checkLayouts, type Sums, type Tally } from "./check-layouts.js";
import { exactProduct, largerOf } from "./exact.js";
import { type FitFault, type Inspection, mismatch, readNumber, slackOf } from "./inspection.js";
import { makesAll } from "./makes-all.js";
import { statedJob, type StatedPiece } from "./stated-job.js";

/** Verdict of {@link verifyFit}. */
export type FitVerdict = FitHolds | FitFails;

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

/** By how much rounding may move a sum of decimals: 2^-40 of its size. */
function noiseOf(size: bigint): bigint {
  return (size < 0n ? -size : size) >> 40n;
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

/** The totals that the plan gives. */
function checkSums({ job, report }: Inspection, fit: StockFit, sums: Sums, piecesLength: bigint): void {
  const { cost, sticksLength, keptLength } = sums;
  const credited = exactProduct(job.credit, keptLength);
  const longer = largerOf(piecesLength, sticksLength);
  const wasteLength = largerOf(0n, sticksLength - piecesLength - keptLength);
  const totals = [
    ["cost", cost - credited, cost + credited],
    ["sticksLength", sticksLength, sticksLength],
    ["piecesLength", piecesLength, longer],
    ["keptLength", keptLength, sticksLength],
    ["wasteLength", wasteLength, longer],
  ] as const;
  for (const [name, right, size] of totals) {
    const wrong = mismatch(fit[name], `fit.${name}`, right, noiseOf(size));
    if (wrong !== undefined) report("total", `fit.${name}`, wrong);
  }
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
export function verifyFit(job: StockJob, fit: StockFit): FitVerdict {
  checkJob(job);
  const faults: FitFault[] = [];
  const report: Inspection["report"] = (code, path, message) => faults.push({ code, path, message });
  checkVersion(checkObject(fit, "fit")["schemaVersion"], "fit.schemaVersion", "fit");
  const slack = slackOf(job, readNumber(fit.resolution, "fit.resolution"), report);
  const inspection: Inspection = { job: statedJob(job, slack), slack, report };
  const sums = checkLayouts(inspection, checkArray(fit.layouts, "fit.layouts"));
  const unplaced = tallyOf(fit.unplaced, "fit.unplaced", "piece");
  checkSums(inspection, fit, sums, checkNumbers(inspection, fit, sums, unplaced));
  checkClaims(inspection, fit, unplaced);
  return faults.length === 0 ? { ok: true } : { ok: false, faults };
}
