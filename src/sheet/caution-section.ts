import { describeCaution, type FramePlan } from "../frame/index.js";
import type { StockFit } from "../stock/index.js";
import { statusText } from "./stock-section.js";
import { element, type Content, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

type Caution = FramePlan["cautions"][number];

/** The gravest first. */
const SEVERITIES: readonly Caution["severity"][] = ["danger", "care", "note"];

const FIXED: string =
  "Saws and glass hurt people. This sheet is arithmetic, not advice: it defers to the saw's manual, to local codes for glazing and hanging, and to qualified advice. Keep guards on and hands out of the blade's path, and prove settings on scrap. What names no source is common practice.";

/** A caution with its numbers and its printed source. */
function cautionItem(caution: Caution, words: Words): Content {
  const text = describeCaution(caution, words);
  const behind = [text.numbers, text.source].filter((part) => part !== "").join("; ");
  return element("li", element("strong", `${text.title}.`), ` ${text.sentence}${behind === "" ? "" : ` (${behind})`}`);
}

/**
 * What has to be known before anything else: that the contents miss the lip, that no stick is long enough, or that the sticks run out. A plan with one of
 * these is not one to cut by.
 *
 * @param plan - the plan
 * @param fit - what `fitStock` made of its job
 * @param words - the formatters
 * @returns a paragraph for each, or nothing
 */
export function firstWord(plan: FramePlan, fit: StockFit | undefined, words: Words): Markup[] {
  const grave = plan.cautions.filter(
    ({ code, severity }) => (code === "missed-lip" && severity !== "note") || code === "short-stick",
  );
  const reasons = grave.map((caution) => {
    const { sentence, numbers } = describeCaution(caution, words);
    return `${sentence} (${numbers})`;
  });
  if (fit?.status === "short") reasons.push(statusText(fit));
  return reasons.map((reason) => element("p", element("strong", `Not ready to cut. ${reason}`)));
}

/**
 * What to beware of: the plan's own cautions, the gravest first, and what always holds.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns the section
 */
export function cautionSection(plan: FramePlan, words: Words): Markup {
  const items = SEVERITIES.flatMap((severity) =>
    plan.cautions.filter((caution) => caution.severity === severity).map((caution) => cautionItem(caution, words)),
  );
  return element("section", element("h2", "Cautions"), element("p", FIXED), element('ul class="columns"', ...items));
}
