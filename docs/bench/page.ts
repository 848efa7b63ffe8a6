/**
 * The bench page: whenever the form changes, the plan, its drawings and its cut plan follow.
 */
import type { FramePlan } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import type { StockFit } from "miterwright/stock";
import { stockMarkup } from "./cards/stock-card.js";
import { bullets } from "./cards/tables.js";
import { readDryFit } from "./dry-fit.js";
import { afterPause, find } from "./elements.js";
import { exampleJob } from "./example-job.js";
import type { ListName } from "./fields.js";
import { labelOf, readForm, showAsked, showForm, showIssues, showRows } from "./form-view.js";
import { fullSizeSection } from "./full-size-section.js";
import { html } from "./html.js";
import { jobFromFile, jobToFile } from "./job-file.js";
import { jobFromFragment, jobToFragment, type OpenedJob } from "./job-link.js";
import { emptyJob, type JobState } from "./job-state.js";
import { openPaper, saveText } from "./paper-window.js";
import { planJob } from "./plan-job.js";
import { drawingWidth, showCard, showPlan } from "./plan-view.js";
import { fitInWorker, type Fitting } from "./stock-client.js";
import { writersOf, type Writers } from "./writers.js";

/** What the page shows now. */
let plan: FramePlan | null = null;
let fit: StockFit | undefined;
let fitting: Fitting | null = null;
/** The job that the fit is for, as text, so that a change elsewhere in the form doesn't start it anew. */
let fittedJob: string | undefined;
/** Whether the sheet was asked for while its cut plan was not there yet. */
let isSheetAwaited = false;
let writers: Writers = writersOf(emptyJob().values);

function say(id: "status" | "done" | "notice", text: string): void {
  const place = find(id, HTMLParagraphElement);
  place.textContent = text;
  if (id === "notice") place.hidden = text === "";
}

function showNeeded(needed: readonly string[], wrong: readonly string[]): void {
  const list = find("needed", HTMLUListElement);
  const keys = [...new Set([...wrong, ...needed])];
  list.hidden = keys.length === 0;
  list.innerHTML = keys
    .map((key) => html`<li><button type="button" class="quiet" data-go="${key}">${labelOf(key)}</button></li>`.html)
    .join("");
}

/** Whether the sticks are being fitted, or about to be. */
function isFitting(): boolean {
  return plan?.job !== undefined && fit === undefined && fittedJob !== undefined;
}

function showFit(): void {
  const job = plan?.job;
  const card = find("card-stock", HTMLElement);
  if (job === undefined) showCard("stock", null);
  else if (fit !== undefined) showCard("stock", stockMarkup(job, fit, writers, drawingWidth()));
  else card.hidden = false;
  card.querySelector(".body")!.classList.toggle("stale", fit === undefined);
  if (fitting === null) find("fitting", HTMLDivElement).hidden = true;
}

/** What most fits take is not worth a flicker of the page; after that the cut plan of another job has to go. */
const showFittingSoon = afterPause(() => {
  if (fitting === null) return;
  find("fitting", HTMLDivElement).hidden = false;
  showCard("stock", html``);
}, 150);

function startFit(): void {
  const job = plan?.job;
  if (job === undefined) return;
  const bar = find("progress-bar", HTMLProgressElement);
  find("progress", HTMLParagraphElement).textContent = "Looking for the cheapest way to cut the sticks up.";
  bar.removeAttribute("value");
  fitting = fitInWorker(job, (answer) => {
    if (answer.kind === "progress") {
      const { cost, bound, unplaced } = answer.progress;
      const near = cost > 0 ? Math.max(0, Math.min(1, bound / cost)) : 0;
      if (near > 0) bar.value = near;
      const text =
        unplaced > 0
          ? `Looking for room: ${unplaced} pieces have none yet.`
          : `A plan is found; it is proven to ${(100 * near).toFixed(2)} % of its cost. Looking for a cheaper one.`;
      find("progress", HTMLParagraphElement).textContent = text;
      return;
    }
    fitting = null;
    if (answer.kind === "fit") fit = answer.fit;
    showFit();
    if (answer.kind === "refused") {
      fittedJob = undefined;
      const why = html`<p><strong>The sticks don't suit:</strong> ${refusedStick(answer.code, answer.message)}</p>`;
      showCard("stock", why);
      find("card-stock", HTMLElement).querySelector(".body")!.classList.remove("stale");
    }
    if (isSheetAwaited) printSheet();
  });
  showFittingSoon();
}

