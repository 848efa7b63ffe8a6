/**
 * A deep copy of plain data: numbers, texts and the like as they are, arrays and objects anew. A proxy, as frameworks for user interfaces put round data, is copied as what it
 * stands for; `structuredClone` refuses one.
 */
export function plainCopy<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((item: unknown) => plainCopy(item)) as T;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plainCopy<unknown>(inner)])) as T;
}
