import { geometryOf } from "./frame-geometry.js";
import { attempt, type InputIssue } from "./input-issue.js";
import { readBrief } from "./read-brief.js";

/**
 * Checks a brief from anywhere (a form, a file, a link) and reports every issue at once.
 *
 * Of a profile and of the measures of a saw or a wood, which come as a whole, the first issue stands for all. A key that is not known is an issue too, wherever
 * in the brief it stands but in a profile, which may carry data of your own; so is what `fitStock` would refuse of the sticks.
 *
 * @param brief - anything
 * @returns the issues, in the order of the brief's fields; empty when `planFrame` will take it
 * @example
 * ```ts
 * import { checkBrief } from "miterwright/frame";
 *
 * const issues = checkBrief({ sides: 2, slope: 100, opening: {}, measured: { levelWidth: 40 } });
 * issues.map((issue) => issue.path); //=> ["sides", "slope", "opening"]
 * ```
 */
export function checkBrief(brief: unknown): readonly InputIssue[] {
  const read = readBrief(brief);
  if (read.brief === undefined) return read.issues;
  const filled = read.brief;
  const issues: InputIssue[] = [];
  attempt(issues, () => geometryOf(filled));
  return issues;
}
