import { D, lastPlace } from "../exact.js";
import { exactText } from "../../src/precise/exact-text.js";
import type { Real, RealField } from "../../src/precise/real-field.js";

/** One result of the library beside the true value. */
export interface Comparison {
  /** What is compared, as the table names it. */
  readonly quantity: string;
  /** The library's result. */
  readonly got: number;
  /** The true value. */
  readonly want: Real;
  /** Whether the library must have it to the bit. */
  readonly exact?: boolean;
  /** Whether it is an angle in degrees, which may be 1e-14 off however small it is. */
  readonly angle?: boolean;
  /** Of a signed sum: the sum of its terms' magnitudes. Of an angle that hangs on such sums: how far they count in it, in degrees. */
  readonly terms?: number | undefined;
}

/** Inputs, and how the library fares on them. */
export interface Case {
  /** The inputs, to be printed. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Compares all results, the true ones computed in a field. */
  readonly compare: (field: RealField) => readonly Comparison[];
}

/** Most units that a result may be off. */
export const LIMIT = 6;

/**
 * Most units that a comparison may be off.
 *
 * @param comparison - the comparison
 * @returns the limit, inclusive
 */
export function limitOf({ exact }: Comparison): number {
  return exact === true ? 0 : LIMIT;
}

/** What an angle may be off in any case, in degrees. */
const ANGLE_FLOOR = 1e-14;

/** The unit that an error is measured in. */
function unitOf({ want, angle, terms }: Comparison): number {
  const own = lastPlace(want.mid);
  const sum = terms === undefined ? own : Math.max(own, lastPlace(new D(terms)));
  return angle === true ? Math.max(sum, ANGLE_FLOOR / LIMIT) : sum;
}

/**
 * How far a result is off, in units.
 *
 * @param comparison - the result and the true value
 * @returns the error; `undefined` when the true value is not known to a millionth of the unit
 */
export function errorOf(comparison: Comparison): number | undefined {
  const { got, want } = comparison;
  if (comparison.exact === true) return got === want.mid.toNumber() ? 0 : Infinity;
  if (want.slack === -Infinity && want.mid.isZero()) return got === 0 ? 0 : Infinity;
  const unit = unitOf(comparison);
  if (!(want.slack < Math.log10(unit) - 6)) return undefined;
  if (!Number.isFinite(got)) return Infinity;
  return Math.abs(want.mid.minus(exactText(got)).toNumber()) / unit;
}
