import type { FramePlan } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { rackNow } from "./stock-fit.js";
import { readForm } from "./form-view.js";
import { fullSizeSection } from "./full-size-section.js";
import { openPaper } from "./paper-window.js";
import { say } from "./status-view.js";
import type { Pen } from "./writers.js";
import { LANGUAGE } from "./language.js";

const DONE = LANGUAGE.page.status.done;

/** Whether the sheet was asked for while the fit of its sticks was not there yet. */
let isSheetAwaited = false;

function print(page: string): void {
  say("done", openPaper(page) ? DONE.opened : DONE.shut);
}

/**
 * Prints the shop sheet. It shows how the sticks are cut up, so it waits for a fit that is being looked for.
 *
 * @param plan - the plan
 * @param pen - what the page writes with
 */
export function printSheet(plan: FramePlan, pen: Pen): void {
  const rack = rackNow();
  isSheetAwaited = rack.kind === "pending";
  if (isSheetAwaited) {
    say("done", DONE.awaited);
    return;
  }
  const { title, note } = readForm().values;
  print(
    shopSheet(plan, {
      words: pen.words,
      formats: pen.formats,
      ...(rack.kind === "fit" ? { fits: [rack.fit] } : {}),
      ...(title.trim() === "" ? {} : { title }),
      ...(note.trim() === "" ? {} : { note }),
    }),
  );
}

/**
 * Prints the sheet if it was waiting for the fit of its sticks.
 *
 * @param plan - the plan, if there still is one
 * @param pen - what the page writes with
 */
export function printAwaitedSheet(plan: FramePlan | null, pen: Pen): void {
  if (isSheetAwaited && plan !== null) printSheet(plan, pen);
  isSheetAwaited = false;
}

/**
 * Prints the section at full size, or says why it can't be.
 *
 * @param plan - the plan
 * @param pen - what the page writes with
 */
export function printSection(plan: FramePlan, pen: Pen): void {
  const made = fullSizeSection(plan, pen);
  if (made.page === undefined) say("done", made.why);
  else print(made.page);
}
