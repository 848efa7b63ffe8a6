/** A catalog of words, or a part of one, in which every text that comes of it stands between `⟦` and `⟧`, so that a test sees where it ends up. */
export function marked<T>(words: T): T {
  if (typeof words === "string") return `⟦${words}⟧` as T;
  if (typeof words === "function") {
    const write = words as unknown as (values: unknown) => unknown;
    return ((values: unknown) => marked(write(values))) as T;
  }
  if (typeof words !== "object" || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([name, part]) => [name, marked<unknown>(part)])) as T;
}

/** What of a text stands outside all marks. */
export function unmarked(text: string): string {
  let depth = 0;
  return Array.from(text)
    .filter((sign) => {
      if (sign === "⟦") depth += 1;
      const isOutside = depth === 0;
      if (sign === "⟧") depth -= 1;
      return isOutside;
    })
    .join("");
}
