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

/** How alike two names are by the letter pairs that they share, 0 to 1 (Dice's coefficient). */
function likeness(first: string, second: string): number {
  const [pairs, others] = [letterPairs(first), letterPairs(second)];
  const shared = pairs.filter((pair) => others.includes(pair)).length;
  return (2 * shared) / (pairs.length + others.length);
}

/**
 * The names most like a text, the best first, each with what it lacks.
 *
 * A word that both have counts more than any letters, and the last word, which names the kind, twice: who looks for a red oak is served by another oak, not by
 * a red pine. Among equally good names, those whose mass is known come first.
 */
function similarNames(text: string): string[] {
  const given = sortedWords(text.slice(0, LONGEST));
  const words = given.split(" ");
  // "oak, red" has it before the comma.
  const [before = ""] = text.slice(0, LONGEST).toLowerCase().split(",");
  const kind = /([a-z]+)[^a-z]*$/.exec(before)?.[1];
  return Object.entries(WOOD_TABLE)
    .map(([name, figures]) => {
      const own = sortedWords(name).split(" ");
      const shared = [...words, kind].filter((word) => word !== undefined && own.includes(word)).length;
      const letters = likeness(given, own.join(" "));
      return { name, hasGravity: figures[4] !== null, shared, letters };
    })
    .filter(({ shared, letters }) => shared > 0 || letters > LEAST_LIKE)
    .sort((a, b) => b.shared - a.shared || Number(b.hasGravity) - Number(a.hasGravity) || b.letters - a.letters)
    .slice(0, OFFERED)
    .map(({ name, hasGravity }) => `"${name}"${hasGravity ? "" : " (without specific gravity)"}`);
}

/** The name in the table that a text means. */
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
