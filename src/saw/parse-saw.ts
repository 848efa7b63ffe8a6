import { checkText, inOrder, LENGTH } from "../core/check.js";
import { readField, type Field, type Fields, type NumberField, type RecordField } from "../core/field.js";
import { outcomeOf, type InputOutcome } from "../core/input-issue.js";
import { together } from "../core/together.js";
import type { BevelScale, MiterScale, Saw } from "./saw.js";

const REACH: NumberField = { kind: "number", min: 0, max: 90, what: "degrees from 0 to 90" };
const STEP: NumberField = { kind: "number", min: 1e-6, max: 45, what: "degrees from 0.000001 to 45" };
const SIZE: Field<number | undefined> = { kind: "optional", of: LENGTH };

const MITER: Fields<MiterScale> = {
  left: REACH,
  right: REACH,
  reads: { kind: "word", words: ["from-square", "from-fence"] },
  step: STEP,
};
const BEVEL: Fields<BevelScale> = {
  left: REACH,
  right: REACH,
  reads: { kind: "word", words: ["from-vertical", "from-table"] },
  step: STEP,
};
const FIELDS: Fields<Saw> = {
  fence: { kind: "word", words: ["near", "far"] },
  miter: { kind: "record", fields: MITER },
  bevel: { kind: "record", fields: BEVEL },
  depth: SIZE,
  depthAt45: SIZE,
  crosscut: SIZE,
  gaugeReach: SIZE,
};
/** How a saw is read. */
export const SAW: RecordField<Fields<Saw>> = { kind: "record", fields: FIELDS };

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
  return readField<Saw>(SAW, value, path, inOrder);
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
  return outcomeOf(() => readField<Saw>(SAW, value, path, together));
}
