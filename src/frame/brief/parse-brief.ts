import { InputError } from "../../core/input-error.js";
import { attempt, type InputIssue, type InputOutcome } from "../../core/input-issue.js";
import type { FilledBrief } from "./brief.js";
import { geometryOf } from "../frame-geometry.js";
import { readBrief } from "./read-brief.js";

/**
 * Reads a brief from anywhere (a form, a file, a link), or reports every issue at once.
 *
 * The figures of a wood come as a whole: the first issue stands for all. A key that is not known is an issue too, wherever in the brief it stands but in a profile,
 * which may carry data of your own; so is what `fitStock` would refuse of the sticks.
 *
 * @param brief - anything
 * @returns the brief with its defaults filled in, a copy that `planFrame` takes, or the issues in the order of the brief's fields
 * @example
 * ```ts
 * import { tryParseBrief } from "miterwright/frame";
 *
 * const outcome = tryParseBrief({ sides: 2, slope: 100, opening: {}, measured: { levelWidth: 40 } });
 * outcome.ok ? [] : outcome.issues.map((issue) => issue.path); //=> ["sides", "slope", "opening"]
 * ```
 */
export function tryParseBrief(brief: unknown): InputOutcome<FilledBrief> {
  const read = readBrief(brief);
  if (read.brief === undefined) return { ok: false, issues: read.issues };
  const value = read.brief;
  const issues: InputIssue[] = [];
  attempt(issues, () => geometryOf(value));
  return issues.length === 0 ? { ok: true, value } : { ok: false, issues };
}

/**
 * Reads a brief from anywhere, for a caller to whom the first issue is enough.
 *
 * @param brief - anything
 * @returns the brief with its defaults filled in, a copy that `planFrame` takes
 * @throws {InputError} for the first issue; {@link tryParseBrief} reports all
 * @example
 * ```ts
 * import { parseBrief } from "miterwright/frame";
 *
 * const text = '{ "sides": 6, "opening": { "side": 200 }, "measured": { "levelWidth": 40 } }';
 * parseBrief(JSON.parse(text)).unit; //=> "mm"
 * ```
 */
export function parseBrief(brief: unknown): FilledBrief {
  const outcome = tryParseBrief(brief);
  if (outcome.ok) return outcome.value;
  throw new InputError(outcome.issues[0]!);
}
