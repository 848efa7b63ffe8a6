import { InputError } from "../core/input-error.js";

/**
 * Runs checks that do not wait for one another, so that each has its say.
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
 * The same for the fields of an object.
 *
 * @param checks - a check for every field that is given; one that returns `undefined` leaves its field out
 * @returns the fields
 * @throws {AggregateError} as above
 */
export function fieldsTogether<T extends object>(checks: { readonly [K in keyof T]-?: () => T[K] | undefined }): T {
  const entries = Object.entries<() => unknown>(checks);
  const values = together(entries.map(([, check]) => check));
  return Object.fromEntries(
    entries.map(([key], index) => [key, values[index]]).filter(([, v]) => v !== undefined),
  ) as T;
}

/**
 * A check that passes over what is not given.
 *
 * @param value - the value
 * @param check - how it is checked
 * @returns a check for `fieldsTogether`
 */
export function ifGiven<T>(value: unknown, check: (value: unknown) => T): () => T | undefined {
  return () => (value === undefined ? undefined : check(value));
}
