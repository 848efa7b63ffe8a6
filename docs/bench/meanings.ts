import { find, showMarkup } from "./elements.js";
import { wordList } from "./field-markup.js";
import { LANGUAGE } from "./language.js";
import type { Word } from "./labels/dictionary.js";
import { wordsIn } from "./words.js";

let dictionary: readonly Word[] | null = null;

/** The meanings of the trade words, as they were written into the page. */
function wordsOfPage(): readonly Word[] {
  dictionary ??= Array.from(
    find("dictionary", HTMLTemplateElement).content.querySelectorAll<HTMLElement>("[data-forms]"),
    (entry) => ({
      word: entry.querySelector("dt")!.textContent,
      forms: entry.dataset["forms"]!.split("|").filter((form) => form !== ""),
      means: entry.querySelector("dd")!.textContent,
    }),
  );
  return dictionary;
}

/**
 * Shows what the trade words of a text mean. The meanings stay open if they were.
 *
 * @param place - where they stand
 * @param text - the text
 */
export function showMeanings(place: Element, text: string): void {
  const isOpen = place.querySelector("details")?.open === true;
  showMarkup(place, wordList(wordsIn(text, wordsOfPage()), LANGUAGE.page));
  const fold = place.querySelector("details");
  if (fold !== null) fold.open = isOpen;
}

/** Shows what the trade words of the form mean, which were looked up when the page was built. */
export function showFormMeanings(): void {
  for (const place of document.querySelectorAll<HTMLElement>(".meaning[data-words]")) {
    const names = place.dataset["words"]!.split("|");
    const words = wordsOfPage().filter(({ word }) => names.includes(word));
    showMarkup(place, wordList(words, LANGUAGE.page));
  }
}
