import type { FramePlan } from "miterwright/frame";
import { describePlan, type ReportSection } from "miterwright/report";
import type { StockFit } from "miterwright/stock";
import { CARDS } from "./cards.js";
import { figuresOf } from "./draw-figures.js";
import { find, showMarkup } from "./elements.js";
import type { Markup } from "./html.js";
import { showMeanings } from "./meanings.js";
import { notReadyLines, writeSection } from "./write-section.js";
import type { Pen } from "./writers.js";

/** What every card says now, so that one that says the same again is left alone. */
const shown = new Map<string, string>();

/**
 * Shows a card, or hides it where it has nothing to say. The meanings of its words stay open if they were.
 *
 * @param id - the card's name
 * @param markup - what it says
 */
export function showCard(id: string, markup: Markup | null): void {
  const card = find(`card-${id}`, HTMLElement);
  card.hidden = markup === null;
  if (markup === null || shown.get(id) === markup.html) return;
  shown.set(id, markup.html);
  const body = card.querySelector<HTMLElement>(":scope > .body")!;
  showMarkup(body, markup);
  const meaning = card.querySelector<HTMLElement>(":scope > .meaning")!;
  showMeanings(meaning, card.textContent.replace(meaning.textContent, ""));
}

/** The width that a drawing in a column can have, in pixels, within what drawings take. */
function columnWidth(): number {
  const room = find("column-work", HTMLElement).clientWidth - 34;
  return Math.max(240, Math.min(2000, Math.round(room)));
}

/** A plan that is shown, and what is known of its sticks. */
export interface ShownPlan {
  /** The plan. */
  readonly plan: FramePlan;
  /** How its sticks are cut up; `null` where that is not known. */
  readonly fit: StockFit | null;
  /** What the page writes with. */
  readonly pen: Pen;
}

/**
 * Shows a plan: a card for every section of its report.
 *
 * @param told - the plan
 * @param which - all cards, or that of the sticks alone, where nothing else has changed
 * @returns what has to be mended before the plan is one to cut by
 */
export function showPlan({ plan, fit, pen }: ShownPlan, which: "all" | "sticks"): readonly string[] {
  const { formats, words } = pen;
  const { sections } = describePlan(plan, { formats, words, ...(fit === null ? {} : { fits: [fit] }) });
  const draw = figuresOf(plan, fit, pen, columnWidth());
  const show = (name: ReportSection["name"]): void => {
    const section = sections.find((candidate) => candidate.name === name);
    showCard(name, section === undefined ? null : writeSection(section, draw));
  };
  if (which === "all") for (const { section } of CARDS) show(section);
  if (fit !== null) show("stock");
  return notReadyLines(sections);
}

/** Hides every card of a plan. How the sticks are cut up is hidden where they are fitted. */
export function showNoCards(): void {
  for (const { section } of CARDS) showCard(section, null);
}
