/**
 * The bench page: whenever the form changes, the plan, its drawings and the fit of its sticks follow.
 */
import { isInputError } from "miterwright/errors";
import type { LengthUnit } from "miterwright/units";
import { convertJob, type Typed } from "./convert-fields.js";
import { followPlan, rackNow, startFits } from "./stock-fit.js";
import { readDryFit } from "./dry-fit.js";
import { afterPause, find } from "./elements.js";
import { exampleJob } from "./example-job.js";
import type { ListName, Values } from "./fields.js";
import { fillIn, readForm, showAsked, showForm, showIssues, showRows } from "./form-view.js";
import { html } from "./html.js";
import { jobFromFile } from "./job-file.js";
import { jobFromFragment, leftOutWords, type OpenedJob } from "./job-link.js";
import { emptyJob, type JobState, type Row } from "./job-state.js";
import { LANGUAGE } from "./language.js";
import { showFormMeanings } from "./meanings.js";
import { planJob, type PlannedJob } from "./plan-job.js";
import { showCard, showNoCards, showPlan } from "./plan-view.js";
import { printAwaitedSheet, printSection, printSheet } from "./printing.js";
import type { FieldIssue } from "./read-fields.js";
import { copyLink, keepLink, keepLinkNow, leaveLinkBehind, saveJob } from "./sharing.js";
import { say, showFailure, showStatus } from "./status-view.js";
import { penOf, type Pen } from "./writers.js";

/** What the form says, and what it is written with. */
let planned: PlannedJob = planJob(emptyJob());
let pen: Pen = penOf(emptyJob().values);
/** The unit under which the lengths in the form were typed, and what the page converted. */
let unit: LengthUnit = emptyJob().values.unit as LengthUnit;
const typed = new Map<string, Typed>();

function showDryFit(values: Values): readonly FieldIssue[] {
  if (planned.plan === null) {
    showCard("dry-fit", null);
    return [];
  }
  const { lines, issues } = readDryFit(values, planned.plan, pen);
  showCard(
    "dry-fit",
    lines.length === 0
      ? html``
      : html`<ul>
          ${lines.map((line) => html`<li>${line}</li>`)}
        </ul>`,
  );
  return issues;
}

/** Tells the plan as far as it is known: all of it, or what a fit of its sticks changes. */
function tell(which: "all" | "sticks"): void {
  const { plan } = planned;
  const rack = rackNow();
  const fit = rack.kind === "fit" ? rack.fit : null;
  if (plan === null) showNoCards();
  const notReady = plan === null ? [] : showPlan({ plan, fit, pen }, which);
  showStatus(planned, { notReady, rack }, pen);
}

/** Plans and shows what the form says. */
function showJob(state: JobState): void {
  planned = planJob(state);
  followPlan(planned.plan);
  tell("all");
  showIssues([...planned.issues, ...showDryFit(state.values)]);
}

/** Shows that there is no plan, whatever was on the page before. */
function showNoPlan(): void {
  planned = { ...planned, plan: null };
  showNoCards();
  showCard("dry-fit", null);
  showIssues([]);
  followPlan(null);
}

/** Brings everything up to date with the form. What can't be planned, drawn or written leaves no plan on the page: the former one is of other input. */
function update(): void {
  const state = readForm();
  pen = penOf(state.values);
  unit = state.values.unit as LengthUnit;
  showAsked(state.values);
  try {
    showJob(state);
  } catch (error) {
    showNoPlan();
    const isRefused = isInputError(error);
    showFailure(isRefused ? "numbers" : "page");
    if (!isRefused) reportError(error);
  }
}

function change(): void {
  say("done", "");
  update();
  keepLink();
}

/** Makes the lengths in the form what they were, under the unit that was chosen now. */
function convertUnit(): void {
  const state = readForm();
  fillIn(convertJob(state, unit, state.values.unit as LengthUnit, typed));
}

/** Shows an opened job; one that can't be read changes nothing. */
function open(opened: OpenedJob): void {
  if (!opened.ok) {
    say("notice", opened.why);
    return;
  }
  say("notice", leftOutWords(opened.leftOut, LANGUAGE.page.opened));
  typed.clear();
  showForm(opened.state);
  change();
}

/** Shows an opened job in place of the one that is there, to which the browser's way back leads. */
function openNext(opened: OpenedJob): void {
  if (opened.ok) leaveLinkBehind();
  open(opened);
  keepLinkNow();
}

function changeRows(list: ListName, edit: (rows: readonly Row[]) => readonly Row[]): void {
  showRows(list, edit(readForm().lists[list]));
  change();
}

/** Buttons that come and go with rows and messages are known by their data. */
function onClick({ target }: MouseEvent): void {
  const { add, remove, go } = (target instanceof Element ? target.closest("button") : null)?.dataset ?? {};
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

function onPress(id: string, work: () => void): void {
  find(id, HTMLButtonElement).addEventListener("click", work);
}

function startButtons(): void {
  onPress("print-sheet", () => {
    if (planned.plan !== null) printSheet(planned.plan, pen);
  });
  onPress("print-section", () => {
    if (planned.plan !== null) printSection(planned.plan, pen);
  });
  onPress("copy-link", () => void copyLink());
  onPress("save-file", saveJob);
  onPress("to-plan", () => {
    find("plan", HTMLDivElement).scrollIntoView();
  });
  onPress("example", () => {
    openNext({ ok: true, state: exampleJob(), leftOut: [] });
  });
  onPress("clear", () => {
    openNext({ ok: true, state: emptyJob(), leftOut: [] });
  });
  const chooser = find("open-file", HTMLInputElement);
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    void file?.text().then((text) => {
      // So that the same file can be chosen again.
      chooser.value = "";
      openNext(jobFromFile(text, LANGUAGE.page.opened));
    });
  });
}

function start(): void {
  document.addEventListener("click", onClick);
  document.addEventListener("input", ({ target }) => {
    if (!(target instanceof Element) || target.closest(".field") === null) return;
    if (target.id === "unit") convertUnit();
    change();
  });
  find("form", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
  });
  startButtons();
  startFits(() => {
    tell("sticks");
    printAwaitedSheet(planned.plan, pen);
  });
  window.addEventListener("hashchange", () => {
    open(jobFromFragment(location.hash, LANGUAGE.page.opened));
  });
  window.addEventListener("resize", afterPause(update, 200));
  // The form is there even where the link is broken, and then the address is left as it is.
  showFormMeanings();
  showForm(emptyJob());
  update();
  if (location.hash !== "") open(jobFromFragment(location.hash, LANGUAGE.page.opened));
}

start();
