import type { Decimal } from "decimal.js";
import { realField, type Real, type RealField } from "./real-field.js";

/** Rounds half away from zero. */
const HALF_UP = 4;
/** Digits worked with beyond those asked for, at first. */
const FIRST_EXTRA = 20;
/** Digits beyond what the inputs can account for: what agrees so far with zero, or with a tie, is taken for it. */
const CERTAINTY = 60;
/** Most extra digits. */
const LAST_EXTRA = 2500;

/** Plain decimal notation, without trailing zeros; never -0. */
function plain(value: Decimal): string {
  return value.isZero() ? "0" : value.toFixed();
}

/** The correctly rounded text of a number, or `undefined` when its bound is too wide to tell. */
function decidedText({ mid, slack }: Real, digits: number): string | undefined {
  if (slack === -Infinity) return plain(mid.toSignificantDigits(digits, HALF_UP));
  // A digit more than the bound pays for the two sums' own rounding.
  const reach = `1e${Math.ceil(slack) + 1}`;
  const low = mid.minus(reach).toSignificantDigits(digits, HALF_UP);
  const high = mid.plus(reach).toSignificantDigits(digits, HALF_UP);
  return low.eq(high) && !low.isZero() ? plain(low) : undefined;
}

/** What is left when no attempt has decided: zero, or a tie. */
function undecidedText({ mid, slack }: Real, digits: number): string {
  const known = Math.floor(mid.e - slack) - 1;
  if (!(known > digits)) return "0";
  return plain(mid.toSignificantDigits(known, HALF_UP).toSignificantDigits(digits, HALF_UP));
}

/** How many digits of coincidence a number can bring about: those it has, and twice its distance from 1 in orders of ten. */
function digitsIn(input: Decimal): number {
  return input.precision() + 2 * Math.abs(input.e);
}

/**
 * Computes numbers at a growing precision until each is known to be correctly rounded.
 *
 * A rounding is decided when both ends of a result's bound round to the same text. What is never decided is a value that is
 * exactly zero, or lies exactly halfway between two texts, without the arithmetic seeing that it is exact. Inputs of I
 * digits in all can be so chosen that a result comes within about 10^-I of zero or of a tie without being it; one that is
 * 60 digits nearer still is taken for it. (Texts of a thousand digits, made to that end, could get past this; 2500 extra
 * digits are the end in any case.)
 */
export function evaluate<K extends string>(
  digits: number,
  inputs: readonly Decimal[],
  derive: (field: RealField) => Readonly<Record<K, Real>>,
): Record<K, string> {
  const texts: Partial<Record<K, string>> = {};
  const lastExtra = Math.min(
    LAST_EXTRA,
    inputs.reduce((sum, input) => sum + digitsIn(input), CERTAINTY),
  );
  for (let extra = FIRST_EXTRA; ; extra = Math.min(3 * extra, lastExtra)) {
    const numbers = derive(realField(digits + extra));
    const names = Object.keys(numbers) as K[];
    for (const name of names) {
      texts[name] ??= decidedText(numbers[name], digits);
      if (extra === lastExtra) texts[name] ??= undecidedText(numbers[name], digits);
    }
    if (names.every((name) => texts[name] !== undefined)) return texts as Record<K, string>;
  }
}
