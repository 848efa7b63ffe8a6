import type { FramePlan } from "miterwright/frame";
import { find, showMarkup } from "./elements.js";
import { labelOf } from "./form-view.js";
import { html } from "./html.js";
import type { PlannedJob } from "./plan-job.js";
import { readyText, type Rack } from "./ready-text.js";
import type { Writers } from "./writers.js";

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

/** The three numbers that are looked for first. */
function essence({ sawing, geometry }: FramePlan, { length, angle }: Writers): string {
  const size = length(geometry.pieces[0].longest.length);
  if (sawing.lay === null) return size;
  const { miter, bevel } = sawing.lay.first;
  return `miter ${angle(miter.reading)}, bevel ${angle(bevel.reading)}, ${size}`;
}

/** What depends on whether there is a plan. */
function showWhetherPlanned(isPlanned: boolean, gist: string): void {
  find("essence", HTMLSpanElement).textContent = gist;
  find("card-start", HTMLElement).hidden = isPlanned;
  find("print-sheet", HTMLButtonElement).disabled = !isPlanned;
  find("print-section", HTMLButtonElement).disabled = !isPlanned;
}

/** The plan that the status is about, and what is known of the rack. */
let shown: { readonly plan: FramePlan; readonly writers: Writers } | null = null;
let rack: Rack = { kind: "none" };

function sayReady(): void {
  if (shown !== null) say("status", readyText(shown.plan, shown.writers, rack));
}

/**
 * Takes what is known of the rack into the status: a plan whose sticks run out is not ready.
 *
 * @param now - what is known
 */
export function showRack(now: Rack): void {
  rack = now;
  sayReady();
}

/**
 * Shows how far the plan is, and what is in its way.
 *
 * @param planned - the form and its plan
 * @param writers - how lengths and angles are written
 */
export function showStatus({ plan, issues, needed }: PlannedJob, writers: Writers): void {
  const wrong = issues.map(({ field }) => field);
  showWanted([...new Set([...wrong, ...needed])]);
  shown = plan === null ? null : { plan, writers };
  if (plan !== null) sayReady();
  else say("status", wrong.length > 0 ? "Something in the form can't be used yet:" : "Still needed:");
  showWhetherPlanned(plan !== null, plan === null ? "No plan yet" : essence(plan, writers));
}

/**
 * Says that there is no plan, for another reason than a field.
 *
 * @param cause - the numbers, which can't all be written or drawn, or a fault of the page
 */
export function showFailure(cause: "numbers" | "page"): void {
  shown = null;
  showWanted([]);
  const why =
    cause === "numbers"
      ? "some number of this job is too large or too small to be written or drawn."
      : "this page failed at this job. That is a fault of the page. Change something in the form, or reload the page.";
  say("status", `No plan: ${why}`);
  showWhetherPlanned(false, "No plan yet");
}
