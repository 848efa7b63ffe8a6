/**
 * Sum of all values.
 *
 * @param values - the values
 * @returns their sum, 0 for none
 */
export function sumOf(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

/**
 * Largest of all values; a list may be too long for the arguments of `Math.max`.
 *
 * @param values - the values
 * @param least - the result is no less
 * @returns the largest value
 */
export function largestOf(values: Iterable<number>, least: number): number {
  let most = least;
  for (const value of values) most = Math.max(most, value);
  return most;
}
