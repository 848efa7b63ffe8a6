import { refuse } from "../../core/check.js";
import { isolate } from "../../core/isolate.js";
import { englishEdges, LONGEST_LINE } from "../catalog/label-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/**
 * What to call an arris on paper.
 *
 * @param arris - the name of an arris, or `null` for a line without one
 * @param options - the words
 * @returns words for people; a name that is not ours is returned as it is, but for signs that set the direction of text, and between U+2068 and U+2069 where it
 * runs from right to left
 * @throws {InputError} when it is neither text nor `null`
 * @example
 * ```ts
 * import { arrisLabel } from "miterwright/words";
 *
 * arrisLabel("outerBack"); //=> "outer edge at the back"
 * arrisLabel("bead"); //=> "bead"
 * ```
 */
export function arrisLabel(arris: string | null, options: WordsOptions = {}): string {
  const labels = checkWords(options)?.labels;
  if (arris === null) return labels?.longestLine ?? LONGEST_LINE;
  if (typeof arris !== "string") return refuse("type", "arris", arris, "the name of an arris, or null");
  const edges = labels?.edges ?? englishEdges;
  return Object.hasOwn(edges, arris) ? edges[arris]! : isolate(arris);
}
