import {
  checkArray,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  checkObject,
  checkOneOf,
  checkText,
  MAX_LENGTH,
  refuse,
  reject,
} from "../core/check.js";
import type { ShareKey, StockJob, Stretch, Trims } from "./stock-job.js";
import { sumOf } from "./sums.js";

/** Most pieces or sticks of one kind, and most pieces in all. */
const MOST: number = 1e9;

/** What pieces of equal length, run and share have in common: a million pieces of a name each are still few of these. */
export interface CheckedPiece {
  /** Lengths of the parts; one for a piece that is no run. */
  readonly parts: readonly number[];
  /** What neighbors save. */
  readonly share: ShareKey | undefined;
  /** Whether it was given as a run. */
  readonly run: boolean;
}

/** A {@link StockStick} with its defaults filled in. */
export interface CheckedStick {
  /** Name. */
  readonly id: string;
  /** Length. */
  readonly length: number;
  /** How many there are, Infinity for as many as needed. */
  readonly count: number;
  /** What using one costs. */
  readonly cost: number;
  /** Where no piece may lie. */
  readonly defects: readonly Stretch[];
}

/** A {@link StockJob} with its defaults filled in. */
export interface CheckedJob {
  /** Names of the pieces. */
  readonly ids: readonly string[];
  /** How many of each. */
  readonly counts: Float64Array;
  /** What each is; those that are alike are one object. */
  readonly pieces: readonly CheckedPiece[];
  /** The sticks. */
  readonly sticks: readonly CheckedStick[];
  /** Width of a saw cut. */
  readonly kerf: number;
  /** Length lost at the start and the end of a stick. */
  readonly trim: Trims;
  /** Shortest offcut worth keeping; undefined if none is. */
  readonly keep: number | undefined;
  /** Worth of a kept offcut per length. */
  readonly credit: number;
  /** The grid that was asked for. */
  readonly resolution: number | undefined;
}

type Fields = Readonly<Record<string, unknown>>;

/** An object of known fields. Jobs come from forms and files, where a misspelled key would silently change the plan. */
function checkFields(value: unknown, path: string, keys: readonly string[]): Fields {
  const object = checkObject(value, path);
  for (const key of Object.keys(object)) {
    if (keys.includes(key)) continue;
    const list = keys.map((name) => `\`${name}\``).join(", ");
    reject("unknown", `${path}.${key}`, object[key], `Expected \`${path}\` to have no key but ${list}, got \`${key}\``);
  }
  return object;
}

/** An array with something in it. */
function checkList(value: unknown, path: string, what: string): readonly unknown[] {
  const list = checkArray(value, path, `an array of ${what}s`);
  if (list.length === 0) reject("range", path, value, `Expected \`${path}\` to have at least one ${what}, got none`);
  return list;
}

function checkShare(value: unknown, path: string, length: number): ShareKey {
  const { key, saving } = checkFields(value, path, ["key", "saving"]);
  // The piece after must not start before this one.
  return { key: checkText(key, `${path}.key`), saving: checkNumber(saving, `${path}.saving`, 0, length) };
}

function checkPiece(piece: Fields, path: string): CheckedPiece {
  const { length, run, share } = piece;
  if (checkOneOf(piece, path, ["length", "run"]) === "length") {
    const own = checkLength(length, `${path}.length`);
    return {
      parts: [own],
      share: share === undefined ? undefined : checkShare(share, `${path}.share`, own),
      run: false,
    };
  }
  if (share !== undefined) checkOneOf(piece, path, ["run", "share"]);
  const parts = checkList(run, `${path}.run`, "length").map((part, k) => checkLength(part, `${path}.run[${k}]`));
  return { parts, share: undefined, run: true };
}

function checkStretch(value: unknown, path: string, length: number): Stretch {
  const stretch = checkFields(value, path, ["start", "end"]);
  const start = checkNumber(stretch["start"], `${path}.start`, 0, length);
  return { start, end: checkNumber(stretch["end"], `${path}.end`, start, length) };
}

