import { InputError, type Expected, type InputErrorCode } from "./input-error.js";

/** One thing that is wrong with an input, for the form field it belongs to. */
export interface InputIssue {
  /** What is wrong, in one word. */
  readonly code: InputErrorCode;
  /** The field, e.g. `opening.contains.width`. */
  readonly path: string;
  /** The offending value, as it was given. */
  readonly value: unknown;
  /** The sentence that says what is allowed. */
  readonly message: string;
  /** What would have been taken, as data. */
  readonly expected: Expected;
}

/** What was read, or everything that is wrong with it. */
export type InputOutcome<T> =
  | {
      /** It was read. */
      readonly ok: true;
      /** What it says. */
      readonly value: T;
    }
  | {
      /** It was refused. */
      readonly ok: false;
      /** Every issue, at least one. */
      readonly issues: readonly InputIssue[];
    };

/** The refusals of an error that `together` threw, or the one that it is; any other error passes through. */
function refusalsOf(error: unknown): readonly InputError[] {
  if (error instanceof AggregateError) return error.errors as InputError[];
  if (error instanceof InputError) return [error];
  throw error;
}

/** Runs a check and keeps what it has to say. What was refused is `undefined`. */
export function attempt<T>(issues: InputIssue[], check: () => T): T | undefined {
  try {
    return check();
  } catch (error) {
    for (const { code, path, value, message, expected } of refusalsOf(error))
      issues.push({ code, path, value, message, expected });
    return undefined;
  }
}

/** Reads, and gives what was read or every refusal. */
export function outcomeOf<T>(read: () => T): InputOutcome<T> {
  const issues: InputIssue[] = [];
  const value = attempt(issues, () => ({ read: read() }));
  return value === undefined ? { ok: false, issues } : { ok: true, value: value.read };
}
