import { describeCheck } from "../words/index.js";
import { NOTHING, withinText } from "../drawing/within-text.js";
import type { FrameCheck, FramePlan } from "../frame/index.js";
import { glueBlock, truenessBlock } from "./assembly-section.js";
import { element, table, type Markup } from "./html.js";
import { finely, type Words } from "./sheet-options.js";

/** Checks that are made again on the glued frame, and those of the dry one in whose row they stand. */
const AGAIN: Readonly<Partial<Record<FrameCheck["code"], FrameCheck["code"]>>> = {
  "glued-across-flats": "opening-across-flats",
  "glued-across-corners": "opening-across-corners",
  "glued-flatness": "flatness",
};

/**
 * Putting together: what to measure on the loose pieces, the dry and the glued frame, how it is glued, and how true the saw must be for it.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @param year - what a year does to it, in a block of its own
 * @returns the section
 */
export function checkSection(plan: FramePlan, words: Words, year: Markup): Markup {
  const again = new Set(plan.checks.map(({ code }) => AGAIN[code]));
  const rows = plan.checks
    .filter(({ code }) => AGAIN[code] === undefined)
    .map((check) => [
      describeCheck(check, plan.geometry),
      // Rounded to the graduations of a rule, a value could be off by more than its tolerance.
      (check.tolerance === null ? words : finely(words))[check.kind](check.value),
      withinText(check, finely(words)),
      "",
      again.has(check.code) ? "" : NOTHING,
    ]);
  return element(
    "section",
    element("h2", "Dry fit and checks"),
    element(
      'div class="beside keep"',
      table({
        caption: "Measure on the loose pieces, dry without glue, and again once glued",
        heads: ["what", "must be", "within", "is", "glued"],
        rows,
      }),
      glueBlock(plan, words),
    ),
    year.html === "" ? truenessBlock(plan, words) : element('div class="two"', truenessBlock(plan, words), year),
  );
}
