import type { FramePlan } from "../frame/index.js";
import { element, table, type Markup } from "./html.js";
import type { Words } from "./sheet-options.js";

/** How the last joints are closed; common practice, no printed source. */
function closingText(sides: number): string {
  return sides % 2 === 0
    ? `To close it, glue the pieces into two halves of ${sides / 2} each. Lay both halves together without glue: where they do not close, trim the ends of each half straight in one pass, then join them.`
    : "To close it: an odd number of sides has no straight split. Cut all pieces but the last, put them together without glue, and cut the last one to fit the gap that is left.";
}

/**
 * Putting together: a dry fit, what to measure on it, and how to close the frame.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @param year - what stands below the words on closing it
 * @returns the section
 */
export function checkSection(plan: FramePlan, words: Words, year: Markup): Markup {
  const { checks, geometry } = plan;
  const rows = checks.map(({ label, kind, value }) => [label, words[kind](value), ""]);
  return element(
    "section",
    element("h2", "Dry fit and checks"),
    element(
      'div class="beside keep"',
      table({ caption: "Measure on the dry frame", heads: ["what", "must be", "is"], rows }),
      element(
        "div",
        element("p", "Put all pieces together without glue before gluing any, and measure."),
        element("p", closingText(geometry.sides)),
        year,
      ),
    ),
  );
}
