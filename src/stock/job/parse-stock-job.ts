import {
  checkArray,
  checkFields,
  checkInteger,
  checkLength,
  checkLengthOrZero,
  checkNumber,
  checkObject,
  MAX_LENGTH,
} from "../../core/check.js";
import { orFirst, outcomeOf, type InputOutcome } from "../../core/input-issue.js";
import { plainCopy } from "../../core/plain-copy.js";
import { validateWith, type StandardSchema } from "../../core/standard-schema.js";
import { together } from "../../core/together.js";
import { checkJob, checkPiece, checkTrim, JOB_KEYS, PIECE_KEYS } from "./check-job.js";
import { checkName, checkSticks, MOST } from "./check-sticks.js";
import type { StockJob } from "./stock-job.js";

/** Looks at every piece; each of its fields reports its own refusal. */
function lookAtPieces(value: unknown, path: string): void {
  const seen = new Map<string, number>();
  together(
    checkArray(value, path, "an array of pieces").map((item, k) => () => {
      const at = `${path}[${k}]`;
      const piece = checkObject(item, at);
      together<unknown>([
        () => checkFields(piece, at, PIECE_KEYS, together),
        () => checkName(piece["id"], path, k, seen),
        () => checkPiece(piece, at),
        () => checkInteger(piece["count"] ?? 1, `${at}.count`, 0, MOST),
      ]);
    }),
  );
}

/** Reads a job; its fields report their own refusals, and where there are none what they say together. */
function readStockJob(value: unknown): StockJob {
  const job = checkObject(value, "job");
  const { kerf = 0, trim = 0, keep = 0, credit = 0, resolution = 1 } = job;
  together<unknown>([
    () => checkFields(job, "job", JOB_KEYS, together),
    () => {
      lookAtPieces(job["pieces"], "job.pieces");
    },
    () => checkSticks(job["sticks"], "job.sticks", together),
    () => checkLengthOrZero(kerf, "job.kerf"),
    () => checkTrim(trim, "job.trim"),
    () => checkLengthOrZero(keep, "job.keep"),
    () => checkNumber(credit, "job.credit", 0, MAX_LENGTH),
    () => checkLength(resolution, "job.resolution"),
  ]);
  checkJob(job as unknown as StockJob);
  return plainCopy(job as unknown as StockJob);
}

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
  return outcomeOf(() => readStockJob(value));
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
  return orFirst(() => readStockJob(value));
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
