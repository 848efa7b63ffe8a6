import { isolate } from "../core/isolate.js";
import { drawStock } from "../drawing/index.js";
import type { FramePlan } from "../frame/index.js";
import type { StockFit, StockJob } from "../stock/index.js";
import { describePieces, summarizeLayouts } from "../drawing/layout-summary.js";
import { costText } from "./cost-text.js";
import { element, join, table, type Markup } from "./html.js";
import { quantityText } from "../words/internal.js";
import type { Words } from "./sheet-options.js";

/** Layouts in one picture, so that a page can break between pictures. */
const TOGETHER: number = 6;
/** More layouts than this are only listed. */
const MOST_DRAWN: number = 30;

/**
 * How good the plan is, in the words of its proof.
 *
 * @param fit - the plan
 * @returns a sentence
 */
export function statusText(fit: StockFit): string {
  const { status, relativeGap, shortage, unplaced } = fit;
  if (status === "optimal") return "No cheaper way to cut the sticks up exists.";
  if (status === "feasible")
    return `A cheaper way may exist; it would save ${Number((100 * relativeGap).toPrecision(2))}% at the most.`;
  const missing = unplaced.map(({ piece, count }) => `${count} × ${isolate(piece)}`).join(", ");
  return `${shortage === "proven" ? "The sticks can't give all pieces" : "No way was found to get all pieces from the sticks"}: still missing ${missing}.`;
}

/** What the sticks cost in all, as far as costs were given; "" where none was. */
function stickCosts({ sticks }: StockJob, fit: StockFit): string {
  const costs = new Map(sticks.map(({ id, cost }) => [id, cost]));
  const withCost = fit.sticks.filter(({ stick }) => costs.get(stick) !== undefined);
  if (withCost.length === 0) return "";
  const sum = withCost.reduce((total, { stick, count }) => total + count * costs.get(stick)!, 0);
  const others = fit.sticks.filter(({ stick }) => costs.get(stick) === undefined).map(({ stick }) => stick);
  return ` They cost ${costText(sum)}${others.length === 0 ? " in all" : `, and ${others.join(", ")} without a cost`}.`;
}

function cutList(job: StockJob, fit: StockFit, { length }: Words): Markup {
  const rows = summarizeLayouts(job, fit).map((summary) => [
    `${summary.times} × ${isolate(summary.stick)}`,
    length(summary.length),
    describePieces(summary, length),
    summary.kept.length > 0
      ? `keep ${summary.kept.map(({ start, end }) => length(end - start)).join(", ")}`
      : length(summary.offcut),
  ]);
  return table({
    caption: "Cut list",
    hasNames: true,
    heads: ["sticks", "length", "pieces from each", "offcut"],
    rows,
  });
}

/** The lumber that the molding is milled from, and what it weighs and costs; nothing where its wood and its cost are not known. */
function lumberText({ materials }: FramePlan, words: Words): string {
  const { lumber, parts } = materials;
  const { mass, cost } = parts[0]!;
  const total = cost?.total ?? null;
  const about = (value: number): string => Number(value.toPrecision(3)).toString();
  const facts = [
    ...(mass === null ? [] : [`weighs ${quantityText(mass, "mass", words)}`]),
    ...(total === null ? [] : [`costs ${costText(total)}`]),
  ];
  if (facts.length === 0) return "";
  const bought =
    lumber === null
      ? ""
      : ` Before waste it is ${about(lumber.boardFeet)} board feet (${about(lumber.cubicMeters)}\u00a0m³) of lumber of ${words.length(lumber.width)} × ${words.length(lumber.thickness)}.`;
  return ` It ${facts.join(" and ")}.${bought}`;
}

/**
 * How much molding the pieces take.
 *
 * @param plan - the plan
 * @param words - the formatters
 * @returns a block that stands below the lengths
 */
export function sticksBlock(plan: FramePlan, words: Words): Markup {
  const { materials, sawing } = plan;
  const { length } = words;
  const { method, length: size, kerfAlong } = sawing.rough;
  const from = method === "none" ? "cut straight from the stick" : `from a blank of ${length(size)}`;
  const needed = `Molding: ${materials.pieces} pieces, each ${from}, use up ${length(materials.moldingLength)} of molding: one cut before the first piece and one after each take ${length(kerfAlong)} a cut, and each further stick takes one cut more.${lumberText(plan, words)}`;
  return element('p class="keep"', needed);
}

/**
 * What to buy and how to cut it up.
 *
 * @param plan - the plan
 * @param fit - what `fitStock` made of its stock job
 * @param words - the formatters
 * @returns the section, empty without a fit
 */
export function stockSection(plan: FramePlan, fit: StockFit | undefined, words: Words): Markup {
  const [job] = plan.stockJobs;
  if (fit === undefined || job === undefined) return { html: "" };
  const bought = fit.sticks.map(({ stick, count }) => `${count} × ${isolate(stick)}`);
  const drawn = fit.layouts.slice(0, MOST_DRAWN);
  const pictures = drawn.flatMap((_, index) => {
    if (index % TOGETHER > 0) return [];
    const some = { layouts: drawn.slice(index, index + TOGETHER) };
    return [element("figure", { html: drawStock(job, some, { ...words, width: 700 }).svg })];
  });
  return element(
    "section",
    element("h2", "Sticks"),
    element(
      "p",
      `Take ${bought.length === 0 ? "no stick" : bought.join(", ")}.${stickCosts(job, fit)} ${statusText(fit)}`,
    ),
    join(pictures),
    cutList(job, fit, words),
  );
}
