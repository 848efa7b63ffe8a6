import { type FramePlan } from "../frame/index.js";
import { describeMovement } from "../words/index.js";
import { element, list, type Markup } from "./html.js";
import { finely, type Words } from "./sheet-options.js";

/**
 * What a year does to the frame and to what is in it.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns a block that stands beside the checks, empty for a plan that knows of nothing that moves
 */
export function movementBlock(plan: FramePlan, words: Words): Markup {
  const lines = describeMovement(plan, finely(words));
  if (lines.length === 0) return { html: "" };
  return element("div", element("h3", "Over the year"), list("ul", lines));
}
