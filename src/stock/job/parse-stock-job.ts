import {
  checkArray,
  checkObject,
  checkOneOf,
  inOrder,
  LENGTH,
  LENGTH_OR_ZERO,
  MAX_LENGTH,
  refuse,
} from "../../core/check.js";
import { readField, type Field, type FieldCheck, type Fields, type NumberField } from "../../core/field.js";
import { outcomeOf, type InputOutcome } from "../../core/input-issue.js";
import { checkVersion } from "../../core/schema-version.js";
import { validateWith, type StandardSchema } from "../../core/standard-schema.js";
import { together } from "../../core/together.js";
import { checkJob, checkJobVersion } from "./check-job.js";
import { checkName, MOST, readSticks } from "./check-sticks.js";
import type { ShareKey, StockJob, StockPiece, Trims } from "./stock-job.js";

/** What a piece may have, whether it is one or a sequence. */
interface GivenPiece {
  readonly id: string;
  readonly length?: number | undefined;
  readonly sequence?: readonly number[] | undefined;
  readonly count?: number | undefined;
  readonly share?: ShareKey | undefined;
}

const WORTH: NumberField = { kind: "number", min: 0, max: MAX_LENGTH };
const SHARE: Fields<ShareKey> = { key: { kind: "text" }, saving: WORTH };
const PIECE: Fields<GivenPiece> = {
  id: { kind: "text" },
  length: { kind: "optional", of: LENGTH },
  sequence: {
    kind: "optional",
    of: { kind: "list", of: LENGTH, what: "an array of one length or more", least: 1 },
  },
  count: { kind: "optional", of: { kind: "integer", min: 0, max: MOST } },
  share: { kind: "optional", of: { kind: "record", fields: SHARE } },
};

/** Reads pieces; `savings` holds what each key saved so far. */
const readPieces: FieldCheck<readonly StockPiece[]> = (value, path, run) => {
  const [seen, savings] = [new Map<string, number>(), new Map<string, number>()];
  return run(
    checkArray(value, path, "an array of pieces").map((item, k) => () => {
      const at = `${path}[${k}]`;
      const given = checkObject(item, at);
      const { length, sequence, share } = given;
      const most = typeof length === "number" && length > 0 ? length / 2 : MAX_LENGTH;
      const readShare: FieldCheck<ShareKey> = (shared, place) => {
        const fields: Fields<ShareKey> = { key: SHARE.key, saving: { kind: "number", min: 0, max: most } };
        const read = readField<ShareKey>({ kind: "record", fields }, shared, place, run);
        const other = savings.get(read.key) ?? read.saving;
        if (read.saving !== other)
          refuse("conflict", `${place}.saving`, read.saving, `${other}, the saving of its key`);
        savings.set(read.key, other);
        return read;
      };
      const fields: Fields<GivenPiece> = {
        ...PIECE,
        id: (id) => checkName(id, path, k, seen),
        share: { kind: "optional", of: readShare },
      };
      const [piece] = run<unknown>([
        () => readField<GivenPiece>({ kind: "record", fields }, given, at, run),
        () => checkOneOf(given, at, ["length", "sequence"]),
        () => sequence !== undefined && share !== undefined && checkOneOf(given, at, ["sequence", "share"]),
      ]);
      return piece as StockPiece;
    }),
  );
};

const TRIMS: Fields<Trims> = { start: LENGTH_OR_ZERO, end: LENGTH_OR_ZERO };
const TRIM: Field<number | Trims> = {
  kind: "either",
  of: [LENGTH_OR_ZERO, { kind: "record", fields: TRIMS }],
  which: (value) => (typeof value === "object" && value !== null ? 1 : 0),
};
const readVersion: FieldCheck<1> = (value, path) => checkVersion(value, path, "job");
const JOB: Fields<StockJob> = {
  pieces: readPieces,
  sticks: readSticks,
  kerf: { kind: "optional", of: LENGTH_OR_ZERO },
  trim: { kind: "optional", of: TRIM },
  keep: { kind: "optional", of: LENGTH_OR_ZERO },
  credit: { kind: "optional", of: WORTH },
  resolution: { kind: "optional", of: LENGTH },
  schemaVersion: { kind: "optional", of: readVersion },
};

/** Reads a job; its fields report their own refusals, and where there are none what they say together. */
export const readStockJob: FieldCheck<StockJob> = (value, path, run) => {
  checkJobVersion(value, path);
  const job = readField<StockJob>({ kind: "record", fields: JOB }, value, path, run);
  checkJob(job, path);
  return job;
};

/**
 * Reads a stock-fitting job from anywhere, or tells of everything that is wrong with it.
 *
 * @param value - anything
 * @returns a copy of the job, or the issues in the order of its fields
 * @example
 * ```ts
 * import { tryParseStockJob } from "miterwright/stock";
 *
 * const outcome = tryParseStockJob({ pieces: [{ id: "side", length: -1, count: 4.5 }], sticks: [{ id: "ash", length: 2400 }] });
 * outcome.ok ? [] : outcome.issues.map((issue) => issue.path); //=> ["job.pieces[0].length", "job.pieces[0].count"]
 * ```
 */
export function tryParseStockJob(value: unknown): InputOutcome<StockJob> {
  return outcomeOf(() => readStockJob(value, "job", together));
}

/**
 * Reads a stock-fitting job from anywhere, for a caller to whom the first issue is enough.
 *
 * @param value - anything
 * @returns a copy of the job
 * @throws {InputError} for the first issue; {@link tryParseStockJob} tells of all
 * @example
 * ```ts
 * import { fitStock, parseStockJob } from "miterwright/stock";
 *
 * const text = '{ "pieces": [{ "id": "side", "length": 500, "count": 4 }], "sticks": [{ "id": "ash", "length": 2400 }] }';
 * fitStock(parseStockJob(JSON.parse(text))).status; //=> "optimal"
 * ```
 */
export function parseStockJob(value: unknown): StockJob {
  return readStockJob(value, "job", inOrder);
}

/**
 * The schema of a stock-fitting job, for whatever takes schemas that follow the open Standard Schema interface: forms, servers, validators.
 *
 * It reads what {@link tryParseStockJob} reads, and gives the same job and the same issues.
 *
 * @example
 * ```ts
 * import { stockJobSchema } from "miterwright/stock";
 *
 * const result = stockJobSchema["~standard"].validate({ pieces: [{ id: "side", length: 0 }], sticks: [{ id: "ash", length: 2400 }] });
 * result.issues?.[0]?.path; //=> ["pieces", 0, "length"]
 * ```
 */
export const stockJobSchema: StandardSchema<StockJob> = {
  "~standard": {
    version: 1,
    vendor: "miterwright",
    validate: (value) => validateWith(tryParseStockJob, "job", value),
  },
};