/** A piece that fits no stick is what makers meet; any other refusal speaks for itself. */
function refusedStick(code: string, message: string): string {
  return code === "impossible" ? "a piece is longer than every stick in the rack." : message;
}

const startFitSoon = afterPause(startFit, 120);

function showDryFit(state: JobState): ReturnType<typeof readDryFit>["issues"] {
  if (plan === null) {
    showCard("dry-fit", null);
    return [];
  }
  const { lines, issues } = readDryFit(state.values, plan, writers);
  showCard("dry-fit", lines.length === 0 ? html`` : bullets(lines));
  return issues;
}

function statusText(needed: readonly string[], wrong: readonly string[]): string {
  if (wrong.length > 0) return "Something in the form can't be used yet:";
  if (needed.length > 0) return "Still needed:";
  const option = plan?.cutting.lay;
  if (plan === null || option === null || option === undefined) return "No way to lay the stick suits this saw.";
  const { longest, count } = plan.geometry.sticks[0]!;
  const { length, angle } = writers;
  return `The plan is ready: ${count} pieces of ${length(longest.length)}, miter scale at ${angle(option.first.miter.reading)}, bevel scale at ${angle(option.first.bevel.reading)}.`;
}

/** The three numbers that are looked for first. */
function essence({ cutting, geometry }: FramePlan): string {
  const { length, angle } = writers;
  const size = length(geometry.sticks[0]!.longest.length);
  if (cutting.lay === null) return size;
  const { miter, bevel } = cutting.lay.first;
  return `${angle(miter.reading)} / ${angle(bevel.reading)} / ${size}`;
}

const keepLink = afterPause(() => {
  const fragment = jobToFragment(readForm());
  const address = `${location.pathname}${location.search}${fragment === "" ? "" : `#${fragment}`}`;
  history.replaceState(null, "", address);
}, 300);

/** Brings everything up to date with the form. */
function update(): void {
  const state = readForm();
  showAsked(state.values);
  writers = writersOf(state.values);
  const planned = planJob(state);
  ({ plan } = planned);
  showPlan(plan, writers);
  const later = showDryFit(state);
  showIssues([...planned.issues, ...later]);
  const wrong = planned.issues.map(({ field }) => field);
  showNeeded(planned.needed, wrong);
  say("status", statusText(planned.needed, wrong));
  find("essence", HTMLSpanElement).textContent = plan === null ? "No plan yet" : essence(plan);
  find("card-start", HTMLElement).hidden = plan !== null;
  find("print-sheet", HTMLButtonElement).disabled = plan === null;
  find("print-section", HTMLButtonElement).disabled = plan === null;
  const job = plan?.job === undefined ? undefined : JSON.stringify(plan.job);
  if (job !== fittedJob) {
    fitting?.drop();
    fitting = null;
    fit = undefined;
    fittedJob = job;
    if (job !== undefined) startFitSoon();
  }
  showFit();
}

function open(opened: OpenedJob): void {
  if (!opened.ok) {
    say("notice", opened.why);
    return;
  }
  say(
    "notice",
    opened.leftOut.length === 0 ? "" : `Left out, since this page does not know it: ${opened.leftOut.join(", ")}.`,
  );
  showForm(opened.state);
  update();
}

/** The sheet has the cut plan on it, so it waits for one that is not there yet. */
function printSheet(): void {
  isSheetAwaited = isFitting();
  if (isSheetAwaited) {
    say("done", "The sticks are still being fitted. The sheet opens as soon as that is done, or stopped.");
    return;
  }
  if (plan === null) return;
  const { title, note } = readForm().values;
  const page = shopSheet(plan, {
    ...writers,
    ...(fit === undefined || plan.job === undefined ? {} : { fit }),
    ...(title.trim() === "" ? {} : { title }),
    ...(note.trim() === "" ? {} : { note }),
  });
  paper(page);
}

