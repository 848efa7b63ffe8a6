import { isolate } from "../../core/isolate.js";
import { englishLabels } from "../catalog/label-words.js";
import type { Words } from "../words.js";

/** What to call a piece of a stock job: the word for a frame's own pieces, else the name that the caller gave. */
export function pieceLabel(id: string, words: Words | undefined): string {
  const { pieces } = words?.labels ?? englishLabels;
  return Object.hasOwn(pieces, id) ? pieces[id]! : isolate(id);
}
