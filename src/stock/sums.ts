/** Sum of all values. */
export function sumOf(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

/** Largest of all values and `least`; a list may be too long for the arguments of `Math.max`. */
export function largestOf(values: Iterable<number>, least: number): number {
  let most = least;
  for (const value of values) most = Math.max(most, value);
  return most;
}
