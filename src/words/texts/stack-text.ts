import { checkWord } from "../../core/check.js";
import type { StackVerdict } from "../../frame/index.js";
import { englishStacks } from "../catalog/stack-words.js";
import { checkWords, type WordsOptions } from "../tell-options.js";

/**
 * Says how the contents fill the rabbet, and what helps where they leave too little room.
 *
 * @param verdict - of a plan's `contents.stack`
 * @param options - the words
 * @returns a sentence without numbers
 * @throws {InputError} when the verdict is none of the four
 * @example
 * ```ts
 * import { stackText } from "miterwright/words";
 *
 * stackText("roomy"); //=> "Behind the contents there is room for what holds them."
 * ```
 */
export function stackText(verdict: StackVerdict, options: WordsOptions = {}): string {
  const read = checkWord(verdict, "verdict", ["roomy", "tight", "short", "proud"]);
  const words = checkWords(options);
  return (words?.stacks ?? englishStacks)[read]();
}
