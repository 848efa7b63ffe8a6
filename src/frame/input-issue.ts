import type { Expected, InputError, InputErrorCode } from "../core/input-error.js";
import { together } from "./together.js";

/** One thing that is wrong with a brief, for the form field it belongs to. */
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

/**
 * Runs a check and keeps what it has to say.
 *
 * @param issues - where the issues go
 * @param check - the check
 * @returns the checked value, or `undefined` when it was refused
 */
export function attempt<T>(issues: InputIssue[], check: () => T): T | undefined {
  try {
    return together([check])[0];
  } catch (error) {
    if (!(error instanceof AggregateError)) throw error;
    for (const { code, path, value, message, expected } of error.errors as InputError[])
      issues.push({ code, path, value, message, expected });
    return undefined;
  }
}
