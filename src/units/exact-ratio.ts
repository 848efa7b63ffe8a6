/** A finite number as the ratio of integers that it is. */
export function exactRatio(value: number): [top: bigint, bottom: bigint] {
  let top = value;
  let halvings = 0;
  // Doubling is exact: what is not an integer is below 2^53.
  while (!Number.isInteger(top)) {
    top *= 2;
    halvings++;
  }
  return [BigInt(top), 1n << BigInt(halvings)];
}

/** The number of binary digits of a positive integer. */
function bitLength(value: bigint): number {
  return value.toString(2).length;
}

/**
 * The number nearest to a ratio of integers, the even one on a tie. It is rounded once, down into the subnormal numbers. The bottom is positive. Never -0;
 * infinite only when the ratio is beyond the doubles.
 */
export function nearestDouble(top: bigint, bottom: bigint): number {
  if (top === 0n) return 0;
  if (top < 0n) return -nearestDouble(-top, bottom) + 0;
  // The quotient of numbers of p and q bits lies between 2^(p-q-1) and 2^(p-q+1). It is moved up to 53 or 54 bits, and
  // the 54th is given back; but no bit below 2^-1074, the last a double can have, may be moved up.
  let shift = Math.min(53 - bitLength(top) + bitLength(bottom), 1074);
  const shiftedTop = (): bigint => (shift > 0 ? top << BigInt(shift) : top);
  const shiftedBottom = (): bigint => (shift < 0 ? bottom << BigInt(-shift) : bottom);
  if (shiftedTop() / shiftedBottom() >= 1n << 53n) shift--;
  const divisor = shiftedBottom();
  let quotient = shiftedTop() / divisor;
  const twice = 2n * (shiftedTop() % divisor);
  if (twice > divisor || (twice === divisor && quotient % 2n === 1n)) quotient++;
  // In two steps, since 2^1074 itself is beyond the doubles; both are exact.
  const half = Math.trunc(shift / 2);
  return Number(quotient) / 2 ** half / 2 ** (shift - half);
}
