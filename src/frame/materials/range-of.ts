/** The least and the greatest of any number of values. */
export function rangeOf(numbers: readonly number[]): readonly [least: number, most: number] {
  return numbers.reduce<[number, number]>(
    ([least, most], one) => [Math.min(least, one), Math.max(most, one)],
    [Infinity, -Infinity],
  );
}
