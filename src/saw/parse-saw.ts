import { checkLength, checkNumber, checkText, checkWord } from "../core/check.js";
import { orFirst, outcomeOf, type InputOutcome } from "../core/input-issue.js";
import { fieldsTogether, type FieldCheck } from "../core/together.js";
import type { BevelScale, MiterScale, Saw } from "./saw.js";

const reach: FieldCheck<number> = (value, path) => checkNumber(value, path, 0, 90, "degrees from 0 to 90");
const step: FieldCheck<number> = (value, path) => checkNumber(value, path, 1e-6, 45, "degrees from 0.000001 to 45");
const size: FieldCheck<number | undefined> = (value, path) =>
  value === undefined ? undefined : checkLength(value, path);

const miter: FieldCheck<MiterScale> = (value, path) =>
  fieldsTogether<MiterScale>(value, path, {
    left: reach,
    right: reach,
    reads: (word, at) => checkWord<MiterScale["reads"]>(word, at, ["from-square", "from-fence"]),
    step,
  });

const bevel: FieldCheck<BevelScale> = (value, path) =>
  fieldsTogether<BevelScale>(value, path, {
    left: reach,
    right: reach,
    reads: (word, at) => checkWord<BevelScale["reads"]>(word, at, ["from-vertical", "from-table"]),
    step,
  });

/**
 * Reads a saw; every field reports its own refusal.
 *
 * @param value - the saw
 * @param path - its name in error texts
 * @returns the saw
 * @throws {AggregateError} of every refusal, see `together`
 */
export function readSaw(value: unknown, path: string): Saw {
  return fieldsTogether<Saw>(value, path, {
    fence: (word, at) => checkWord<Saw["fence"]>(word, at, ["near", "far"]),
    miter,
    bevel,
    depth: size,
    depthAt45: size,
    crosscut: size,
    gaugeReach: size,
  });
}

/**
 * Reads a saw that was written by hand or comes from JSON.
 *
 * @param value - the saw
 * @param path - its name in error texts; default `saw`
 * @returns a copy of the saw
 * @throws {InputError} for the first field that is missing, unknown, of another type or out of range; {@link tryParseSaw} tells of all
 * @example
 * ```ts
 * import { parseSaw, miterSaw } from "miterwright/saw";
 *
 * const saw = parseSaw(JSON.parse(JSON.stringify(miterSaw({ depth: 90 }))));
 * saw.depth; //=> 90
 * ```
 */
export function parseSaw(value: unknown, path = "saw"): Saw {
  checkText(path, "path");
  return orFirst(() => readSaw(value, path));
}

/**
 * Reads a saw from anywhere, or tells of everything that is wrong with it.
 *
 * @param value - anything
 * @param path - its name in error texts; default `saw`
 * @returns a copy of the saw, or the issues in the order of its fields
 * @example
 * ```ts
 * import { tableSaw, tryParseSaw } from "miterwright/saw";
 *
 * const outcome = tryParseSaw({ ...tableSaw(), depth: -1, crosscut: "wide" });
 * outcome.ok ? [] : outcome.issues.map((issue) => issue.path); //=> ["saw.depth", "saw.crosscut"]
 * ```
 */
export function tryParseSaw(value: unknown, path = "saw"): InputOutcome<Saw> {
  checkText(path, "path");
  return outcomeOf(() => readSaw(value, path));
}
