import { checkWord } from "../../core/check.js";
import type { StickSurface } from "../../saw/index.js";
import { englishSurfaces } from "../catalog/label-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

const SURFACES: readonly StickSurface[] = ["back", "face", "sight-edge", "outer-edge"];

/**
 * What to call a surface of the stick on paper.
 *
 * @param surface - the surface
 * @param options - the words
 * @returns words for people
 * @throws {InputError} when it is none of them
 * @example
 * ```ts
 * import { surfaceLabel } from "miterwright/words";
 *
 * surfaceLabel("outer-edge"); //=> "outer edge"
 * ```
 */
export function surfaceLabel(surface: StickSurface, options: WordsOptions = {}): string {
  return (checkWords(options)?.labels.surfaces ?? englishSurfaces)[checkWord(surface, "surface", SURFACES)];
}
