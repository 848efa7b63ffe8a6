import fc from "fast-check";

/**
 * Doubles spread evenly between two bounds. (The generator of fast-check spreads them over all exponents: most would be
 * tiny.)
 */
export function spread(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 2 ** 53 - 1 }).map((k) => min + (max - min) * (k / 2 ** 53));
}

/** A number of digits, small enough for the oracle's 220 places. */
export const someDigits: fc.Arbitrary<number> = fc.integer({ min: 1, max: 80 });
