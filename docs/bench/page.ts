/**
 * The bench page: whenever the form changes, the plan, its drawings and its cut plan follow.
 */
import type { FramePlan } from "miterwright/frame";
import { bullets } from "./cards/tables.js";
import { followPlan, startCutPlans } from "./cut-plan.js";
import { readDryFit } from "./dry-fit.js";
import { afterPause, find } from "./elements.js";
import { exampleJob } from "./example-job.js";
import type { ListName, Values } from "./fields.js";
import { readForm, showAsked, showForm, showIssues, showRows } from "./form-view.js";
import { html } from "./html.js";
import { jobFromFile } from "./job-file.js";
import { jobFromFragment, type OpenedJob } from "./job-link.js";
import { emptyJob, type Row } from "./job-state.js";
import { planJob } from "./plan-job.js";
import { showCard, showPlan } from "./plan-view.js";
import { printAwaitedSheet, printSection, printSheet } from "./printing.js";
import type { FieldIssue } from "./read-fields.js";
import { copyLink, keepLink, saveJob } from "./sharing.js";
import { say, showStatus } from "./status-view.js";
import { writersOf, type Writers } from "./writers.js";

/** What the page shows now. */
let plan: FramePlan | null = null;
let writers: Writers = writersOf(emptyJob().values);

function showDryFit(values: Values): readonly FieldIssue[] {
  if (plan === null) {
    showCard("dry-fit", null);
    return [];
  }
  const { lines, issues } = readDryFit(values, plan);
  showCard("dry-fit", lines.length === 0 ? html`` : bullets(lines));
  return issues;
}

/** Brings everything up to date with the form. */
function update(): void {
  const state = readForm();
  const planned = planJob(state);
  ({ plan } = planned);
  writers = writersOf(state.values);
  showAsked(state.values);
  showPlan(plan, writers);
  showIssues([...planned.issues, ...showDryFit(state.values)]);
  showStatus(planned, writers);
  followPlan(plan, writers);
}

function change(): void {
  say("done", "");
  update();
  keepLink();
}

/** Shows an opened job; one that can't be read changes nothing. */
function open(opened: OpenedJob): void {
  if (!opened.ok) {
    say("notice", opened.why);
    return;
  }
  const left = opened.leftOut.join(", ");
  say("notice", left === "" ? "" : `Left out, since this page does not know it: ${left}.`);
  showForm(opened.state);
  change();
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
    if (plan !== null) printSheet(plan, writers);
  });
  onPress("print-section", () => {
    if (plan !== null) printSection(plan, writers);
  });
  onPress("copy-link", () => void copyLink());
  onPress("save-file", saveJob);
  onPress("to-plan", () => {
    find("plan", HTMLDivElement).scrollIntoView();
  });
  onPress("example", () => {
    open({ ok: true, state: exampleJob(), leftOut: [] });
  });
  onPress("clear", () => {
    open({ ok: true, state: emptyJob(), leftOut: [] });
  });
  const chooser = find("open-file", HTMLInputElement);
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    void file?.text().then((text) => {
      // So that the same file can be chosen again.
      chooser.value = "";
      open(jobFromFile(text));
    });
  });
}

function start(): void {
  document.addEventListener("click", onClick);
  document.addEventListener("input", ({ target }) => {
    if (target instanceof Element && target.closest(".field") !== null) change();
  });
  find("form", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
  });
  startButtons();
  startCutPlans(() => {
    printAwaitedSheet(plan, writers);
  });
  window.addEventListener("hashchange", () => {
    open(jobFromFragment(location.hash));
  });
  window.addEventListener("resize", afterPause(update, 200));
  // The form is there even where the link is broken, and then the address is left as it is.
  showForm(emptyJob());
  update();
  if (location.hash !== "") open(jobFromFragment(location.hash));
}

start();
