/*
 * An oracle that shares nothing with the library: integers of any size stand for numbers times a power of ten, series are
 * summed as they are written in textbooks, and the tests put the closed forms into it that the library avoids.
 */

/** Decimal places carried. Results of a handful of operations are good to ten places less. */
const PLACES = 220;
const ONE = 10n ** BigInt(PLACES);

/** A number times 10^220. */
export type Fixed = bigint;

/** The number that a decimal text stands for; it must have at most 220 places. */
function fixedFromText(text: string): Fixed {
  const [, sign, whole = "", fraction = "", exponent] = /^([+-]?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/iu.exec(text)!;
  const places = fraction.length - Number(exponent ?? 0);
  if (places > PLACES) throw new Error(`too many places: ${text}`);
  const value = BigInt(`0${whole}${fraction}`) * 10n ** BigInt(PLACES - places);
  return sign === "-" ? -value : value;
}

/** The number that the bits of a double stand for, read from its sign, exponent and fraction fields. */
function fixedFromDouble(value: number): Fixed {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const exponent = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const [whole, power] = exponent === 0 ? [fraction, -1074] : [fraction | (1n << 52n), exponent - 1075];
  const magnitude = power >= 0 ? whole * 2n ** BigInt(power) * ONE : (whole * ONE) / 2n ** BigInt(-power);
  return value < 0 ? -magnitude : magnitude;
}

/** A number from its decimal text or its bits. */
export function fix(value: number | string): Fixed {
  return typeof value === "string" ? fixedFromText(value) : fixedFromDouble(value);
}

export const times = (a: Fixed, b: Fixed): Fixed => (a * b) / ONE;
export const over = (a: Fixed, b: Fixed): Fixed => (a * ONE) / b;

/** Square root, by Newton's iteration on integers. */
export function root(a: Fixed): Fixed {
  if (a === 0n) return 0n;
  const square = a * ONE;
  let x = 1n << BigInt(Math.ceil(square.toString(2).length / 2));
  for (;;) {
    const next = (x + square / x) >> 1n;
    if (next >= x) return x;
    x = next;
  }
}

/** The inverse tangent of 1/k, summed as written. */
function inverseTangentOfUnitFraction(k: bigint): Fixed {
  let power = ONE / k;
  let sum = 0n;
  for (let odd = 1n; power !== 0n; odd += 2n) {
    sum += (odd % 4n === 1n ? power : -power) / odd;
    power /= k * k;
  }
  return sum;
}

/** Pi, by Gauss's formula 48 atan(1/18) + 32 atan(1/57) - 20 atan(1/239). */
export const PI: Fixed =
  48n * inverseTangentOfUnitFraction(18n) +
  32n * inverseTangentOfUnitFraction(57n) -
  20n * inverseTangentOfUnitFraction(239n);

/** x^k / k! for every second k from `first` on, with changing signs, summed. */
function alternating(x: Fixed, first: 0n | 1n): Fixed {
  let term = first === 0n ? ONE : x;
  let sum = 0n;
  for (let k = first + 2n; term !== 0n; k += 2n) {
    sum += term;
    term = -times(times(term, x), x) / (k * (k - 1n));
  }
  return sum;
}

/** Sine of an angle in degrees. */
export const sine = (degrees: Fixed): Fixed => alternating(times(degrees, PI) / 180n, 1n);
/** Cosine of an angle in degrees. */
export const cosine = (degrees: Fixed): Fixed => alternating(times(degrees, PI) / 180n, 0n);
/** Tangent of an angle in degrees. */
export const tangent = (degrees: Fixed): Fixed => over(sine(degrees), cosine(degrees));

/** Inverse tangent in degrees: atan x = 2 atan(x / (1 + sqrt(1 + x^2))) until x is small, then the series. */
export function inverseTangent(x: Fixed): Fixed {
  let small = x;
  for (let k = 0; k < 12; k += 1) small = over(small, ONE + root(ONE + times(small, small)));
  let power = small;
  let sum = 0n;
  for (let odd = 1n; power !== 0n; odd += 2n) {
    sum += power / odd;
    power = -times(times(power, small), small);
  }
  return over(4096n * 180n * sum, PI);
}

/** Inverse sine in degrees. */
export const inverseSine = (x: Fixed): Fixed => inverseTangent(over(x, root(ONE - times(x, x))));

/** The integer quotient nearest to a / b, halves away from zero; b positive. */
function nearest(a: bigint, b: bigint): bigint {
  const magnitude = ((a < 0n ? -a : a) * 2n + b) / (2n * b);
  return a < 0n ? -magnitude : magnitude;
}

/**
 * A number in plain decimal notation, rounded half away from zero, without trailing zeros.
 *
 * @param value - the number
 * @param digits - significant digits
 * @returns its text
 */
export function text(value: Fixed, digits: number): string {
  const magnitude = value < 0n ? -value : value;
  const surplus = magnitude.toString().length - digits;
  const kept = surplus > 0 ? nearest(magnitude, 10n ** BigInt(surplus)) * 10n ** BigInt(surplus) : magnitude;
  const padded = kept.toString().padStart(PLACES + 1, "0");
  const fraction = padded.slice(-PLACES).replace(/0+$/u, "");
  const plain = padded.slice(0, -PLACES) + (fraction === "" ? "" : `.${fraction}`);
  return value < 0n && kept !== 0n ? `-${plain}` : plain;
}
