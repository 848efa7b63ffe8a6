import { checkFields } from "../core/check.js";
import { drawFigure } from "../drawing/index.js";
import type { FramePlan } from "../frame/index.js";
import { describePlan, type DescribePlanOptions } from "../report/index.js";
import { formatters } from "../units/index.js";
import { reportSheet, type PaperOptions } from "./report-sheet.js";

/** Options of {@link shopSheet}. */
export interface SheetOptions extends DescribePlanOptions, PaperOptions {}

/**
 * The shop sheet of a frame: one self-contained, printable HTML page with all that a maker at the saw needs.
 *
 * It has the pictures, the lengths at every edge, the sticks and how they are cut up, and the hazards. Then come the saw's settings and the steps in shop
 * order, what to check before gluing, and the panel. It prints on A4 and on Letter, holds no script and loads nothing. All text of the caller is escaped.
 *
 * @param plan - from `planFrame`; also one that was read back from JSON
 * @param options - formatters (default those of the brief's unit), words (default English), and if wanted stock fits, the paper, a title and a note
 * @returns an HTML document
 * @throws {InputError} when the plan is not one, an option is not sound, or a fit is given that is not one for the plan's stock job
 * @example
 * ```ts
 * import { planFrame } from "miterwright/frame";
 * import { molding } from "miterwright/profile";
 * import { shopSheet } from "miterwright/sheet";
 *
 * const profile = molding({ width: 42, thickness: 18, rabbet: { width: 8, depth: 9 } });
 * const plan = planFrame({ sides: 9, slope: 20, opening: { acrossFlats: 300 }, profile, unit: "mm" });
 * const html = shopSheet(plan, { title: "Tide-pool tray" });
 * html.startsWith("<!DOCTYPE html>"); //=> true
 * html.includes("<h1>Tide-pool tray</h1>"); //=> true
 * ```
 */
export function shopSheet(plan: FramePlan, options: SheetOptions = {}): string {
  checkFields(options, "", ["fits", "formats", "words", "paper", "title", "note"]);
  const { fits, words, paper, title, note } = options;
  const report = describePlan(plan, { fits, words, formats: options.formats });
  const formats = options.formats ?? formatters({ unit: plan.brief.unit });
  const [fit] = fits ?? [];
  const source = fit === undefined ? plan : { ...plan, fit };
  return reportSheet(report, {
    words,
    paper,
    title,
    note,
    figure: (block, shape) => drawFigure(source, block, { formats, words, ...shape }),
  });
}
