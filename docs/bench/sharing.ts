import { afterPause, find } from "./elements.js";
import { readForm } from "./form-view.js";
import { jobToFile } from "./job-file.js";
import { jobToFragment } from "./job-link.js";
import { LANGUAGE } from "./language.js";
import { saveText } from "./paper-window.js";
import { say } from "./status-view.js";

/** The page's address without its fragment, and the job as a new one. */
function addressOfJob(): string {
  const fragment = jobToFragment(readForm());
  return location.href.replace(/#.*$/, "") + (fragment === "" ? "" : `#${fragment}`);
}

/** Whether the form was changed since its job was last kept in the address. */
let isBehind = false;

/** Keeps the job in the page's address, where it is not kept yet. */
export function keepLinkNow(): void {
  if (isBehind) history.replaceState(null, "", addressOfJob());
  isBehind = false;
}

const keepLinkSoon = afterPause(keepLinkNow, 300);

/** Keeps the job in the page's address, soon after it has changed. */
export function keepLink(): void {
  isBehind = true;
  keepLinkSoon();
}

/** Makes the browser's way back lead to the job that is there now, and begins an address for the next one. */
export function leaveLinkBehind(): void {
  keepLinkNow();
  history.pushState(null, "", location.href);
}

/** Shows the link to the job, and copies it where the browser lets the page do so. */
export async function copyLink(): Promise<void> {
  const address = addressOfJob();
  const box = find("link", HTMLInputElement);
  box.value = address;
  find("link-box", HTMLParagraphElement).hidden = false;
  box.select();
  try {
    await navigator.clipboard.writeText(address);
    say("done", LANGUAGE.page.status.done.copied);
  } catch {
    say("done", LANGUAGE.page.status.done.notCopied);
  }
}

/** Saves the job as a file, named after its heading in letters that every disk takes. */
export function saveJob(): void {
  const state = readForm();
  const words = state.values.title.toLowerCase().match(/[a-z0-9]+/g) ?? [LANGUAGE.page.opened.fileName];
  saveText(`${words.join("-").slice(0, 60)}.json`, jobToFile(state));
}
