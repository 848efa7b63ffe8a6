/** What an error of the library says, and of what kind it is. */
export interface Refusal {
  /** What is wrong, in one word. */
  readonly code: string;
  /** Where, as the library names it. */
  readonly path: string;
  /** The library's sentence. */
  readonly message: string;
}

/** `opening.contains.width` as a programmer reads it; beside its own field the page needs no name. */
const QUOTED: RegExp = /`([^`]+)`/g;

/**
 * Says an error of the library in the words of the form, for a place beside the field that it is about.
 *
 * The library's sentences name fields as programmers do and repeat the value. Beside the field, where the text stands as it was typed, neither is needed.
 *
 * @param refusal - the error
 * @returns a sentence
 */
export function issueWords({ code, path, message }: Refusal): string {
  if (code === "impossible" && path === "opening") {
    return "The opening is too small for this molding and number of sides: the sides would have no length at the inside.";
  }
  const typed = /^Expected `text` to be (an? \w+), got .*?: at character \d+, (.*)$/s.exec(message);
  if (typed !== null) return `This can't be read as ${typed[1]!}: ${typed[2]!}.`;
  const plain = /^Expected `[^`]+` to be (.*), got .*$/s.exec(message);
  const said = plain === null ? message : `This has to be ${plain[1]!}.`;
  return said
    .replaceAll(/ \((?:1e-100 to|up to) 1e100\)/g, "")
    .replaceAll(QUOTED, (_, name: string) => name.replace(/^.*\./, ""))
    .replace("an integer", "a whole number")
    .replace("a string that is not empty", "a word");
}
