/**
 * Writes the exact value of a double as a decimal text.
 *
 * A double is an integer over a power of two, so its decimal expansion ends: m / 2^k = m 5^k / 10^k. The usual text of a
 * double is only the shortest one that reads back the same: `0.1` stands for
 * 0.1000000000000000055511151231257827021181583404541015625.
 */
export function exactText(value: number): string {
  let scaled = value;
  let halvings = 0;
  // Doubling is exact, and ends after at most 1074 steps.
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    halvings += 1;
  }
  const digits = (BigInt(scaled) * 5n ** BigInt(halvings)).toString();
  return halvings === 0 ? digits : `${digits}e-${halvings}`;
}
