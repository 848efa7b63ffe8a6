import { isolate } from "../../core/isolate.js";
import { piecesText, summarizeLayouts } from "../../drawing/internal.js";
import type { StockFit, StockJob } from "../../stock/index.js";
import { figureOf, listOf, namesText, sectionOf, tableOf, type Pen } from "../pen.js";
import type { Block, ReportSection } from "../report.js";
import { column, plainTable, written, type Cell } from "../tables/plain-table.js";
import type { TableData } from "../tables/table-data.js";
import { statusText } from "./fit-status.js";

/** Layouts in one picture, so that a page can break between pictures. */
const TOGETHER: number = 6;
/** More layouts than this are only listed. */
const MOST_DRAWN: number = 30;

/** What the sticks cost in all, as far as costs were given. */
function costLines({ sticks }: StockJob, fit: StockFit, { words, formats }: Pen): string[] {
  const costs = new Map(sticks.map(({ id, cost }) => [id, cost]));
  const without = fit.sticks.filter(({ stick }) => costs.get(stick) === undefined).map(({ stick }) => stick);
  if (without.length === fit.sticks.length) return [];
  const sum = fit.sticks.reduce((total, { stick, count }) => total + count * (costs.get(stick) ?? 0), 0);
  const names = without.length === 0 ? null : namesText(without);
  return [words.stock.cost({ cost: formats.money(sum), without: names })];
}

function cutList(job: StockJob, fit: StockFit, { words, formats: { length } }: Pen): TableData {
  const { caption, heads } = words.stock.cutList;
  const rows = summarizeLayouts(job, fit).map((summary): Cell[] => [
    `${summary.times} × ${isolate(summary.stick)}`,
    written(summary.length, length),
    piecesText(summary, length, words.stock),
    summary.kept.length > 0
      ? words.stock.keep({ length: summary.kept.map(({ start, end }) => length(end - start)).join(", ") })
      : length(summary.offcut),
  ]);
  const columns = [column(heads.sticks), column(heads.length, "length"), column(heads.pieces), column(heads.offcut)];
  return plainTable(caption, columns, rows);
}

/** Pictures of the layouts, a few in each. */
function pictures({ layouts }: StockFit): Block[] {
  const drawn = Math.min(layouts.length, MOST_DRAWN);
  return Array.from({ length: Math.ceil(drawn / TOGETHER) }, (_, index) =>
    figureOf("stock", { layouts: [index * TOGETHER, Math.min((index + 1) * TOGETHER, drawn)] }),
  );
}

/** What to buy and how to cut it up. */
export function fitSection(job: StockJob, fit: StockFit, pen: Pen): ReportSection[] {
  const { words, formats } = pen;
  const { length } = formats;
  const taken = fit.sticks.map(({ stick, count }) => `${count} × ${isolate(stick)}`);
  const lines = [
    words.stock.take({ sticks: taken.length === 0 ? null : taken.join(", ") }),
    ...costLines(job, fit, pen),
    statusText(fit, pen),
    words.stock.sums({
      sticks: length(fit.sticksLength),
      pieces: length(fit.piecesLength),
      // Which offcuts are worth keeping is known only where it was said.
      kept: (job.keep ?? 0) > 0 ? length(fit.keptLength) : null,
      waste: length(fit.wasteLength),
    }),
  ];
  return sectionOf("stock", pen, [
    ...listOf("fit", [lines.join(" ")], { marker: "none" }),
    ...pictures(fit),
    ...tableOf("cut-list", cutList(job, fit, pen)),
  ]);
}
