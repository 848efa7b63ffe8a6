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
  reject,
} from "../core/check.js";
import type { ShareKey, StockJob, StockPiece, StockStick, Stretch } from "./stock-job.js";

/** Most pieces or sticks of one kind, and most pieces in all. */
const MOST: number = 1e9;

/** A {@link StockPiece} with its defaults filled in. */
export interface CheckedPiece {
  /** Name. */
  readonly id: string;
  /** Lengths of the parts; one for a piece that is no run. */
  readonly parts: readonly number[];
  /** How many. */
  readonly count: number;
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
  /** The pieces. */
  readonly pieces: readonly CheckedPiece[];
  /** The sticks. */
  readonly sticks: readonly CheckedStick[];
  /** Width of a saw cut. */
  readonly kerf: number;
  /** Length lost at the start and the end of a stick. */
  readonly trim: { readonly start: number; readonly end: number };
  /** Shortest offcut worth keeping; undefined if none is. */
  readonly keep: number | undefined;
  /** Worth of a kept offcut per length. */
  readonly credit: number;
  /** The grid that was asked for. */
  readonly resolution: number | undefined;
}

type Fields = Readonly<Record<string, unknown>>;

/** Jobs come from forms and files, where a misspelled key would silently change the plan. */
function checkKeys(object: Fields, path: string, keys: readonly string[]): void {
  for (const key of Object.keys(object)) {
    if (keys.includes(key)) continue;
    const list = keys.map((name) => `\`${name}\``).join(", ");
    reject("unknown", `${path}.${key}`, object[key], `Expected \`${path}\` to have no key but ${list}, got \`${key}\``);
  }
}

function checkShare(value: unknown, path: string): ShareKey | undefined {
  if (value === undefined) return undefined;
  const share = checkObject(value, path);
  checkKeys(share, path, ["key", "saving"]);
  return {
    key: checkText(share["key"], `${path}.key`),
    saving: checkLengthOrZero(share["saving"], `${path}.saving`),
  };
}

function checkPiece(value: unknown, path: string): CheckedPiece {
  const piece = checkObject(value, path);
  checkKeys(piece, path, ["id", "length", "run", "count", "share"]);
  const id = checkText(piece["id"], `${path}.id`);
  const run = checkOneOf(piece, path, ["length", "run"]) === "run";
  const parts = run ? checkArray(piece["run"], `${path}.run`, "an array of lengths") : [piece["length"]];
  if (parts.length === 0) {
    reject("range", `${path}.run`, piece["run"], `Expected \`${path}.run\` to have at least one length, got none`);
  }
  const share = checkShare(piece["share"], `${path}.share`);
  if (run && share !== undefined) {
    reject(
      "conflict",
      `${path}.share`,
      piece["share"],
      `Expected \`${path}\` to have no \`share\` since it is a run, got both`,
    );
  }
  return {
    id,
    parts: parts.map((part, k) => checkLength(part, run ? `${path}.run[${k}]` : `${path}.length`)),
    count: piece["count"] === undefined ? 1 : checkInteger(piece["count"], `${path}.count`, 0, MOST),
    share,
    run,
  };
}

function checkStretch(value: unknown, path: string, length: number): Stretch {
  const stretch = checkObject(value, path);
  checkKeys(stretch, path, ["start", "end"]);
  const start = checkNumber(stretch["start"], `${path}.start`, 0, length);
  return { start, end: checkNumber(stretch["end"], `${path}.end`, start, length) };
}

function checkStick(value: unknown, path: string): CheckedStick {
  const stick = checkObject(value, path);
  checkKeys(stick, path, ["id", "length", "count", "cost", "defects"]);
  const id = checkText(stick["id"], `${path}.id`);
  const length = checkLength(stick["length"], `${path}.length`);
  const defects = stick["defects"] === undefined ? [] : checkArray(stick["defects"], `${path}.defects`);
  const otherwise = defects.length > 0 ? 1 : Infinity;
  return {
    id,
    length,
    count: stick["count"] === undefined ? otherwise : checkInteger(stick["count"], `${path}.count`, 0, MOST),
    cost: stick["cost"] === undefined ? length : checkNumber(stick["cost"], `${path}.cost`, 0, MAX_LENGTH),
    defects: defects.map((defect, k) => checkStretch(defect, `${path}.defects[${k}]`, length)),
  };
}

