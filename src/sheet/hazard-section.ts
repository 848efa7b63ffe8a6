import { numberHazards, type FramePlan } from "../frame/index.js";
import { describeHazard } from "../words/index.js";
import type { StockFit } from "../stock/index.js";
import { statusText } from "./stock-section.js";
import { element, type Content, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

type Hazard = FramePlan["hazards"][number];

/** A plan with one of these is not one to cut by. */
const NOT_READY: readonly Hazard["code"][] = ["missed-lip", "lip-not-known", "short-stick"];

const FIXED: string =
  "Saws and glass hurt people. This sheet is arithmetic, not advice: it defers to the saw's manual, to local codes for glazing and hanging, and to qualified advice. Keep guards on and hands out of the blade's path, and prove settings on scrap. What names no source is common practice.";

/** A hazard with its numbers and its printed source. */
function hazardItem(hazard: Hazard, words: Words): Content {
  const text = describeHazard(hazard, words);
  const behind = [text.numbers, text.source].filter((part) => part !== "").join("; ");
  return element("li", element("strong", `${text.title}.`), ` ${text.sentence}${behind === "" ? "" : ` (${behind})`}`);
}

/**
 * What has to be known before anything else: that the contents miss the lip, that no stick is long enough, or that the sticks run out.
 *
 * @param plan - the plan
 * @param fit - what `fitStock` made of its stock job
 * @param words - the formatters
 * @returns a paragraph for each, or nothing
 */
export function firstWord(plan: FramePlan, fit: StockFit | undefined, words: Words): Markup[] {
  const grave = plan.hazards.filter(({ code }) => NOT_READY.some((one) => one === code));
  const reasons = grave.map((hazard) => {
    const { sentence, numbers } = describeHazard(hazard, words);
    return `${sentence} (${numbers})`;
  });
  if (fit?.status === "short") reasons.push(statusText(fit));
  return reasons.map((reason) => element("p", element("strong", `Not ready to cut. ${reason}`)));
}

/**
 * What to beware of: the plan's own hazards, numbered, the gravest first, and what always holds.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section
 */
export function hazardSection(plan: FramePlan, words: Words): Markup {
  const items = numberHazards(plan).map(({ hazard }) => hazardItem(hazard, words));
  return element("section", element("h2", "Hazards"), element("p", FIXED), element('ol class="columns"', ...items));
}
