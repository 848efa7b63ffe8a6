import { Decimal } from "decimal.js";
import { exactText } from "./exact-text.js";
import { computePi, inverseTangent, sineCosine, SPOILED_DIGITS, type DecimalClass } from "./kernels.js";

/**
 * A real number that is known up to a bound: it lies within 10^slack of `mid`. A slack of -Infinity says that `mid` is the
 * number itself.
 *
 * Every operation widens the bound by what it can add, so a result tells how many of its digits are true, whatever was
 * lost to cancellation on the way.
 */
export interface Real {
  /** The number as computed. */
  readonly mid: Decimal;
  /** Common logarithm of a bound on its error. */
  readonly slack: number;
}

/**
 * The arithmetic of {@link Real} numbers at one working precision. Angles are degrees.
 *
 * A derivation must not look at the sign of `mid` itself: where the bound does not exclude the other sign, the branch taken
 * would not be part of the result's bound.
 */
export interface RealField {
  /** A number that is given exactly; a double counts with its exact value. */
  readonly exact: (value: Decimal | number) => Real;
  /** a + b. */
  readonly add: (a: Real, b: Real) => Real;
  /** a - b. */
  readonly sub: (a: Real, b: Real) => Real;
  /** a b. */
  readonly mul: (a: Real, b: Real) => Real;
  /** a / b. */
  readonly div: (a: Real, b: Real) => Real;
  /** -a. */
  readonly neg: (a: Real) => Real;
  /** One number where the sign is positive (or exactly 0), another where it is negative; what covers both where it is unknown. */
  readonly choose: (sign: Real, positive: Real, negative: Real) => Real;
  /** The square root of a number that is not negative. */
  readonly sqrt: (a: Real) => Real;
  /** Sine and cosine of an angle; exact at multiples of 90 degrees and where the sine or cosine is 1/2. */
  readonly sinCos: (degrees: Real) => readonly [sine: Real, cosine: Real];
  /** Direction of the vector (x, y), -180 to 180 degrees; exact on the axes and the diagonals. Its bound holds but for full turns. */
  readonly atan2: (y: Real, x: Real) => Real;
}

/** The bound of a number about which nothing is known. Finite, so that no sum of bounds is NaN. */
const UNKNOWN = 1e9;
/** log10(2), rounded up. */
const TWO = 0.3011;
/** log10(180 / pi), rounded up and down. */
const DEGREES_UP = 1.7582;
const DEGREES_DOWN = 1.7581;
/** log10(360), rounded up: no two directions are farther apart. */
const FULL_TURN = 2.5564;

/** log10 |x| to about 7 digits, from its two leading words of 7 digits each; -Infinity for zero. */
function magnitude(x: Decimal): number {
  if (x.isZero()) return -Infinity;
  const [first = 0, second = 0] = x.d;
  // Words end at exponents that are multiples of 7.
  return Math.log10(first + second * 1e-7) + 7 * Math.floor(x.e / 7);
}

/** log10(10^a + 10^b), rounded up a little. */
function logSum(a: number, b: number): number {
  const high = Math.max(a, b);
  const low = Math.min(a, b);
  if (low === -Infinity) return high;
  return low < high - 9 ? high + 1e-6 : high + Math.log10(1 + 10 ** (low - high)) + 1e-6;
}

