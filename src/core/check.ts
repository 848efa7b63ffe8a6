import { nearestName } from "./nearest-name.js";
import { InputError, type Expected, type ExpectedKind, type InputErrorCode } from "./input-error.js";

/** Smallest length that functions take. Squares and cubes of it stay clear of the subnormal doubles. */
export const MIN_LENGTH: number = 1e-100;
/** Largest length that functions take. Its cube stays finite. */
export const MAX_LENGTH: number = 1e100;
/** Most sides of a frame, and of a panel whose cuts are listed one by one. */
export const MAX_FRAME_SIDES: number = 1000;
/** Most sides that a polygon may have. */
const MAX_SIDES: number = 1e6;

/** What an object is: an array, another object, or a proxy that was revoked, which throws at whatever is asked of it. */
function kindOfObject(value: object): "array" | "object" | "revoked" {
  try {
    return Array.isArray(value) ? "array" : "object";
  } catch {
    return "revoked";
  }
}

/**
 * Whether a value is an object with fields: not null, no array and no revoked proxy.
 *
 * @param value - anything
 * @returns whether its fields can be read
 */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && kindOfObject(value) === "object";
}

/**
 * Describes a value for an error text: `2.5 (number)`, `"wide" (string)`, `an array of 2`, `undefined`. It never throws.
 *
 * @param value - anything
 * @returns a short text, cut after 40 characters
 */
export function describeValue(value: unknown): string {
  if (value === undefined || value === null) return String(value);
  if (typeof value === "function") return "a function";
  if (typeof value === "object") {
    const kind = kindOfObject(value);
    if (kind !== "array") return kind === "object" ? "an object" : "a revoked proxy";
    // How long it is matters where it is too long or too short.
    const { length } = value as readonly unknown[];
    return length === 0 ? "an empty array" : `an array of ${length}`;
  }
  // A text is cut before it is quoted: it may be a megabyte.
  const text =
    typeof value === "string"
      ? JSON.stringify(value.slice(0, 41))
      : (value as number | bigint | boolean | symbol).toString();
  return `${text.length > 40 ? `${text.slice(0, 39)}…` : text} (${typeof value})`;
}

/**
 * Throws the error "Expected `path` to be ..., got ...".
 *
 * @param code - what is wrong, in one word
 * @param path - where
 * @param value - the offending value
 * @param clause - what is allowed, completing "Expected `path` to be"
 * @param expected - the same as data; by default the clause
 */
export function refuse(
  code: InputErrorCode,
  path: string,
  value: unknown,
  clause: string,
  expected: ExpectedKind = { kind: "other" },
): never {
  const message = `Expected \`${path}\` to be ${clause}, got ${describeValue(value)}`;
  reject(value === undefined ? "missing" : code, path, value, message, Object.assign({ clause }, expected));
}

/**
 * Throws an error whose sentence is written by the caller.
 *
 * @param code - what is wrong, in one word
 * @param path - where
 * @param value - the offending value
 * @param message - the whole sentence
 * @param expected - what would have been taken, as data; by default nothing but the sentence
 */
export function reject(
  code: InputErrorCode,
  path: string,
  value: unknown,
  message: string,
  expected?: Expected,
): never {
  throw new InputError({ code, path, value, message, expected });
}

/**
 * A finite number from `min` to `max`, both included. Turns -0 into 0.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @param min - smallest allowed value
 * @param max - largest allowed value
 * @param what - what to call it in the error text; by default `a number from min to max`
 * @returns the number
 */
export function checkNumber(value: unknown, path: string, min: number, max: number, what?: string): number {
  // The text is only made where it is needed: it would cost more than the check.
  if (typeof value === "number" && value >= min && value <= max) return value + 0;
  const clause = what ?? `a number from ${min} to ${max}`;
  return refuse(typeof value === "number" ? "range" : "type", path, value, clause, { kind: "number", min, max });
}

/**
 * A number strictly between `min` and `max`.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @param min - bound, not allowed itself
 * @param max - bound, not allowed itself
 * @returns the number
 */
export function checkInside(value: unknown, path: string, min: number, max: number): number {
  if (typeof value === "number" && value > min && value < max) return value + 0;
  const clause = `a number between ${min} and ${max}, bounds excluded`;
  return refuse(typeof value === "number" ? "range" : "type", path, value, clause, { kind: "between", min, max });
}

/**
 * A positive length, from 1e-100 to 1e100.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the length
 */
export function checkLength(value: unknown, path: string): number {
  return checkNumber(value, path, MIN_LENGTH, MAX_LENGTH, "a positive length (1e-100 to 1e100)");
}

/**
 * A length that may be zero, up to 1e100.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the length
 */
export function checkLengthOrZero(value: unknown, path: string): number {
  return checkNumber(value, path, 0, MAX_LENGTH, "zero or a positive length (up to 1e100)");
}

/**
 * A coordinate or signed distance, of magnitude up to 1e100.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the number
 */
export function checkDistance(value: unknown, path: string): number {
  return checkNumber(value, path, -MAX_LENGTH, MAX_LENGTH, "a finite distance (-1e100 to 1e100)");
}

/**
 * An integer from `min` to `max`, both included.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @param min - smallest allowed value
 * @param max - largest allowed value
 * @returns the integer
 */
