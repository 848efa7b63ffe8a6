/** A name as data have it: `outer-edge`, `miterGraduation`. */
const CODE = /^(?:[a-z]+(?:-[a-z]+)+|[a-z]+(?:[A-Z][a-z]*)+)$/;

function* namesIn(data: unknown): Generator<string> {
  if (typeof data === "string") yield data;
  if (typeof data !== "object" || data === null) return;
  for (const [key, value] of Object.entries(data)) {
    yield key;
    yield* namesIn(value);
  }
}

/**
 * The names that data have for programs, and that no person should read.
 *
 * @param data - plain data, such as a plan
 * @param words - names that are words of English as well
 * @returns every key and every value that is written as a code
 */
export function codesOf(data: unknown, words: readonly string[] = []): string[] {
  return [...new Set(namesIn(data))].filter((name) => CODE.test(name) && !words.includes(name));
}

/**
 * The codes of data that stand in a text.
 *
 * @param text - what a person reads
 * @param codes - from `codesOf`
 * @returns the codes that the text has as a word, and bare words of the language such as `null`
 */
export function codesRead(text: string, codes: readonly string[]): string[] {
  const read = new Set(text.match(/[A-Za-z]+(?:-[A-Za-z]+)*/g));
  return [...codes, "null", "undefined", "NaN"].filter((code) => read.has(code));
}