/** Makes the arithmetic of {@link Real} numbers. */
export function realField(digits: number): RealField {
  const make: DecimalClass = Decimal.clone({ defaults: true, precision: digits });
  const zero: Real = { mid: new make(0), slack: -Infinity };
  let pi: Decimal | undefined;
  const knownPi = (): Decimal => (pi ??= computePi(make));

  const isExact = (a: Real): boolean => a.slack === -Infinity;
  const isZero = (a: Real): boolean => a.mid.isZero() && isExact(a);
  /** What rounding a result to the working precision can cost. */
  const rounding = (mid: Decimal): number => (mid.isZero() ? -Infinity : mid.e - digits + 1);
  /** What a kernel can cost. */
  const spoiled = (mid: Decimal): number => rounding(mid) + SPOILED_DIGITS;
  /** Exponent of the last digit that is not zero. */
  const lastPlace = (x: Decimal): number => x.e - x.precision() + 1;

  const exact = (value: Decimal | number): Real => {
    const given = new make(typeof value !== "number" || Number.isSafeInteger(value) ? value : exactText(value));
    if (given.precision() <= digits) return { mid: given, slack: -Infinity };
    const mid = given.toSignificantDigits(digits);
    return { mid, slack: rounding(mid) };
  };

  const add = (a: Real, b: Real): Real => {
    if (isZero(a)) return b;
    if (isZero(b)) return a;
    const mid = a.mid.plus(b.mid);
    if (isExact(a) && isExact(b)) {
      const places = Math.max(a.mid.e, b.mid.e) + 2 - Math.min(lastPlace(a.mid), lastPlace(b.mid));
      if (places <= digits) return { mid, slack: -Infinity };
    }
    return { mid, slack: logSum(logSum(a.slack, b.slack), rounding(mid)) };
  };

  const neg = (a: Real): Real => (a.mid.isZero() ? a : { mid: a.mid.neg(), slack: a.slack });

  const mul = (a: Real, b: Real): Real => {
    if (isZero(a) || isZero(b)) return zero;
    const mid = a.mid.times(b.mid);
    if (isExact(a) && isExact(b) && a.mid.precision() + b.mid.precision() <= digits) return { mid, slack: -Infinity };
    const crossed = logSum(magnitude(a.mid) + b.slack, magnitude(b.mid) + a.slack);
    return { mid, slack: logSum(logSum(crossed, a.slack + b.slack), rounding(mid)) };
  };

  const div = (a: Real, b: Real): Real => {
    if (isZero(a)) return zero;
    const size = magnitude(b.mid);
    // More than half of the divisor may be error: it may be zero.
    if (!(b.slack < size - TWO - 1e-6)) return { mid: a.mid, slack: UNKNOWN };
    const mid = a.mid.div(b.mid);
    if (isExact(a) && isExact(b) && mid.precision() + b.mid.precision() <= digits && mid.times(b.mid).eq(a.mid)) {
      return { mid, slack: -Infinity };
    }
    const crossed = logSum(magnitude(a.mid) + b.slack, size + a.slack) - 2 * size + TWO;
    return { mid, slack: logSum(crossed, rounding(mid)) };
  };

  const choose = (sign: Real, positive: Real, negative: Real): Real => {
    if (isExact(sign) || sign.slack < magnitude(sign.mid) - 1e-6) return sign.mid.lt(0) ? negative : positive;
    const apart = magnitude(positive.mid.minus(negative.mid)) + 1e-6;
    return { mid: positive.mid, slack: logSum(positive.slack, logSum(negative.slack, apart)) };
  };

  const sqrt = (a: Real): Real => {
    if (isZero(a)) return zero;
    const size = magnitude(a.mid);
    if (a.mid.s < 0 || !(a.slack < size - TWO - 1e-6)) {
      return { mid: zero.mid, slack: logSum(size, a.slack) / 2 };
    }
    const mid = a.mid.sqrt();
    if (isExact(a) && 2 * mid.precision() <= digits && mid.times(mid).eq(a.mid)) return { mid, slack: -Infinity };
    return { mid, slack: logSum(a.slack - size / 2, rounding(mid)) };
  };

  const widen = (a: Real, slack: number): Real => ({ mid: a.mid, slack: logSum(a.slack, slack) });

  /** Sine and cosine of an angle within 45 degrees of zero. */
  const sinCosNearZero = (angle: Real): [sine: Real, cosine: Real] => {
    const spread = angle.slack - DEGREES_DOWN;
    if (angle.mid.isZero()) return [{ mid: angle.mid, slack: spread }, widen(exact(1), spread)];
    if (isExact(angle) && angle.mid.abs().eq(30)) {
      return [{ mid: angle.mid.div(60), slack: -Infinity }, sqrt({ mid: new make("0.75"), slack: -Infinity })];
    }
    const [sine, cosine] = sineCosine(angle.mid.times(knownPi()).div(180), make);
    return [
      { mid: sine, slack: logSum(spread, spoiled(sine)) },
      { mid: cosine, slack: logSum(spread, spoiled(cosine)) },
    ];
  };

  const sinCos = (degrees: Real): readonly [sine: Real, cosine: Real] => {
    const quarters = Math.round(degrees.mid.toNumber() / 90);
    const [sine, cosine] = sinCosNearZero(add(degrees, exact(-90 * quarters)));
    const turned: readonly (readonly [Real, Real])[] = [
      [sine, cosine],
      [cosine, neg(sine)],
      [neg(sine), neg(cosine)],
      [neg(cosine), sine],
    ];
    return turned[((quarters % 4) + 4) % 4] ?? [sine, cosine];
  };

  const atan2 = (y: Real, x: Real): Real => {
    const sizeX = magnitude(x.mid);
    const sizeY = magnitude(y.mid);
    const size = Math.max(sizeX, sizeY);
    if (!(Math.max(x.slack, y.slack) < size - 1)) return { mid: zero.mid, slack: FULL_TURN };
    const spread = logSum(sizeX + y.slack, sizeY + x.slack) - 2 * size + DEGREES_UP + TWO;
    // The vector is turned by quarters until it lies within 45 degrees of the positive x axis.
    const [quarters, across, ahead] = x.mid.abs().gte(y.mid.abs())
      ? x.mid.s > 0
        ? [0, y.mid, x.mid]
        : [y.mid.s < 0 ? -2 : 2, y.mid.neg(), x.mid.neg()]
      : y.mid.s > 0
        ? [1, x.mid.neg(), y.mid]
        : [-1, x.mid, y.mid.neg()];
    const axis = exact(90 * quarters);
    if (across.isZero()) return widen(axis, spread);
    if (across.abs().eq(ahead)) return widen(add(axis, exact(45 * across.s)), spread);
    const mid = inverseTangent(across, ahead, make).times(180).div(knownPi());
    return add(axis, { mid, slack: logSum(spread, spoiled(mid)) });
  };

  return { exact, add, sub: (a, b) => add(a, neg(b)), mul, div, neg, choose, sqrt, sinCos, atan2 };
}