function checkTrim(value: unknown): { start: number; end: number } {
  if (value === undefined) return { start: 0, end: 0 };
  if (typeof value !== "object" || value === null) {
    const both = checkLengthOrZero(value, "job.trim");
    return { start: both, end: both };
  }
  const trim = checkObject(value, "job.trim");
  checkKeys(trim, "job.trim", ["start", "end"]);
  return {
    start: checkLengthOrZero(trim["start"], "job.trim.start"),
    end: checkLengthOrZero(trim["end"], "job.trim.end"),
  };
}

function checkUniqueIds(items: readonly { readonly id: string }[], path: string): void {
  const places = new Map<string, number>();
  items.forEach(({ id }, k) => {
    const first = places.get(id);
    if (first !== undefined) {
      const at = `${path}[${k}].id`;
      reject(
        "conflict",
        at,
        id,
        `Expected \`${at}\` to differ from \`${path}[${first}].id\`, both are ${JSON.stringify(id)}`,
      );
    }
    places.set(id, k);
  });
}

/** Pieces of one key save the same, and never more than a piece is long: the one after must not start before it. */
function checkSharing(pieces: readonly CheckedPiece[]): void {
  const firsts = new Map<string, number>();
  pieces.forEach(({ share, parts }, k) => {
    if (share === undefined) return;
    const at = `job.pieces[${k}].share.saving`;
    const length = parts[0]!;
    if (share.saving > length) {
      reject(
        "conflict",
        at,
        share.saving,
        `Expected \`${at}\` to be at most the piece's length ${length}, got ${share.saving}`,
      );
    }
    const first = firsts.get(share.key) ?? k;
    firsts.set(share.key, first);
    const saving = pieces[first]!.share!.saving;
    if (saving !== share.saving) {
      reject(
        "conflict",
        at,
        share.saving,
        `Expected \`${at}\` to be ${saving} like \`job.pieces[${first}].share.saving\` of the same key, got ${share.saving}`,
      );
    }
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
  const job = checkObject(value, "job");
  checkKeys(job, "job", ["pieces", "sticks", "kerf", "trim", "keep", "credit", "resolution"]);
  const pieces = checkArray(job["pieces"], "job.pieces", "an array of pieces").map((piece, k) =>
    checkPiece(piece as StockPiece, `job.pieces[${k}]`),
  );
  const sticks = checkArray(job["sticks"], "job.sticks", "an array of sticks").map((stick, k) =>
    checkStick(stick as StockStick, `job.sticks[${k}]`),
  );
  if (sticks.length === 0) {
    reject("range", "job.sticks", job["sticks"], "Expected `job.sticks` to have at least one stick, got none");
  }
  checkUniqueIds(pieces, "job.pieces");
  checkUniqueIds(sticks, "job.sticks");
  checkSharing(pieces);
  const total = pieces.reduce((sum, piece) => sum + piece.count, 0);
  if (total > MOST) {
    reject(
      "range",
      "job.pieces",
      total,
      `Expected \`job.pieces\` to ask for at most ${MOST} pieces in all, got ${total}`,
    );
  }
  const credit = job["credit"] === undefined ? 0 : checkNumber(job["credit"], "job.credit", 0, MAX_LENGTH);
  const keep = job["keep"] === undefined ? undefined : checkLengthOrZero(job["keep"], "job.keep");
  return {
    pieces,
    sticks,
    kerf: job["kerf"] === undefined ? 0 : checkLengthOrZero(job["kerf"], "job.kerf"),
    trim: checkTrim(job["trim"]),
    keep: keep ?? (credit > 0 ? 0 : undefined),
    credit,
    resolution: job["resolution"] === undefined ? undefined : checkLength(job["resolution"], "job.resolution"),
  };
}
