import type { Decimal } from "decimal.js";

/** A decimal constructor, set to some precision; every kernel here rounds as often as it likes to that precision. */
export type DecimalClass = typeof Decimal;

/**
 * How many trailing digits the kernels may spoil, out of the working digits.
 *
 * The longest sum has 1.5 terms a working digit and each rounding costs one unit in the last place; 5 digits pay for
 * 100,000 of them, more than ten times what the largest working precision (2620 digits) can run up.
 */
export const SPOILED_DIGITS: number = 5;

/** The inverse tangent of 1/k for an integer k > 1, by its power series. */
function inverseTangentOfUnitFraction(k: number, make: DecimalClass): Decimal {
  const square = k * k;
  let power = new make(1).div(k);
  let sum = power;
  for (let odd = 3; power.e >= -make.precision - 1; odd += 2) {
    power = power.div(-square);
    sum = sum.plus(power.div(odd));
  }
  return sum;
}

/** Pi, by Machin's formula 16 atan(1/5) - 4 atan(1/239). (The constant of decimal.js itself ends after 1025 digits.) */
export function computePi(make: DecimalClass): Decimal {
  return inverseTangentOfUnitFraction(5, make).times(16).minus(inverseTangentOfUnitFraction(239, make).times(4));
}

/**
 * Sine and cosine of a small angle.
 *
 * It sums the series of v = 2 - 2 cos x for x over a power of two, then doubles the angle by v(2x) = v (4 - v), which
 * keeps v good relative to its own size however small it is; sin x = sqrt(v (4 - v)) / 2. The angle is in radians, not zero and at most 0.8 to either side.
 */
export function sineCosine(radians: Decimal, make: DecimalClass): [sine: Decimal, cosine: Decimal] {
  // Doublings and terms cost a multiplication each; this keeps them about even.
  const wantedBits = Math.ceil(0.8 * Math.sqrt(make.precision));
  const halvings = Math.max(0, wantedBits + Math.ceil((radians.e + 1) * Math.log2(10)));
  const x = halvings === 0 ? radians : radians.div(2 ** halvings);
  const square = x.times(x);
  let term = square;
  let v = square;
  for (let k = 3; term.e >= square.e - make.precision - 1; k += 2) {
    term = term.times(square).div(-k * (k + 1));
    v = v.plus(term);
  }
  for (let k = 0; k < halvings; k += 1) v = v.times(new make(4).minus(v));
  const sine = v.times(new make(4).minus(v)).sqrt().div(2);
  return [radians.s < 0 ? sine.neg() : sine, new make(1).minus(v.div(2))];
}

/**
 * Inverse tangent of a quotient, for a direction within 45 degrees of the positive x axis.
 *
 * The double-precision function gives a first angle; the vector is turned back by it, and the small angle that is left
 * comes from the power series, which then gains 30 digits a term.
 */
export function inverseTangent(y: Decimal, x: Decimal, make: DecimalClass): Decimal {
  const guess = new make(Math.atan(y.div(x).toNumber()).toPrecision(15));
  const [sine, cosine] = guess.isZero() ? [guess, new make(1)] : sineCosine(guess, make);
  const rest = y
    .times(cosine)
    .minus(x.times(sine))
    .div(x.times(cosine).plus(y.times(sine)));
  const square = rest.times(rest).neg();
  let power = rest;
  let sum = rest;
  for (let odd = 3; !power.isZero() && power.e >= rest.e - make.precision - 1; odd += 2) {
    power = power.times(square);
    sum = sum.plus(power.div(odd));
  }
  return guess.plus(sum);
}
