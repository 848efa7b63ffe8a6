import { drawStock } from "miterwright/drawing";
import type { StockFit, StockJob } from "miterwright/stock";
import { html, trusted, type Markup } from "../html.js";
import type { Writers } from "../writers.js";
import { bullets } from "./tables.js";

/** More layouts than this are not drawn. */
const MOST_DRAWN: number = 24;

/**
 * That some pieces are missing.
 *
 * @param fit - a fit that is short
 * @returns a sentence
 */
export function shortageText(fit: StockFit): string {
  const { shortage, unplaced } = fit;
  const missing = unplaced.reduce((sum, { count }) => sum + count, 0);
  return shortage === "proven"
    ? `The rack is too small: however it is cut up, ${missing} ${missing === 1 ? "piece is" : "pieces are"} missing.`
    : `No way was found to get all pieces from the rack: ${missing} still missing.`;
}

/** What the sticks cost in all, as far as costs were typed; "" where none was. */
function costText({ sticks }: StockJob, fit: StockFit): string {
  let sum = 0;
  const without: string[] = [];
  for (const { stick, count } of fit.sticks) {
    const cost = sticks.find(({ id }) => id === stick)?.cost;
    if (cost === undefined) without.push(stick);
    else sum += count * cost;
  }
  if (without.length === fit.sticks.length) return "";
  return ` They cost ${sum.toFixed(2)}${without.length === 0 ? " in all" : `, and ${without.join(", ")} with no cost typed`}.`;
}

/** How good the plan is, in words. */
function verdict(fit: StockFit): string {
  const { status, relativeGap, stopped } = fit;
  if (status === "optimal") return "This is proven: no cheaper way to cut the sticks up exists.";
  if (status === "feasible") {
    const why =
      stopped === "asked" ? "The search was stopped. " : stopped === "time" ? "The search ran out of time. " : "";
    return `${why}A cheaper way may exist; it would save ${Number((100 * relativeGap).toPrecision(2))} % at the most.`;
  }
  return shortageText(fit);
}

/**
 * How the sticks are cut up.
 *
 * @param job - what was to be cut
 * @param fit - how it can be
 * @param writers - how lengths are written
 * @param width - width to aim at, in pixels
 * @returns the markup
 */
export function stockMarkup(job: StockJob, fit: StockFit, writers: Writers, width: number): Markup {
  const { length } = writers;
  const taken = fit.sticks.map(({ stick, count }) => `${count} × ${stick}`).join(", ");
  const drawn = { layouts: fit.layouts.slice(0, MOST_DRAWN) };
  const drawing = drawStock(job, drawn, { ...writers, width: Math.min(width, 700) });
  // Which offcuts are worth keeping is known only where it was said.
  const kept = (job.keep ?? 0) > 0 ? `Offcuts to keep: ${length(fit.keptLength)}. ` : "";
  const left = fit.layouts.length - drawn.layouts.length;
  return html`${bullets([
      `Take ${taken === "" ? "no stick" : taken}: ${length(fit.sticksLength)} in all.${costText(job, fit)}`,
      verdict(fit),
      `Pieces: ${length(fit.piecesLength)}. ${kept}Saw cuts and waste: ${length(fit.wasteLength)}.`,
    ])}
    <figure>${trusted(drawing.svg)}</figure>
    ${left > 0 ? html`<p>${left} more ways of cutting are on the shop sheet.</p>` : null}`;
}
