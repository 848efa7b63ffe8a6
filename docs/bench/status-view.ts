import { find, showMarkup } from "./elements.js";
import { labelOf } from "./form-view.js";
import { html } from "./html.js";
import { LANGUAGE } from "./language.js";
import type { PlannedJob } from "./plan-job.js";
import { essenceOf, readyText, type Rack } from "./ready-text.js";
import type { Pen } from "./writers.js";

const { status } = LANGUAGE.page;

/**
 * Says something in one of the page's places for it.
 *
 * @param id - the place: how far the plan is, what a button did, or what is wrong with a link or file
 * @param text - what to say
 */
export function say(id: "status" | "done" | "notice", text: string): void {
  const place = find(id, HTMLParagraphElement);
  if (place.textContent !== text) place.textContent = text;
  if (id === "notice") place.hidden = text === "";
}

/** Buttons that lead to the fields that are wrong or needed. */
function showWanted(keys: readonly string[]): void {
  const list = find("needed", HTMLUListElement);
  list.hidden = keys.length === 0;
  const items = keys.map(
    (key) => html`<li><button type="button" class="quiet" data-go="${key}">${labelOf(key)}</button></li>`,
  );
  showMarkup(list, html`${items}`);
}

/** What depends on whether there is a plan. */
function showWhetherPlanned(isPlanned: boolean, gist: string): void {
  find("essence", HTMLSpanElement).textContent = gist;
  find("card-start", HTMLElement).hidden = isPlanned;
  find("print-sheet", HTMLButtonElement).disabled = !isPlanned;
  find("print-section", HTMLButtonElement).disabled = !isPlanned;
}

/** What is known of a plan beside its form. */
export interface Readiness {
  /** What its report says has to be mended. */
  readonly notReady: readonly string[];
  /** What is known of its sticks. */
  readonly rack: Rack;
}

/**
 * Shows how far the plan is, and what is in its way.
 *
 * @param planned - the form and its plan
 * @param readiness - what its report and its sticks say
 * @param pen - what the page writes with
 */
export function showStatus({ plan, issues, needed }: PlannedJob, { notReady, rack }: Readiness, pen: Pen): void {
  const wrong = issues.map(({ field }) => field);
  showWanted([...new Set([...wrong, ...needed])]);
  if (plan === null) {
    say("status", wrong.length > 0 ? status.wrong : status.needed);
    showWhetherPlanned(false, status.none);
    return;
  }
  say("status", readyText(plan, notReady, rack, pen));
  const first = essenceOf(plan, pen);
  const size = pen.formats.length(plan.geometry.pieces[0].longest.length);
  showWhetherPlanned(true, first === null ? size : status.essence(first));
}

/**
 * Says that there is no plan, for another reason than a field.
 *
 * @param cause - the numbers, which can't all be written or drawn, or a fault of the page
 */
export function showFailure(cause: "numbers" | "page"): void {
  showWanted([]);
  say("status", status.failed[cause]);
  showWhetherPlanned(false, status.none);
}
