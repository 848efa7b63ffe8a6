import { largestOf } from "../sums.js";

/**
 * A grid of lengths or costs: grid number k stands for k * times / per.
 *
 * It is kept as a fraction so that a decimal grid gives back decimal values: 4333 * 1 / 10 is 433.3 to the last bit.
 */
export interface Grid {
  /** Numerator of the step. */
  readonly times: number;
  /** Denominator of the step. */
  readonly per: number;
  /** Whether all values that it was made from lie on it. */
  readonly exact: boolean;
}

/** Largest grid number of one value: sums of some thousand stay exact. */
export const MAX_GRID_NUMBER: number = 2 ** 40;
/** Sixteen units in the last place: what a few sums and products of decimals may be off their grid. */
const NOISE: number = 2 ** -48;

/**
 * Grid number of a value of 0 or more. From between two it goes the given way; within rounding noise of one it is on it.
 */
export function toGrid(value: number, grid: Grid, way: "up" | "down" | "nearest"): number {
  const exact = (value / grid.times) * grid.per;
  const nearest = Math.round(exact);
  if (way === "nearest" || Math.abs(exact - nearest) <= NOISE * nearest) return nearest;
  return way === "up" ? Math.ceil(exact) : Math.floor(exact);
}

/** Value of a grid number. */
export function fromGrid(count: number, grid: Grid): number {
  return (count * grid.times) / grid.per;
}

/** Greatest common divisor of two integers of any size that a double holds; 0 counts as a multiple of everything. */
export function gcd(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}

/** The grid numbers' common divisor if all values lie on multiples of times / per, else 0. */
function divisorOn(values: readonly number[], times: number, per: number): number {
  let divisor = 0;
  for (const value of values) {
    const exact = (value / times) * per;
    const nearest = Math.round(exact);
    if (!(nearest <= MAX_GRID_NUMBER) || nearest === 0 || Math.abs(exact - nearest) > NOISE * nearest) return 0;
    divisor = gcd(divisor, nearest);
  }
  return divisor;
}

/** Smallest denominator, up to `most`, of a fraction that equals the ratio within rounding noise; else 0. */
function denominator(ratio: number, most: number): number {
  let [previous, current] = [0, 1];
  let rest = ratio;
  for (;;) {
    const near = Math.round(ratio * current);
    if (near > 0 && Math.abs(ratio * current - near) <= NOISE * near) return current;
    rest -= Math.floor(rest);
    if (!(rest > 0)) return 0;
    rest = 1 / rest;
    [previous, current] = [current, Math.floor(rest) * current + previous];
    if (!(current <= most)) return 0;
  }
}

/**
 * The coarsest grid that holds all the values, if there is one of a reasonable size.
 *
 * Tried in turn: decimals of up to six places, halves of halves down to 1/4096, and fractions of the largest value (a job
 * that was scaled by any factor).
 */
export function commonGrid(values: readonly number[]): Grid | undefined {
  const distinct = [...new Set(values)].filter((value) => value > 0);
  const largest = largestOf(distinct, 0);
  if (largest === 0) return { times: 1, per: 1, exact: true };
  for (const per of [1, 10, 100, 1000, 1e4, 1e5, 1e6, 4096]) {
    const divisor = divisorOn(distinct, 1, per);
    if (divisor > 0) {
      const common = gcd(divisor, per);
      return { times: divisor / common, per: per / common, exact: true };
    }
  }
  const MOST_PARTS = 1e8;
  let parts = 1;
  for (const value of distinct) {
    const own = denominator(value / largest, 1e7);
    if (own === 0) return undefined;
    parts *= own / gcd(own, parts);
    if (parts > MOST_PARTS) return undefined;
  }
  const divisor = divisorOn(distinct, largest, parts);
  return divisor > 0 ? { times: largest * divisor, per: parts, exact: true } : undefined;
}

/**
 * A decimal grid for lengths that have none in common.
 *
 * A hundred-thousandth of the longest, or a thousandth of the shortest where that is finer, rounded down to a power of ten:
 * a hundredth of a millimeter for sticks of some meters. Finer grids would make the knapsacks much harder for nothing.
 */
export function fineGrid(longest: number, shortest: number): Grid {
  // Rounding down makes it finer by less than ten times.
  const step = Math.max((10 * longest) / MAX_GRID_NUMBER, Math.min(longest / 1e5, shortest / 1e3));
  // Powers of ten are read from their decimal text: Math.pow is not the same on every engine.
  const exponent = Number(step.toExponential().split("e")[1]);
  const power = Number(`1e${Math.abs(exponent)}`);
  return exponent < 0 ? { times: 1, per: power, exact: false } : { times: power, per: 1, exact: false };
}
