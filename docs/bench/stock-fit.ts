import type { FramePlan } from "miterwright/frame";
import type { FitProgress, StockFit, StockJob } from "miterwright/stock";
import { stockMarkup } from "./cards/stock-card.js";
import { afterPause, find } from "./elements.js";
import { html, type Markup } from "./html.js";
import { drawingWidth, showCard } from "./plan-view.js";
import { fitInWorker, type Fitting } from "./stock-client.js";
import type { StockAnswer } from "./stock-messages.js";
import { showRack } from "./status-view.js";
import type { Writers } from "./writers.js";

/** How far the fit of the page's sticks is. */
type FitState =
  | { readonly kind: "none" }
  | { readonly kind: "pending"; readonly job: StockJob; readonly text: string; readonly fitting: Fitting | null }
  | { readonly kind: "fit"; readonly job: StockJob; readonly text: string; readonly fit: StockFit }
  | { readonly kind: "refused"; readonly text: string; readonly why: string };

let now: FitState = { kind: "none" };
let writeWith: Writers | null = null;
let tellDone: () => void = () => undefined;

/** What the card says; `null` where it says nothing. */
function markupOf(): Markup | null {
  if (now.kind === "fit") return stockMarkup(now.job, now.fit, writeWith!, drawingWidth());
  if (now.kind === "refused") return html`<p><strong>The sticks don't suit:</strong> ${now.why}</p>`;
  return null;
}

function show(): void {
  showRack(now);
  const card = find("card-stock", HTMLElement);
  const body = card.querySelector<HTMLElement>(".body")!;
  body.classList.toggle("stale", now.kind === "pending");
  if (now.kind === "pending") {
    card.hidden = false;
    return;
  }
  find("fitting", HTMLDivElement).hidden = true;
  showCard("stock", markupOf());
}

function showProgress({ cost, bound, unplaced }: FitProgress): void {
  const near = cost > 0 ? Math.max(0, Math.min(1, bound / cost)) : 0;
  if (near > 0) find("progress-bar", HTMLProgressElement).value = near;
  find("progress", HTMLParagraphElement).textContent =
    unplaced > 0
      ? `Looking for room: ${unplaced} pieces have none yet.`
      : `A stick plan is found; it is proven to ${(100 * near).toFixed(2)} % of its cost. Looking for a cheaper one.`;
}

/** What most fits take is not worth a flicker of the page; after that the fit of another job has to go. */
const showFittingSoon = afterPause(() => {
  if (now.kind !== "pending") return;
  find("fitting", HTMLDivElement).hidden = false;
  showCard("stock", html``);
}, 150);

function onAnswer(job: StockJob, text: string, answer: StockAnswer): void {
  if (answer.kind === "progress") {
    showProgress(answer.progress);
    return;
  }
  if (answer.kind === "fit") {
    now = { kind: "fit", job, text, fit: answer.fit };
  } else {
    // A piece that fits no stick is what makers meet; any other refusal speaks for itself.
    const why = answer.code === "impossible" ? "a piece is longer than every stick in the rack." : answer.message;
    now = { kind: "refused", text, why };
  }
  show();
  tellDone();
}

const startSoon = afterPause(() => {
  if (now.kind !== "pending" || now.fitting !== null) return;
  const { job, text } = now;
  find("progress", HTMLParagraphElement).textContent = "Looking for the cheapest way to cut the sticks up.";
  find("progress-bar", HTMLProgressElement).removeAttribute("value");
  const fitting = fitInWorker(job, (answer) => {
    onAnswer(job, text, answer);
  });
  now = { kind: "pending", job, text, fitting };
  showFittingSoon();
}, 120);

/**
 * Makes the fit of the sticks follow the frame's plan. A job that is the same as before is not fitted anew.
 *
 * @param plan - the plan; `null` or one without sticks has no fit
 * @param writers - how lengths are written
 */
export function followPlan(plan: FramePlan | null, writers: Writers): void {
  writeWith = writers;
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
 * How the sticks are cut up, for the sheet.
 *
 * @returns the fit, `undefined` where there is none, or `"pending"` while it is looked for
 */
export function fitNow(): StockFit | undefined | "pending" {
  return now.kind === "pending" ? "pending" : now.kind === "fit" ? now.fit : undefined;
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
