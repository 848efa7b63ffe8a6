import { nearestDouble } from "./exact-ratio.js";
import { type Numeral, powerOfTen } from "./read-numeral.js";

/** One part of a quantity, as the feet of `1' 2"`: a number of units. */
export interface Part extends Numeral {
  /** Size of the unit, an integer. */
  readonly size: number;
}

/** The value from integers held in doubles; `undefined` unless all stay below 2^53, and so exact. */
function valueOfSmall(parts: readonly Part[], target: number): number | undefined {
  let top = 0;
  let bottom = 1;
  for (const part of parts) {
    // Every part but the last is whole, so the denominator is the last one's.
    bottom = Number(part.bottom);
    const count = Number(part.whole) * bottom + Number(part.top);
    top = top * bottom + count * part.size * Number(powerOfTen(part.exponent));
    bottom *= Number(powerOfTen(-part.exponent));
  }
  bottom *= target;
  return top < 2 ** 53 && bottom < 2 ** 53 ? top / bottom : undefined;
}

/** The same from integers of any size. */
function valueOfLarge(parts: readonly Part[], target: number): number {
  let top = 0n;
  let bottom = 1n;
  for (const part of parts) {
    bottom = BigInt(part.bottom);
    const count = BigInt(part.whole) * bottom + BigInt(part.top);
    top = top * bottom + count * BigInt(part.size) * BigInt(powerOfTen(part.exponent));
    bottom *= BigInt(powerOfTen(-part.exponent));
  }
  // What is not zero must not become so, however small: the caller refuses it.
  return nearestDouble(top, bottom * BigInt(target)) || (top === 0n ? 0 : Number.MIN_VALUE);
}

/** The value of a quantity, rounded once. `Number.MIN_VALUE` for what is smaller but not zero. */
export function valueOf(parts: readonly Part[], target: number): number {
  return valueOfSmall(parts, target) ?? valueOfLarge(parts, target);
}
