import { WORDS } from "../../docs/bench/words.js";

/** Words that somebody who has never made a frame can't be expected to know. */
const TRADE: readonly string[] = [
  "apothem",
  "arris",
  "bevel",
  "blank",
  "caul",
  "circumradius",
  "clearance",
  "cradle",
  "crosscut",
  "dowels",
  "fence",
  "hold-down",
  "push stick",
  "rip fence",
  "sled",
  "gauge",
  "kerf",
  "keys",
  "lap",
  "ledge",
  "lip",
  "long-point",
  "miter",
  "molding",
  "offcut",
  "offcuts",
  "panel",
  "plan miters",
  "plumb",
  "rabbet",
  "rough",
  "roughs",
  "sight-edge",
  "slope",
  "splayed",
  "splines",
  "spring angle",
  "stick",
  "sticks",
  "stop",
];

/** Those of them that stand in a text. */
export function tradeWordsIn(text: string): string[] {
  return TRADE.filter((word) => new RegExp(`\\b${word}\\b`, "i").test(text));
}

/** Under which word a word is explained. */
export function meaningOf(word: string): string {
  const entry = WORDS.find((candidate) => candidate.word === word || candidate.forms?.includes(word));
  return entry?.word ?? `nothing explains ${word}`;
}
