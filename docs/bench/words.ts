import type { Word } from "./labels/dictionary.js";

/** Letters alone, of any language, so that signs and line ends part words and nothing else does. */
function plain(text: string): string {
  return ` ${text
    .toLowerCase()
    .replace(/\P{L}+/gu, " ")
    .trim()} `;
}

/**
 * The trade words that stand in a text, and those that stand in their meanings.
 *
 * @param text - any text
 * @param dictionary - the words that have a meaning
 * @returns the words, in the order of the list
 */
export function wordsIn(text: string, dictionary: readonly Word[]): readonly Word[] {
  const found = new Set<Word>();
  const texts = [plain(text)];
  const forms = dictionary
    .flatMap((entry) => [entry.word, ...(entry.forms ?? [])].map((form) => ({ entry, form: plain(form) })))
    .sort((one, other) => other.form.length - one.form.length);
  // Meanings that are found are read as well.
  for (const whole of texts) {
    let read = whole;
    for (const { entry, form } of forms) {
      if (!read.includes(form)) continue;
      // The longest forms come first and are taken out: a panel blank is no blank of molding.
      read = read.replaceAll(form, " | ");
      if (found.has(entry)) continue;
      found.add(entry);
      texts.push(plain(entry.means));
    }
  }
  return dictionary.filter((entry) => found.has(entry));
}
