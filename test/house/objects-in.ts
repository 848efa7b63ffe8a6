/** Every object within a value, itself included. */
export function objectsIn(value: unknown, found: Set<object> = new Set<object>()): Set<object> {
  if (typeof value !== "object" || value === null || found.has(value)) return found;
  found.add(value);
  for (const inner of Object.values(value)) objectsIn(inner, found);
  return found;
}
