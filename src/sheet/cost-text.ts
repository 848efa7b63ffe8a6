/**
 * A cost, in whatever currency the brief is in.
 *
 * @param cost - the amount
 * @returns the amount with two decimals
 */
export function costText(cost: number): string {
  return cost < 1e9 ? cost.toFixed(2) : cost.toPrecision(6);
}
