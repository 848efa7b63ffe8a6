import type { FramePlan } from "miterwright/frame";
import { shopSheet } from "miterwright/sheet";
import { fitNow } from "./stock-fit.js";
import { readForm } from "./form-view.js";
import { fullSizeSection } from "./full-size-section.js";
import { openPaper } from "./paper-window.js";
import { say } from "./status-view.js";
import type { Writers } from "./writers.js";

/** Whether the sheet was asked for while the fit of its sticks was not there yet. */
let isSheetAwaited = false;

function print(page: string): void {
  say(
    "done",
    openPaper(page)
      ? "It is open in a window of its own."
      : "Your browser kept the new window shut: allow pop-ups for this page.",
  );
}

/**
 * Prints the shop sheet. It shows how the sticks are cut up, so it waits for a fit that is being looked for.
 *
 * @param plan - the plan
 * @param writers - how lengths and angles are written
 */
export function printSheet(plan: FramePlan, writers: Writers): void {
  const fit = fitNow();
  isSheetAwaited = fit === "pending";
  if (fit === "pending") {
    say("done", "The sticks are still being fitted. The sheet opens as soon as that is done, or stopped.");
    return;
  }
  const { title, note } = readForm().values;
  print(
    shopSheet(plan, {
      ...writers,
      ...(fit === undefined ? {} : { fit }),
      ...(title.trim() === "" ? {} : { title }),
      ...(note.trim() === "" ? {} : { note }),
    }),
  );
}

/**
 * Prints the sheet if it was waiting for the fit of its sticks.
 *
 * @param plan - the plan, if there still is one
 * @param writers - how lengths and angles are written
 */
export function printAwaitedSheet(plan: FramePlan | null, writers: Writers): void {
  if (isSheetAwaited && plan !== null) printSheet(plan, writers);
  isSheetAwaited = false;
}

/**
 * Prints the section at full size, or says why it can't be.
 *
 * @param plan - the plan
 * @param writers - how lengths and angles are written
 */
export function printSection(plan: FramePlan, writers: Writers): void {
  const made = fullSizeSection(plan, writers);
  if (made.page === undefined) say("done", made.why);
  else print(made.page);
}
