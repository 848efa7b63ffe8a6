import { describeValue, reject } from "../core/check.js";
import type { WoodName } from "./wood-name.js";
import { WOOD_TABLE } from "./wood-table.js";

/** No name in the table is longer; what comes after it is not compared. */
const LONGEST: number = 40;
/** A name less like the text than this is not offered. */
const LEAST_LIKE: number = 0.5;
/** How many names an error text offers. */
const OFFERED: number = 3;

/** The words of a name in alphabetical order, so that "oak, white" and "White Oak" are the same. */
function sortedWords(name: string): string {
  return name
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "")
    .sort()
    .join(" ");
}

/** The pairs of neighboring letters of a text. */
function letterPairs(text: string): string[] {
  return Array.from({ length: Math.max(0, text.length - 1) }, (_, index) => text.slice(index, index + 2));
}

/** How alike two names are: by the letter pairs that they share, 0 to 1 (Dice's coefficient), and 1 more for a word that both have. */
function likeness(first: string, second: string): number {
  const [pairs, others] = [letterPairs(first), letterPairs(second)];
  const shared = pairs.filter((pair) => others.includes(pair)).length;
  const words = second.split(" ");
  return (
    (2 * shared) / (pairs.length + others.length) + (first.split(" ").some((word) => words.includes(word)) ? 1 : 0)
  );
}

/** The names most like a text, the best first. */
function similarNames(text: string): string[] {
  const words = sortedWords(text.slice(0, LONGEST));
  return Object.keys(WOOD_TABLE)
    .map((name) => ({ name, score: likeness(words, sortedWords(name)) }))
    .filter(({ score }) => score > LEAST_LIKE)
    .sort((a, b) => b.score - a.score)
    .slice(0, OFFERED)
    .map(({ name }) => `"${name}"`);
}

/**
 * The name in the table that a text means.
 *
 * @param text - a name, its words in any order and case
 * @param path - its name in error texts
 * @returns the name as the table has it
 */
export function findWood(text: string, path: string): WoodName {
  if (Object.hasOwn(WOOD_TABLE, text)) return text as WoodName;
  const words = sortedWords(text);
  const found = Object.keys(WOOD_TABLE).find((name) => sortedWords(name) === words);
  if (found !== undefined) return found as WoodName;
  const similar = similarNames(text);
  const hint = similar.length === 0 ? "" : `; the most like it are ${similar.join(", ")}`;
  return reject(
    "unknown",
    path,
    text,
    `Expected \`${path}\` to be a wood that \`woodNames()\` lists, got ${describeValue(text)}${hint}`,
  );
}
