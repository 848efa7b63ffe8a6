/** Changes every number, text and flag within a value, and nothing else. */
export function spoil(value: unknown): void {
  if (typeof value !== "object" || value === null) return;
  const holder = value as Record<string, unknown>;
  for (const [key, inner] of Object.entries(holder)) {
    if (typeof inner === "number") holder[key] = inner + 1;
    else if (typeof inner === "string") holder[key] = `${inner}!`;
    else if (typeof inner === "boolean") holder[key] = !inner;
    else spoil(inner);
  }
}
