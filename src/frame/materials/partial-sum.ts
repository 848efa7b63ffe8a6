/** A sum of what is known, and what is not. */
export interface PartialSum {
  /** The sum of all that is known; `null` when nothing is. */
  readonly total: number | null;
  /** Whether it is the whole: nothing is missing. */
  readonly complete: boolean;
  /** What is not in it, by name. */
  readonly missing: readonly string[];
}

/**
 * A number that can be computed with, or `null`: a quantity of a brief at the edge of what lengths may be can leave the doubles.
 */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/** Adds up what is known. A term that is not known is `null`. */
export function partialSum(terms: readonly { readonly name: string; readonly value: number | null }[]): PartialSum {
  const known = terms.flatMap(({ value }) => value ?? []);
  const total = known.length === 0 ? null : finiteOrNull(known.reduce((sum, value) => sum + value, 0));
  const missing = terms.filter(({ value }) => value === null || total === null).map(({ name }) => name);
  return { total, complete: missing.length === 0, missing };
}
