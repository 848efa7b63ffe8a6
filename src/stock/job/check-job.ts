import {
  checkArray,
  checkFields,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  checkOneOf,
  checkText,
  isRecord,
  MAX_LENGTH,
  refuse,
} from "../../core/check.js";
import { checkVersion } from "../../core/schema-version.js";
import { finish, RECORDS_BETWEEN_PAUSES, type Steps } from "../steps.js";
import { checkList, checkSticks, checkName, MOST, type CheckedStick } from "./check-sticks.js";
import type { ShareKey, StockJob, Trims } from "./stock-job.js";
import { sumOf } from "../sums.js";

/** What pieces of equal length, sequence and share have in common: a million pieces of a name each are still few of these. */
export interface CheckedPiece {
  /** Lengths of the parts; one for a piece that is no sequence. */
  readonly parts: readonly number[];
  /** What neighbors save. */
  readonly share: ShareKey | undefined;
  /** Whether it was given as a sequence. */
  readonly sequence: boolean;
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

/** The keys of a job. */
const JOB_KEYS: readonly (keyof StockJob)[] = [
  "pieces",
  "sticks",
  "kerf",
  "trim",
  "keep",
  "credit",
  "resolution",
  "schemaVersion",
];
/** The keys of a piece. */
const PIECE_KEYS: readonly string[] = ["id", "length", "sequence", "count", "share"];

function checkShare(value: unknown, path: string, length: number): ShareKey {
  const { key, saving } = checkFields(value, path, ["key", "saving"]);
  // The neighbors on both sides save, and must not reach each other: the shorter long side of a mitered piece is 0 at least.
  return { key: checkText(key, `${path}.key`), saving: checkNumber(saving, `${path}.saving`, 0, length / 2) };
}

/** Refuses another form of job, in which every other field may be another. */
export function checkJobVersion(job: unknown, at: string): void {
  const version = isRecord(job) ? job["schemaVersion"] : undefined;
  if (version !== undefined) checkVersion(version, `${at}.schemaVersion`, "job");
}

/** What a piece is, but for its name and how many there are; its keys are known to be those of a piece. */
function checkPiece(piece: Fields, path: string): CheckedPiece {
  const { length, sequence, share } = piece;
  if (checkOneOf(piece, path, ["length", "sequence"]) === "length") {
    const own = checkLength(length, `${path}.length`);
    return {
      parts: [own],
      share: share === undefined ? undefined : checkShare(share, `${path}.share`, own),
      sequence: false,
    };
  }
  if (share !== undefined) checkOneOf(piece, path, ["sequence", "share"]);
  const parts = checkList(sequence, `${path}.sequence`, "length").map((part, k) =>
    checkLength(part, `${path}.sequence[${k}]`),
  );
  return { parts, share: undefined, sequence: true };
}

/** What is lost at both ends, as one length or as two. */
function checkTrim(value: unknown, path: string): Trims {
  const both = typeof value !== "object" || value === null;
  const { start, end } = both ? { start: value, end: value } : checkFields(value, path, ["start", "end"]);
  return {
    start: checkLengthOrZero(start, both ? path : `${path}.start`),
    end: checkLengthOrZero(end, both ? path : `${path}.end`),
  };
}

/** Checks a job and fills in its defaults; `at` is its name in error texts. */
export function checkJob(value: StockJob, at: string = "job"): CheckedJob {
  return finish(readJob(value, at));
}

/** {@link checkJob} with a pause between some pieces. */
export function* readJob(value: StockJob, at: string = "job"): Steps<CheckedJob> {
  checkJobVersion(value, at);
  const job = checkFields(value, at, JOB_KEYS);
  const { kerf = 0, trim = 0, credit = 0, keep, resolution } = job;
  const given = checkArray(job["pieces"], `${at}.pieces`, "an array of pieces");
  const counts = new Float64Array(given.length);
  const ids: string[] = [];
  const seen = new Map<string, number>();
  const alike = new Map<string, CheckedPiece>();
  const savings = new Map<string, number>();
  const pieces: CheckedPiece[] = [];
  for (const [k, item] of given.entries()) {
    if (k % RECORDS_BETWEEN_PAUSES === RECORDS_BETWEEN_PAUSES - 1) yield;
    const path = `${at}.pieces[${k}]`;
    const fields = checkFields(item, path, PIECE_KEYS);
    ids.push(checkName(fields["id"], `${at}.pieces`, k, seen));
    const { count = 1 } = fields;
    counts[k] = checkInteger(count, `${path}.count`, 0, MOST);
    const piece = checkPiece(fields, path);
    const { parts, share, sequence } = piece;
    if (share !== undefined) {
      const other = savings.get(share.key) ?? share.saving;
      if (share.saving !== other)
        refuse("conflict", `${path}.share.saving`, share.saving, `${other}, the saving of its key`);
      savings.set(share.key, other);
    }
    const name = `${sequence} ${parts.join()} ${share?.key ?? ""}`;
    const same = alike.get(name) ?? piece;
    alike.set(name, same);
    pieces.push(same);
  }
  const sticks = checkSticks(job["sticks"], `${at}.sticks`);
  const total = sumOf(counts);
  if (total > MOST) refuse("range", `${at}.pieces`, total, `at most ${MOST} pieces in all`);
  const worth = checkNumber(credit, `${at}.credit`, 0, MAX_LENGTH);
  const least = keep === undefined && worth > 0 ? 0 : keep;
  return {
    ids,
    counts,
    pieces,
    sticks,
    kerf: checkLengthOrZero(kerf, `${at}.kerf`),
    trim: checkTrim(trim, `${at}.trim`),
    keep: least === undefined ? undefined : checkLengthOrZero(least, `${at}.keep`),
    credit: worth,
    resolution: resolution === undefined ? undefined : checkLength(resolution, `${at}.resolution`),
  };
}
