import { checkObject, refuse } from "../../core/check.js";
import { readStored } from "../../core/stored.js";
import type { Drawing, FigureBlock, PageDocument } from "../../drawing/index.js";
import { freezeShowing } from "../../drawing/internal.js";
import { element } from "../html/html.js";
import { writeBlock, type BlockStyle } from "../html/write-block.js";
import type { Report } from "../report.js";
import { storedReport } from "../stored-report.js";
import { reportMarkdown } from "./report-markdown.js";

/** Options of {@link showReport}. */
export interface ShowReportOptions {
  /** Draws a figure of the report. */
  readonly figure: (block: FigureBlock) => Drawing;
}

/** A report that shows itself in notebooks, and writes itself as HTML and Markdown. */
export interface ShownReport extends Report {
  /**
   * The report as Markdown, its figures left out.
   *
   * @returns lines, of which the last has no line end
   */
  readonly toString: () => string;
  /**
   * The report as HTML, with its figures, without styles and ids: a page's own style sheet says how it looks.
   *
   * @returns an `article` element
   */
  readonly toHtml: () => string;
  /**
   * The report as an element of a page. It is built without the parser of HTML, so that a strict Content-Security-Policy and Trusted Types allow it.
   *
   * @param document - the page's document; default the global one
   * @returns a new `article` element that is in no page yet
   * @throws {InputError} when no document is given and there is no global one
   */
  readonly toElement: (document?: PageDocument) => object;
}

/** The report as an element. */
function htmlOf({ title, sections }: Report, style: BlockStyle): string {
  const parts = sections.map((section) =>
    element(
      "section",
      element("h3", section.title),
      ...section.blocks.map((block) => writeBlock(block, section.name, style)),
    ),
  );
  return element("article", element("h2", title), ...parts).html;
}

/**
 * Makes a report show itself in notebooks, and write itself as HTML and Markdown.
 *
 * @param report - from a describer
 * @param options - how its figures are drawn
 * @returns the frozen report, with functions that are not enumerable
 * @throws {InputError} when the report is none, or `figure` is no function
 * @example
 * ```ts
 * import { drawFigure } from "miterwright/drawing";
 * import { planFrame } from "miterwright/frame";
 * import { describePlan, showReport } from "miterwright/report";
 * import { formatters } from "miterwright/units";
 *
 * const plan = planFrame({ sides: 6, opening: { side: 200 }, measured: { levelWidth: 40 }, unit: "mm" });
 * const formats = formatters({ unit: "mm" });
 * const shown = showReport(describePlan(plan, { formats }), { figure: (block) => drawFigure(plan, block, { formats }) });
 * shown.toString().split("\n")[0]; //=> "# Shop sheet: frame of 6 sides, lying flat"
 * ```
 */
export function showReport(report: Report, options: ShowReportOptions): ShownReport {
  const { title, sections } = readStored(report, "report", storedReport);
  const { figure } = checkObject(options) as unknown as ShowReportOptions;
  if (typeof figure !== "function") refuse("type", "figure", figure, "a function that draws a figure");
  const data: Report = { title, sections };
  const toHtml = (): string => htmlOf(data, { draw: figure, tableTag: () => "table" });
  const toString = (): string => reportMarkdown(data);
  return freezeShowing(data, {
    markup: toHtml,
    bundle: () => ({ "text/html": toHtml(), "text/markdown": toString(), "text/plain": toString() }),
    functions: { toString, toHtml },
  }) as ShownReport;
}