function checkStick(value: unknown, path: string): CheckedStick {
  const stick = checkFields(value, path, ["id", "length", "count", "cost", "defects"]);
  const length = checkLength(stick["length"], `${path}.length`);
  const { count, cost = length, defects = [] } = stick;
  const zones = checkArray(defects, `${path}.defects`);
  const otherwise = zones.length > 0 ? 1 : Infinity;
  return {
    id: checkText(stick["id"], `${path}.id`),
    length,
    count: count === undefined ? otherwise : checkInteger(count, `${path}.count`, 0, MOST),
    cost: checkNumber(cost, `${path}.cost`, 0, MAX_LENGTH),
    defects: zones.map((zone, k) => checkStretch(zone, `${path}.defects[${k}]`, length)),
  };
}

function checkTrim(value: unknown): Trims {
  const both = typeof value !== "object" || value === null;
  const { start, end } = both ? { start: value, end: value } : checkFields(value, "job.trim", ["start", "end"]);
  return {
    start: checkLengthOrZero(start, both ? "job.trim" : "job.trim.start"),
    end: checkLengthOrZero(end, both ? "job.trim" : "job.trim.end"),
  };
}

function checkUnique(ids: readonly string[], path: string): void {
  const seen = new Set<string>();
  ids.forEach((id, k) => {
    if (seen.has(id))
      refuse("conflict", `${path}[${k}].id`, id, `another name than \`${path}[${ids.indexOf(id)}].id\``);
    seen.add(id);
  });
}

/**
 * Checks a job and fills in its defaults.
 *
 * @param value - the job as it came
 * @returns the job
 * @throws {InputError} when a field is missing, unknown or out of bounds
 */
export function checkJob(value: StockJob): CheckedJob {
  const job = checkFields(value, "job", ["pieces", "sticks", "kerf", "trim", "keep", "credit", "resolution"]);
  const { kerf = 0, trim = 0, credit = 0, keep, resolution } = job;
  const given = checkArray(job["pieces"], "job.pieces", "an array of pieces");
  const counts = new Float64Array(given.length);
  const ids: string[] = [];
  const alike = new Map<string, CheckedPiece>();
  const savings = new Map<string, number>();
  const pieces = given.map((item, k): CheckedPiece => {
    const path = `job.pieces[${k}]`;
    const fields = checkFields(item, path, ["id", "length", "run", "count", "share"]);
    ids.push(checkText(fields["id"], `${path}.id`));
    const { count = 1 } = fields;
    counts[k] = checkInteger(count, `${path}.count`, 0, MOST);
    const piece = checkPiece(fields, path);
    const { parts, share, run } = piece;
    if (share !== undefined) {
      const other = savings.get(share.key) ?? share.saving;
      if (share.saving !== other)
        refuse("conflict", `${path}.share.saving`, share.saving, `${other} like that of the same key before it`);
      savings.set(share.key, other);
    }
    const name = `${run} ${parts.join()} ${share?.key ?? ""}`;
    const same = alike.get(name) ?? piece;
    alike.set(name, same);
    return same;
  });
  const sticks = checkList(job["sticks"], "job.sticks", "stick").map((stick, k) =>
    checkStick(stick, `job.sticks[${k}]`),
  );
  checkUnique(ids, "job.pieces");
  checkUnique(
    sticks.map(({ id }) => id),
    "job.sticks",
  );
  const total = sumOf(counts);
  if (total > MOST) refuse("range", "job.pieces", total, `at most ${MOST} pieces in all`);
  const worth = checkNumber(credit, "job.credit", 0, MAX_LENGTH);
  const least = keep === undefined && worth > 0 ? 0 : keep;
  return {
    ids,
    counts,
    pieces,
    sticks,
    kerf: checkLengthOrZero(kerf, "job.kerf"),
    trim: checkTrim(trim),
    keep: least === undefined ? undefined : checkLengthOrZero(least, "job.keep"),
    credit: worth,
    resolution: resolution === undefined ? undefined : checkLength(resolution, "job.resolution"),
  };
}
