import { InputError } from "./input-error.js";

/**
 * Runs independent checks, so that each reports its own refusal. Throws an `AggregateError` of every `InputError`, which `attempt` takes apart.
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