function paper(page: string): void {
  say(
    "done",
    openPaper(page)
      ? "It is open in a window of its own."
      : "Your browser kept the new window shut: allow pop-ups for this page.",
  );
}

function printSection(): void {
  if (plan === null) return;
  const made = fullSizeSection(plan, writers);
  if (made.page === undefined) say("done", made.why);
  else paper(made.page);
}

async function copyLink(): Promise<void> {
  const fragment = jobToFragment(readForm());
  const address = location.href.replace(/#.*$/, "") + (fragment === "" ? "" : `#${fragment}`);
  const box = find("link", HTMLInputElement);
  box.value = address;
  find("link-box", HTMLParagraphElement).hidden = false;
  box.select();
  try {
    await navigator.clipboard.writeText(address);
    say("done", "The link is copied. Whoever opens it sees this job.");
  } catch {
    say("done", "Your browser does not let the page copy: copy the link below.");
  }
}

/** The name of the file: its heading, in letters that every disk takes. */
function fileName(): string {
  const words = readForm()
    .values.title.toLowerCase()
    .match(/[a-z0-9]+/g) ?? ["frame"];
  return `${words.join("-").slice(0, 60)}.json`;
}

function changeRows(list: ListName, change: (rows: JobState["lists"][ListName]) => JobState["lists"][ListName]): void {
  showRows(list, change(readForm().lists[list]));
  update();
  keepLink();
}

function onClick(event: MouseEvent): void {
  const button = event.target instanceof Element ? event.target.closest("button") : null;
  if (button === null) return;
  const { add, remove, go } = button.dataset;
  if (add !== undefined) {
    const list = add as ListName;
    changeRows(list, (rows) => [...rows, {}]);
    const column = list === "sticks" ? "length" : "name";
    document.getElementById(`${list}.${readForm().lists[list].length - 1}.${column}`)?.focus();
  }
  if (remove !== undefined) {
    const [list, index] = remove.split(".") as [ListName, string];
    changeRows(list, (rows) => rows.filter((_, place) => place !== Number(index)));
    document.querySelector<HTMLButtonElement>(`[data-add="${list}"]`)?.focus();
  }
  if (go !== undefined) {
    const field = document.getElementById(go);
    const fold = field?.closest("details");
    if (fold) fold.open = true;
    field?.focus();
  }
}

function start(): void {
  document.addEventListener("click", onClick);
  document.addEventListener("input", (event) => {
    if (!(event.target instanceof HTMLElement) || event.target.closest(".field") === null) return;
    say("done", "");
    update();
    keepLink();
  });
  find("form", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
  });
  find("print-sheet", HTMLButtonElement).addEventListener("click", printSheet);
  find("print-section", HTMLButtonElement).addEventListener("click", printSection);
  find("copy-link", HTMLButtonElement).addEventListener("click", () => void copyLink());
  find("to-plan", HTMLButtonElement).addEventListener("click", () => {
    find("plan", HTMLDivElement).scrollIntoView();
  });
  find("stop", HTMLButtonElement).addEventListener("click", () => fitting?.stop());
  find("save-file", HTMLButtonElement).addEventListener("click", () => {
    saveText(fileName(), jobToFile(readForm()));
  });
  const chooser = find("open-file", HTMLInputElement);
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    chooser.value = "";
    void file?.text().then((text) => {
      open(jobFromFile(text));
      keepLink();
    });
  });
  for (const [id, job] of [
    ["example", exampleJob],
    ["clear", emptyJob],
  ] as const) {
    find(id, HTMLButtonElement).addEventListener("click", () => {
      open({ ok: true, state: job(), leftOut: [] });
      keepLink();
    });
  }
  window.addEventListener("hashchange", () => {
    open(jobFromFragment(location.hash));
  });
  window.addEventListener("resize", afterPause(update, 200));
  open(jobFromFragment(location.hash));
  // A broken link is said, and the form is there all the same.
  if (document.querySelector("#sticks > li") === null) {
    showForm(emptyJob());
    update();
  }
}

start();
