/**
 * A computed length for an error text: its first six digits. The last ones would be rounding, and differ between engines.
 *
 * @param length - the length
 * @returns a text like `about 14.1421`
 */
export function about(length: number): string {
  return `about ${Number(length.toPrecision(6))}`;
}
