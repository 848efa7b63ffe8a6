import type { StockFit, StockJob } from "../stock/index.js";
import type { TellOptions } from "../words/index.js";
import { penOf } from "./pen.js";
import type { Report } from "./report.js";
import { fitSection } from "./stock/fit-section.js";
import { readFit } from "./stock/read-fit.js";

/**
 * Tells how sticks are cut up: what is taken, what it costs, how good that is, a picture of every layout, and the cut list.
 *
 * @param job - what is cut
 * @param fit - from `fitStock`; also one that was read back from JSON
 * @param options - formatters and words
 * @returns the report; its figures are drawn from `{ job, fit }`
 * @throws {InputError} when the fit is none for the job, or an option is not sound
 * @example
 * ```ts
 * import { describeFit } from "miterwright/report";
 * import { fitStock } from "miterwright/stock";
 * import { formatters } from "miterwright/units";
 *
 * const job = { pieces: [{ id: "side", length: 240, count: 9 }], sticks: [{ id: "larch", length: 1200 }], kerf: 3 };
 * const { sections } = describeFit(job, fitStock(job), { formats: formatters({ unit: "mm" }) });
 * sections[0]!.blocks.map(({ kind, name }) => `${kind} ${name}`); //=> ["list fit", "figure stock", "table cut-list"]
 * ```
 */
export function describeFit(job: StockJob, fit: StockFit, options: TellOptions): Report {
  const read = readFit(job, fit, "fit");
  const pen = penOf(options);
  return { title: pen.words.reports.titles.fit, sections: fitSection(job, read, pen) };
}
