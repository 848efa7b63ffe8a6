/** A row of two settings in turn, and how it begins. */
export interface Alternation {
  /** Whether it begins with the first of the two. */
  readonly firstLeads: boolean;
  /** How many settings it has. */
  readonly length: number;
  /** Whether it would be as short the other way round. */
  readonly either: boolean;
}

/**
 * The shortest row of two settings in turn that holds given rows in their order.
 *
 * A row that begins with the one fits into as long a row that begins so, and into one that is longer by 1 and begins with the other.
 *
 * @param longest - length of the longest row that begins with the first setting, and of the longest that begins with the second; 0 for none
 * @returns the row
 */
export function shortestAlternation(longest: readonly [number, number]): Alternation {
  const [byFirst, bySecond] = longest;
  const firstLeads = Math.max(byFirst, bySecond === 0 ? 0 : bySecond + 1);
  const secondLeads = Math.max(bySecond, byFirst === 0 ? 0 : byFirst + 1);
  return {
    firstLeads: firstLeads <= secondLeads,
    length: Math.min(firstLeads, secondLeads),
    either: firstLeads === secondLeads,
  };
}
