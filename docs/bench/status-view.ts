import type { FramePlan } from "miterwright/frame";
import { find } from "./elements.js";
import { labelOf } from "./form-view.js";
import { html } from "./html.js";
import type { PlannedJob } from "./plan-job.js";
import { readyText } from "./ready-text.js";
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
  list.innerHTML = keys
    .map((key) => html`<li><button type="button" class="quiet" data-go="${key}">${labelOf(key)}</button></li>`.html)
    .join("");
}

/** The three numbers that are looked for first. */
function essence({ cutting, geometry }: FramePlan, { length, angle }: Writers): string {
  const size = length(geometry.sticks[0]!.longest.length);
  if (cutting.lay === null) return size;
  const { miter, bevel } = cutting.lay.first;
  return `miter ${angle(miter.reading)}, bevel ${angle(bevel.reading)}, ${size}`;
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
  if (plan !== null) say("status", readyText(plan, writers));
  else say("status", wrong.length > 0 ? "Something in the form can't be used yet:" : "Still needed:");
  find("essence", HTMLSpanElement).textContent = plan === null ? "No plan yet" : essence(plan, writers);
  find("card-start", HTMLElement).hidden = plan !== null;
  find("print-sheet", HTMLButtonElement).disabled = plan === null;
  find("print-section", HTMLButtonElement).disabled = plan === null;
}
