import type { FramePlan } from "miterwright/frame";
import { lettersOutside } from "../words/pseudo-catalog.js";

/** The attributes whose texts a person meets. */
const READ = /\s(?:aria-label|placeholder|title|alt|content|data-head)="([^"]*)"/g;

/** Every text of markup that a person meets, those of attributes too. A line's texts follow each other, so that a bracket may open in one and close in the next. */
function readOf(markup: string): string {
  const plain = markup
    .replace(/<style>.*?<\/style>/gs, "")
    .replace(/<meta (?!name="description")[^>]*>/g, "")
    .replace(/<script.*?<\/script>/gs, "");
  const attributes = [...plain.matchAll(READ)].map(([, text]) => text!);
  const decoded = [...attributes, plain.replace(/<[^>]*>/g, " ")].join(" ");
  return decoded
    .replace(/&nbsp;/g, "\u00a0")
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&lt;/g, "<")
    .replace(/&amp;/g, "&");
}

/** Names that a user typed, and the page's own. */
export const NAMES: readonly string[] = ["Tide pane", "Chart", "LARCH", "OAK", "Miterwright"];

/** The letters of markup that no catalog wrote, and that belong to no number and no name. */
export function strays(markup: string, names: readonly string[] = NAMES): string[] {
  return lettersOutside(readOf(markup), names);
}

/** The same of what is told of a plan: printed sources are cited as they are, and a small letter alone names an edge. */
export function straysOf(markup: string, { hazards }: Pick<FramePlan, "hazards">): string[] {
  return strays(markup, [...NAMES, ...hazards.map(({ source }) => source)]).filter((word) => !/^[a-z]$/.test(word));
}
