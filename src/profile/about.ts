/**
 * A computed length for an error text: its first six digits. The last ones would be rounding, and differ between engines.
 */
export function about(length: number): string {
  return `about ${Number(length.toPrecision(6))}`;
}
