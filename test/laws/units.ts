import { Decimal } from "decimal.js";
import fc from "fast-check";
import type { FormatAngleOptions, FormatLengthOptions, LengthUnit, Rounding } from "miterwright/units";

/**
 * What holds of every length and angle, and what to try it on. The checkers work in decimal arithmetic, with nothing of the
 * library's own.
 */

/** Enough digits for any double, which has up to 767, and for any quotient to tell on which side of a tie it lies. */
const Exact = Decimal.clone({ precision: 1300 });

/** All units. */
export const UNITS: readonly LengthUnit[] = ["mm", "cm", "m", "in", "ft"];

/** A unit in millimeters, from the inch of 1959. */
export const MILLIMETERS: Readonly<Record<LengthUnit, string>> = {
  mm: "1",
  cm: "10",
  m: "1000",
  in: "25.4",
  ft: "304.8",
};

/**
 * A double as the ratio of integers that it is.
 *
 * @param x - any finite number
 * @returns numerator and denominator
 */
export function ratioOf(x: number): [top: bigint, bottom: bigint] {
  let scaled = x;
  let bottom = 1n;
  for (; !Number.isInteger(scaled); bottom *= 2n) scaled *= 2;
  return [BigInt(scaled), bottom];
}

/**
 * A double as the decimal that it is. (`new Decimal(x)` would take its shortest text, which is another number.)
 *
 * @param x - any finite number
 * @returns its value, exactly
 */
export function exactly(x: number): Decimal {
  const [top, bottom] = ratioOf(x);
  return new Exact(top.toString()).div(bottom.toString());
}

/**
 * A quotient of decimals.
 *
 * @param top - dividend, as text if it is no small integer
 * @param bottom - divisor, likewise
 * @returns the quotient to 1300 digits
 */
export function quotient(top: Decimal | string | number, bottom: Decimal | string | number): Decimal {
  return new Exact(top).div(bottom);
}

/** The doubles next to a finite one. */
function neighbors(x: number): [below: number, above: number] {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(x));
  const bits = view.getBigUint64(0);
  const at = (changed: bigint): number => {
    view.setBigUint64(0, changed);
    return view.getFloat64(0);
  };
  if (x === 0) return [-at(1n), at(1n)];
  const [inner, outer] = [at(bits - 1n), at(bits + 1n)];
  return x > 0 ? [inner, outer] : [-outer, -inner];
}

/** Whether the last bit of a double is 0. */
function isEven(x: number): boolean {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, x);
  return view.getBigUint64(0) % 2n === 0n;
}

/**
 * Whether no double is nearer to an exact value, and on a tie the even one was taken.
 *
 * @param x - the double
 * @param exact - the value
 * @returns true if it is correctly rounded and not -0
 */
export function isNearest(x: number, exact: Decimal): boolean {
  if (!Number.isFinite(x) || Object.is(x, -0)) return false;
  const distance = exactly(x).minus(exact).abs();
  return neighbors(x).every((neighbor) => {
    const other = exactly(neighbor).minus(exact).abs();
    return distance.lt(other) || (distance.eq(other) && isEven(x));
  });
}

/**
 * An exact value rounded to an integer.
 *
 * @param exact - the value
 * @param rounding - which way
 * @returns the integer
 */
export function roundExactly(exact: Decimal, rounding: Rounding): Decimal {
  const modes = { nearest: Decimal.ROUND_HALF_UP, up: Decimal.ROUND_CEIL, down: Decimal.ROUND_FLOOR } as const;
  return exact.toDecimalPlaces(0, modes[rounding]);
}

/** Lengths and distances of both signs, from the smallest to the largest that functions take. */
export const anyDistance: fc.Arbitrary<number> = fc.oneof(
  fc.double({ min: -5000, max: 5000, noNaN: true }),
  fc.double({ min: -1e100, max: 1e100, noNaN: true }),
  fc.integer({ min: -100_000, max: 100_000 }).map((count) => count / 64),
  // Subnormal numbers, and the first that are not.
  fc.maxSafeInteger().map((count) => count * 5e-324),
  fc.constantFrom(0, -0, 5e-324, -5e-324, 1e-310, 2 ** 52, 2 ** 53, 2 ** 53 + 2, 0.5, -0.5, 1e100, -1e100, 1e21, 1e22),
);

/** Units. */
export const anyUnit: fc.Arbitrary<LengthUnit> = fc.constantFrom(...UNITS);

/** Ways of rounding. */
export const anyRounding: fc.Arbitrary<Rounding> = fc.constantFrom("nearest", "up", "down");

/** Denominators: those of tapes, sometimes any. */
export const anyDenominator: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(1, 2, 4, 8, 16, 32, 64),
  fc.constantFrom(3, 5, 6, 10, 12, 100, 1000),
  fc.integer({ min: 1, max: 1_000_000 }),
);

/** Options of `formatLength` that do not contradict each other, the unit to write in always named. */
export const anyLengthFormat: fc.Arbitrary<FormatLengthOptions & { readonly as: LengthUnit }> = fc
  .record({
    style: fc.constantFrom("decimal" as const, "fraction" as const, "feet-inches" as const),
    as: anyUnit,
    digits: fc.oneof(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 20 })),
    trailingZeros: fc.boolean(),
    denominator: anyDenominator,
    reduce: fc.boolean(),
    rounding: anyRounding,
    label: fc.constantFrom("sign" as const, "letters" as const, "none" as const),
  })
  .map((options) =>
    options.style === "feet-inches"
      ? { ...options, as: "ft", label: options.label === "none" ? "sign" : options.label }
      : options,
  );

/**
 * How many steps of those that a length is rounded to make one unit.
 *
 * @param options - how it is written
 * @returns the number of steps in one `options.as`
 */
export function stepsPerUnit(options: FormatLengthOptions): number {
  if (options.style === "decimal") return 10 ** options.digits!;
  return options.style === "fraction" ? options.denominator! : 12 * options.denominator!;
}

/** Options of `formatAngle` that do not contradict each other. */
export const anyAngleFormat: fc.Arbitrary<FormatAngleOptions> = fc
  .record({
    style: fc.constantFrom("decimal" as const, "dms" as const),
    digits: fc.oneof(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 20 })),
    trailingZeros: fc.boolean(),
    rounding: anyRounding,
    label: fc.constantFrom("sign" as const, "letters" as const, "none" as const),
  })
  .map((options) => (options.style === "dms" && options.label === "none" ? { ...options, label: "sign" } : options));

/**
 * How many steps of those that an angle is rounded to make a degree.
 *
 * @param options - how it is written
 * @returns the number of steps
 */
export function stepsPerDegree(options: FormatAngleOptions): number {
  return (options.style === "dms" ? 3600 : 1) * 10 ** options.digits!;
}
