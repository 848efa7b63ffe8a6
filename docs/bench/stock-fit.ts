import type { FramePlan } from "miterwright/frame";
import type { FitProgress, StockFit, StockJob } from "miterwright/stock";
import { afterPause, find } from "./elements.js";
import { html } from "./html.js";
import { LANGUAGE } from "./language.js";
import { showCard } from "./plan-view.js";
import type { Rack } from "./ready-text.js";
import { fitInWorker, type Fitting } from "./stock-client.js";
import type { StockAnswer } from "./stock-messages.js";
import { writersOf } from "./writers.js";

const WORDS = LANGUAGE.page.rack;

/** How far the fit of the page's sticks is; `text` is the job, so that the same one is known again. */
type FitState =
  | { readonly kind: "none" }
  | { readonly kind: "pending"; readonly job: StockJob; readonly text: string; readonly fitting: Fitting | null }
  | { readonly kind: "fit"; readonly text: string; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly text: string; readonly why: keyof typeof WORDS.refused };

let now: FitState = { kind: "none" };
let tellDone: () => void = () => undefined;

/** Shows how far the fit is. What it says once it is there is told with the plan. */
function show(): void {
  const card = find("card-stock", HTMLElement);
  card.querySelector<HTMLElement>(".body")!.classList.toggle("stale", now.kind === "pending");
  if (now.kind === "pending") {
    card.hidden = false;
    return;
  }
  find("fitting", HTMLDivElement).hidden = true;
  if (now.kind === "none") showCard("stock", null);
  if (now.kind === "refused") showCard("stock", html`<p><strong>${WORDS.refused[now.why]}</strong></p>`);
}

function showProgress({ cost, bound, unplaced }: FitProgress): void {
  const near = cost > 0 ? Math.max(0, Math.min(1, bound / cost)) : 0;
  if (near > 0) find("progress-bar", HTMLProgressElement).value = near;
  // What is all but proven is not said to be so. Which unit shares are written for makes no difference.
  const share = Math.floor(1000 * near) / 10;
  const proven = writersOf({ unit: "mm", fineness: "usual" }).percent(share);
  find("progress", HTMLParagraphElement).textContent =
    unplaced > 0 ? WORDS.looking({ pieces: unplaced }) : WORDS.found({ proven });
}

/** What most fits take is not worth a flicker of the page; after that the fit of another job has to go. */
const showFittingSoon = afterPause(() => {
  if (now.kind !== "pending") return;
  find("fitting", HTMLDivElement).hidden = false;
  showCard("stock", html``);
}, 150);

function onAnswer(text: string, answer: StockAnswer): void {
  if (answer.kind === "progress") {
    showProgress(answer.progress);
    return;
  }
  if (answer.kind === "fit") {
    now = { kind: "fit", text, fit: answer.fit };
  } else if (answer.kind === "refused") {
    // A piece that fits no stick is what makers meet.
    now = { kind: "refused", text, why: answer.code === "impossible" ? "tooLong" : "numbers" };
  } else {
    now = { kind: "refused", text, why: "failed" };
    reportError(new Error(answer.message));
  }
  show();
  tellDone();
}

const startSoon = afterPause(() => {
  if (now.kind !== "pending" || now.fitting !== null) return;
  const { job, text } = now;
  find("progress", HTMLParagraphElement).textContent = WORDS.begun;
  find("progress-bar", HTMLProgressElement).removeAttribute("value");
  const fitting = fitInWorker(job, (answer) => {
    onAnswer(text, answer);
  });
  now = { kind: "pending", job, text, fitting };
  showFittingSoon();
}, 120);

/**
 * Makes the fit of the sticks follow the frame's plan. A job that is the same as before is not fitted anew.
 *
 * @param plan - the plan; `null` or one without sticks has no fit
 */
export function followPlan(plan: FramePlan | null): void {
  const job = plan?.stockJobs[0];
  const text = job === undefined ? "" : JSON.stringify(job);
  if (now.kind === "none" ? text !== "" : now.text !== text) {
    if (now.kind === "pending") now.fitting?.drop();
    now = job === undefined ? { kind: "none" } : { kind: "pending", job, text, fitting: null };
    startSoon();
  }
  show();
}

/**
 * What is known of the sticks now.
 *
 * @returns how they are cut up, or why not or not yet
 */
export function rackNow(): Rack {
  return now;
}

/**
 * Sets what happens when a search has ended, and makes the stop button stop it.
 *
 * @param onDone - told when a fit is there, or can't be
 */
export function startFits(onDone: () => void): void {
  tellDone = onDone;
  find("stop", HTMLButtonElement).addEventListener("click", () => {
    if (now.kind === "pending") now.fitting?.stop();
  });
}
