/** Doubles as integers of one unit, 2^-1074, which all of them are multiples of: sums and differences are exact. */

/** How many bits below 1 the unit lies. */
const UNIT_BITS = 1074;

/** A double as a multiple of the unit. */
export function exactOf(value: number): bigint {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const exponent = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const magnitude = exponent === 0 ? fraction : (fraction | 0x10000000000000n) << BigInt(exponent - 1);
  return value < 0 ? -magnitude : magnitude;
}

/** The double at a multiple of the unit, for texts: cut off after 64 bits. */
export function doubleOf(exact: bigint): number {
  const magnitude = exact < 0n ? -exact : exact;
  const above = Math.max(0, 4 * magnitude.toString(16).length - 64);
  // The power may lie below the smallest double, the product not: it is taken in two steps.
  const part = Number(magnitude >> BigInt(above)) * 2 ** -500;
  const double = part * 2 ** (above - UNIT_BITS + 500);
  return exact < 0n ? -double : double;
}

/** Product of two multiples of the unit, as one again; what is below the unit is cut off. */
export function exactProduct(a: bigint, b: bigint): bigint {
  return (a * b) >> BigInt(UNIT_BITS);
}

/** The larger of two integers of any size. */
export function largerOf(a: bigint, b: bigint): bigint {
  return a > b ? a : b;
}

/** The smaller of two integers of any size. */
export function smallerOf(a: bigint, b: bigint): bigint {
  return a < b ? a : b;
}
