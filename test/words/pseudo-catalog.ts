/** What opens and closes a text of the catalog. */
const [OPEN, CLOSE] = ["\u27e6", "\u27e7"];
/** A code, which the texts of a catalog choose by and never show as it is. */
const CODE: RegExp = /^[a-z]+(?:-[a-z]+)*$/;

/** Values as a text of the catalog gets them: texts stand outside its brackets, codes and numbers stay what they are. */
function outside(value: unknown): unknown {
  if (typeof value === "string") return value === "" || CODE.test(value) ? value : `${CLOSE}${value}${OPEN}`;
  if (Array.isArray(value)) return value.map(outside);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, outside(part)]));
}

function bracketed(text: string): string {
  return text === "" ? "" : `${OPEN}${text}${CLOSE}`;
}

/**
 * The same catalog with every text in brackets, and with what is put into a text outside of them.
 *
 * What is told through it and stands outside brackets did not come from the catalog.
 */
export function pseudoOf<T>(catalog: T): T {
  if (typeof catalog === "string") return bracketed(catalog) as T;
  if (typeof catalog === "function") {
    const write = catalog as unknown as (...values: unknown[]) => unknown;
    return ((...values: unknown[]) => pseudoOf(write(...values.map(outside)))) as T;
  }
  if (Array.isArray(catalog)) return catalog.map((part: unknown) => pseudoOf(part)) as T;
  if (typeof catalog !== "object" || catalog === null) return catalog;
  return Object.fromEntries(Object.entries(catalog).map(([key, part]) => [key, pseudoOf(part as unknown)])) as T;
}

/** What of a text stands outside all brackets. */
export function outsideOf(text: string): string {
  let depth = 0;
  let rest = "";
  for (const sign of text) {
    if (sign === OPEN) depth++;
    else if (sign === CLOSE) depth--;
    else if (depth === 0) rest += sign;
  }
  return rest;
}

/** Numbers with their units, letters of edges, corners of panels and sides, and signs. */
const PLAIN: RegExp =
  /\d[\d.,]*(?:[\u00a0 ]\d+)?(?:\/\d+)?(?:e[-+]?\d+)?(?:[\u00a0 ]?(?:mm²|cm²|in²|m³|mm|cm|m|in|ft|kg|lbf?|N|°C|%|["'°])(?![a-z]))?|\bP\d+\b/g;

/** The words of a text that stand outside brackets and are neither numbers with units nor among the names that are expected. */
export function lettersOutside(text: string, names: readonly string[] = []): string[] {
  let rest = outsideOf(text);
  for (const name of [...names].sort((a, b) => b.length - a.length)) rest = rest.replaceAll(name, " ");
  return rest.replace(PLAIN, " ").match(/\p{L}+/gu) ?? [];
}

/** A catalog that remembers which of its texts were asked for. */
export interface WatchedCatalog<T> {
  /** The same catalog. */
  readonly words: T;
  /** The texts that nobody asked for so far, by their places. */
  readonly unused: () => string[];
}

/** Watches a catalog. */
export function watch<T extends object>(catalog: T): WatchedCatalog<T> {
  const unused = new Set<string>();
  const watched = (part: object, path: string): object => {
    const copy = {};
    for (const [key, value] of Object.entries(part) as [string, unknown][]) {
      const place = path === "" ? key : `${path}.${key}`;
      if (typeof value === "object" && value !== null && !Array.isArray(value)) {
        Object.defineProperty(copy, key, { value: watched(value, place), enumerable: true });
        continue;
      }
      unused.add(place);
      const get = (): unknown => {
        unused.delete(place);
        return value;
      };
      Object.defineProperty(copy, key, { get, enumerable: true });
    }
    return copy;
  };
  return { words: watched(catalog, "") as T, unused: () => [...unused].sort() };
}
