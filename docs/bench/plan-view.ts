import type { FramePlan } from "miterwright/frame";
import { CARDS } from "./cards/index.js";
import { find, showMarkup } from "./elements.js";
import { wordList } from "./form-markup.js";
import type { Markup } from "./html.js";
import type { Writers } from "./writers.js";

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
  const isOpen = meaning.querySelector("details")?.open === true;
  showMarkup(meaning, wordList(card.textContent.replace(meaning.textContent, "")));
  const words = meaning.querySelector("details");
  if (words !== null) words.open = isOpen;
}

/**
 * The width that a drawing in a column can have.
 *
 * @returns pixels, within what drawings take
 */
export function drawingWidth(): number {
  const room = find("column-work", HTMLElement).clientWidth - 34;
  return Math.max(240, Math.min(2000, Math.round(room)));
}

/**
 * Shows the cards of a plan.
 *
 * @param plan - the plan; `null` hides them all
 * @param writers - how lengths and angles are written
 */
export function showPlan(plan: FramePlan | null, writers: Writers): void {
  const width = drawingWidth();
  for (const card of CARDS) showCard(card.id, plan === null ? null : card.write({ plan, writers, width }));
}
