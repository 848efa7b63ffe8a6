import { checkFields, checkObject, isRecord } from "./check.js";
import { InputError } from "./input-error.js";

/**
 * Runs independent checks, so that each reports its own refusal.
 *
 * @param checks - the checks
 * @returns what they return
 * @throws {AggregateError} of every `InputError`, where there is one; `attempt` takes it apart
 */
export function together<T>(checks: readonly (() => T)[]): T[] {
  const refusals: InputError[] = [];
  const values = checks.map((check) => {
    try {
      return check();
    } catch (error) {
      if (error instanceof AggregateError) refusals.push(...(error.errors as InputError[]));
      else if (error instanceof InputError) refusals.push(error);
      else throw error;
      return undefined;
    }
  });
  if (refusals.length > 0) throw new AggregateError(refusals);
  return values as T[];
}

/**
 * The same for the keys of an object: each that is not known is refused.
 *
 * @param value - the object; what is none has no keys
 * @param path - its name in error texts; empty for the brief itself
 * @param keys - the keys that are known
 * @returns a check for `together`
 */
export function knownKeys(value: unknown, path: string, keys: readonly string[]): () => void {
  return () => {
    if (isRecord(value)) checkFields(value, path, keys, together);
  };
}

/** A check of a field, which is told the field's value and name. */
export type FieldCheck<T> = (value: unknown, path: string) => T;

/**
 * The same for the fields of an object, which has no others.
 *
 * @param value - the object
 * @param path - its name in error texts
 * @param checks - a check for every field that it may have; one that returns `undefined` leaves its field out
 * @returns the fields
 * @throws {AggregateError} as above
 */
export function fieldsTogether<T extends object>(
  value: unknown,
  path: string,
  checks: { readonly [K in keyof T]-?: FieldCheck<T[K] | undefined> },
): T {
  const object = checkObject(value, path);
  const keys = Object.keys(checks);
  // A misspelled key comes before the one that is missing for it.
  const [, ...values] = together<unknown>([
    knownKeys(object, path, keys),
    ...Object.entries<FieldCheck<unknown>>(checks).map(
      ([key, check]) =>
        () =>
          check(object[key], `${path}.${key}`),
    ),
  ]);
  return Object.fromEntries(keys.map((key, index) => [key, values[index]]).filter(([, v]) => v !== undefined)) as T;
}

/**
 * A check that passes over what is not given.
 *
 * @param check - how it is checked where it is
 * @returns a check for `fieldsTogether`
 */
export function ifGiven<T>(check: FieldCheck<T>): FieldCheck<T | undefined> {
  return (value, path) => (value === undefined ? undefined : check(value, path));
}
