import { FORM } from "../../docs/bench/language.js";

/** Words that somebody who has never made a frame can't be expected to know. */
const TRADE: readonly string[] = [
  "apothem",
  "bevel",
  "blank",
  "blanks",
  "bevel block",
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
  "panel blank",
  "plan miters",
  "plumb",
  "rabbet",
  "sight-edge",
  "slope",
  "splayed",
  "splines",
  "spring angle",
  "stick",
  "sticks",
  "stop",
];

/** Those of them that stand in a text; the word of a longer one, such as a panel blank's, counts with that one alone. */
export function tradeWordsIn(text: string): string[] {
  let rest = text;
  return [...TRADE]
    .sort((one, other) => other.length - one.length)
    .filter((word) => {
      const before = rest;
      rest = rest.replaceAll(new RegExp(`\\b${word}\\b`, "gi"), "|");
      return rest !== before;
    });
}

/** Under which word a word is explained. */
export function meaningOf(word: string): string {
  const entry = FORM.dictionary.find((candidate) => candidate.word === word || candidate.forms?.includes(word));
  return entry?.word ?? `nothing explains ${word}`;
}
