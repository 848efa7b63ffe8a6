import { type FramePlan } from "../frame/index.js";
import { describeHanging } from "../words/index.js";
import { element, list, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

/**
 * How the frame hangs: where the hangers go, what they lie on, the wire and the load.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns blocks that stand below the molding; none where the frame does not hang
 */
export function hangingBlock(plan: FramePlan, words: Words): Markup[] {
  const lines = describeHanging(plan, words);
  return lines.length === 0 ? [] : [element('div class="keep"', element("h3", "Hanging"), list("ul", lines))];
}
