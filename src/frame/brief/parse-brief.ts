import { inOrder, type RunChecks } from "../../core/check.js";
import { outcomeOf, type InputOutcome } from "../../core/input-issue.js";
import { together } from "../../core/together.js";
import type { FilledBrief } from "./brief.js";
import { geometryOf } from "../frame-geometry.js";
import { readBrief } from "./read-brief.js";

/** Reads a brief, and makes sure that its frame can be: only then it is one that `planFrame` takes. */
function readWhole(value: unknown, run: RunChecks): FilledBrief {
  const brief = readBrief(value, run);
  geometryOf(brief);
  return brief;
}

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
  return outcomeOf(() => readWhole(brief, together));
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
  return readWhole(brief, inOrder);
}
