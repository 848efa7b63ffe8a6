import { refuse } from "./refuse.js";

/** Smallest length that functions take. Squares and cubes of it stay clear of the subnormal doubles. */
export const MIN_LENGTH: number = 1e-100;
/** Largest length that functions take. Its cube stays finite. */
export const MAX_LENGTH: number = 1e100;
/** Most sides of a frame, and of a panel whose cuts are listed one by one. */
export const MAX_FRAME_SIDES: number = 1000;
/** Most sides that a polygon may have. */
const MAX_SIDES: number = 1e6;

/** What values a number may take, the bounds included. */
export interface NumberRange {
  /** Smallest allowed value. */
  readonly min: number;
  /** Largest allowed value. */
  readonly max: number;
  /** What error texts call it, completing "Expected `path` to be"; default by its bounds. */
  readonly what?: string;
  /** What they call it before its bounds; default "a number". */
  readonly noun?: string;
}

/** A range as the field of an object. */
type RangeField = NumberRange & { readonly kind: "number" };

/** A positive length. */
export const LENGTH: RangeField = {
  kind: "number",
  min: MIN_LENGTH,
  max: MAX_LENGTH,
  what: "a positive length (1e-100 to 1e100)",
};
/** A length that may be zero. */
export const LENGTH_OR_ZERO: RangeField = {
  kind: "number",
  min: 0,
  max: MAX_LENGTH,
  what: "zero or a positive length (up to 1e100)",
};
/** An area, from the square of a small length to that of a large one. */
const AREA: NumberRange = { min: 1e-200, max: 1e200, what: "a positive area (1e-200 to 1e200)" };

/** A finite number of a range. Turns -0 into 0. */
export function checkRange(value: unknown, path: string, { min, max, what, noun = "a number" }: NumberRange): number {
  if (typeof value === "number" && value >= min && value <= max) return value + 0;
  // The text is only made where it is needed: it would cost more than the check.
  const clause = what ?? `${noun} from ${min} to ${max}`;
  return refuse(typeof value === "number" ? "range" : "type", path, value, { clause, kind: "number", min, max });
}

/** A finite number from `min` to `max`, both included. Turns -0 into 0. */
export function checkNumber(value: unknown, path: string, min: number, max: number): number {
  return checkRange(value, path, { min, max });
}

/** Degrees from `min` to `max`, both included. */
export function checkDegrees(value: unknown, path: string, min: number, max: number): number {
  return checkRange(value, path, { min, max, noun: "degrees" });
}

/** A number strictly between `min` and `max`. */
export function checkInside(value: unknown, path: string, min: number, max: number): number {
  if (typeof value === "number" && value > min && value < max) return value + 0;
  const clause = `a number between ${min} and ${max}, bounds excluded`;
  return refuse(typeof value === "number" ? "range" : "type", path, value, { clause, kind: "between", min, max });
}

/** A positive length, from 1e-100 to 1e100. */
export function checkLength(value: unknown, path: string): number {
  return checkRange(value, path, LENGTH);
}

/** A length that may be zero, up to 1e100. */
export function checkLengthOrZero(value: unknown, path: string): number {
  return checkRange(value, path, LENGTH_OR_ZERO);
}

/** A coordinate or signed distance, of magnitude up to 1e100. */
export function checkDistance(value: unknown, path: string): number {
  // The range is made where it is needed: a bundler keeps a constant with a minus before a name.
  if (typeof value === "number" && Math.abs(value) <= MAX_LENGTH) return value + 0;
  return checkRange(value, path, { min: -MAX_LENGTH, max: MAX_LENGTH, what: "a finite distance (-1e100 to 1e100)" });
}

/** A positive area, from 1e-200 to 1e200. */
export function checkArea(value: unknown, path: string): number {
  return checkRange(value, path, AREA);
}

/** A finite number. */
export function checkFinite(value: unknown, path: string): number {
  if (Number.isFinite(value)) return (value as number) + 0;
  return checkRange(value, path, { min: -Number.MAX_VALUE, max: Number.MAX_VALUE, what: "a finite number" });
}

/** An integer from `min` to `max`, both included. */
export function checkInteger(value: unknown, path: string, min: number, max: number): number {
  if (Number.isInteger(value) && (value as number) >= min && (value as number) <= max) return (value as number) + 0;
  const clause = `an integer from ${min} to ${max}`;
  const code = typeof value !== "number" ? "type" : value >= min && value <= max ? "integer" : "range";
  return refuse(code, path, value, { clause, kind: "integer", min, max });
}

/** A number of sides: an integer from 3 to 1e6. */
export function checkSides(value: unknown, path = "sides"): number {
  return checkInteger(value, path, 3, MAX_SIDES);
}

/** A slope: degrees from -90 to 90. */
export function checkSlope(value: unknown, path = "slope"): number {
  return checkDegrees(value, path, -90, 90);
}