export function checkInteger(value: unknown, path: string, min: number, max: number): number {
  if (Number.isInteger(value) && (value as number) >= min && (value as number) <= max) return (value as number) + 0;
  const clause = `an integer from ${min} to ${max}`;
  const code = typeof value !== "number" ? "type" : value >= min && value <= max ? "integer" : "range";
  return refuse(code, path, value, clause, { kind: "integer", min, max });
}

/**
 * A number of sides: an integer from 3 to 1e6.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the number of sides
 */
export function checkSides(value: unknown, path = "sides"): number {
  return checkInteger(value, path, 3, MAX_SIDES);
}

/**
 * A slope: degrees from -90 to 90.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the slope in degrees
 */
export function checkSlope(value: unknown, path = "slope"): number {
  return checkNumber(value, path, -90, 90, "degrees from -90 to 90");
}

/**
 * One of a list of words.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @param words - the words allowed
 * @returns the word
 */
export function checkWord<W extends string>(value: unknown, path: string, words: readonly W[]): W {
  if (words.includes(value as W)) return value as W;
  const clause = `one of ${words.map((word) => `"${word}"`).join(", ")}`;
  return refuse(typeof value === "string" ? "unknown" : "type", path, value, clause, {
    kind: "one-of",
    words: [...words],
  });
}

/**
 * An object whose fields can be read (not null, not an array).
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the object, its fields still unchecked
 */
export function checkObject(value: unknown, path = "options"): Readonly<Record<string, unknown>> {
  return isRecord(value) ? value : refuse("type", path, value, "an object", { kind: "object" });
}

/** Names as they stand in error texts. */
function quoted(names: readonly string[]): string[] {
  return names.map((name) => `\`${name}\``);
}

/** Runs independent checks: until the first refusal, or all of them, so that each reports its own. */
export type RunChecks = <T>(checks: readonly (() => T)[]) => T[];

/**
 * Stops at the first refusal.
 *
 * @param checks - the checks
 * @returns what they return
 */
export const inOrder: RunChecks = (checks) => checks.map((check) => check());

/**
 * An object that has no other keys than those known: a misspelled one would silently change the answer.
 *
 * @param value - the value to check
 * @param path - its name in error texts; empty for a function's options
 * @param keys - the keys that are known
 * @param run - how the keys are looked at; default until the first refusal
 * @returns the object, its fields still unchecked
 */
export function checkFields(
  value: unknown,
  path: string,
  keys: readonly string[],
  run: RunChecks = inOrder,
): Readonly<Record<string, unknown>> {
  const object = checkObject(value, path === "" ? undefined : path);
  const others = Object.keys(object).filter((key) => !keys.includes(key));
  run(
    others.map((key) => () => {
      const nearest = nearestName(key, keys);
      const meant = nearest === undefined ? "" : `; did you mean \`${nearest}\`?`;
      const known = `no key but ${quoted(keys).join(", ")}`;
      const message = `Expected ${path && `\`${path}\` to have `}${known}, got \`${key}\`${meant}`;
      const expected = { clause: known, kind: "no-other-key", keys: [...keys], nearest: nearest ?? null } as const;
      reject("unknown", (path && `${path}.`) + key, object[key], message, expected);
    }),
  );
  return object;
}

/**
 * An array without holes. Loops like `map` and `every` pass over a hole in silence, so that it would never be checked.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @param what - what to call it in the error text, e.g. `an array of pieces`
 * @returns the array, its items still unchecked
 */
export function checkArray(value: unknown, path: string, what = "an array"): readonly unknown[] {
  if (typeof value !== "object" || value === null || kindOfObject(value) !== "array") {
    return refuse("type", path, value, what, { kind: "array" });
  }
  const array = value as readonly unknown[];
  for (let index = 0; index < array.length; index++) {
    if (!(index in array)) {
      const hole = `${path}[${index}]`;
      reject("missing", hole, undefined, `Expected \`${hole}\` to be given, got a hole in ${describeValue(array)}`);
    }
  }
  return array;
}

/**
 * A string that is not empty.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the string
 */
export function checkText(value: unknown, path: string): string {
  if (typeof value === "string" && value !== "") return value;
  return refuse(value === "" ? "range" : "type", path, value, "a string that is not empty", { kind: "text" });
}

/**
 * Which one of several alternative fields an object has.
 *
 * @param object - the object
 * @param path - its name in error texts; empty for a function's options
 * @param keys - the alternatives
 * @returns the one key whose value is not `undefined`; its value is still unchecked
 */
export function checkOneOf<K extends string>(
  object: Readonly<Record<string, unknown>>,
  path: string,
  keys: readonly K[],
): K {
  const given = keys.filter((key) => object[key] !== undefined);
  const [first, second] = given;
  if (first !== undefined && second === undefined) return first;
  const got = first === undefined ? "none" : quoted(given).join(" and ");
  const clause = `exactly one of ${quoted(keys).join(", ")}`;
  const message = `Expected ${clause}${path && ` in \`${path}\``}, got ${got}`;
  const expected = { clause, kind: "exactly-one", keys: [...keys] } as const;
  if (second === undefined) return reject("missing", path, object, message, expected);
  return reject("conflict", (path && `${path}.`) + second, object[second], message, expected);
}
