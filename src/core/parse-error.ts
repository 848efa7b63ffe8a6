import { InputError, type InputErrorFacts } from "./input-error.js";

/** Why a text can't be read, as data, so that an app can word it itself. Texts among it are ways to write what may have been meant. */
export type ParseFault =
  | {
      /** What is wrong. */
      readonly code:
        | "no-number"
        | "no-decimals"
        | "no-denominator"
        | "zero-denominator"
        | "no-slash"
        | "broken-fraction"
        | "improper-fraction"
        | "two-numbers"
        | "second-point"
        | "large-exponent"
        | "unclear-hyphen"
        | "late-minus"
        | "early-fraction"
        | "unit-order"
        | "no-unit"
        | "no-unit-between"
        | "unknown-unit"
        | "out-of-range";
    }
  | {
      /** The comma could mark decimals or part thousands. */
      readonly code: "unclear-comma";
      /** As decimals it is written so. */
      readonly decimals: string;
      /** As thousands it is written so. */
      readonly thousands: string;
    }
  | {
      /** The space could part thousands. */
      readonly code: "unclear-space";
      /** Then it is written so. */
      readonly thousands: string;
    }
  | {
      /** A point or comma after a unit could end a part or mark decimals. */
      readonly code: "unclear-joint";
      /** Which of the two. */
      readonly sign: "point" | "comma";
    }
  | {
      /** Beside a larger unit stands so much that it fills one of it. */
      readonly code: "too-many-parts";
      /** How many make one of the larger unit. */
      readonly limit: number;
    }
  | {
      /** A number has too many digits. */
      readonly code: "too-many-digits";
      /** The most that it may have. */
      readonly limit: number;
    };

/** What a {@link ParseError} is made from. */
export interface ParseErrorFacts extends InputErrorFacts {
  /** Index of the first character that does not fit, from 0; the text's length when it ends too early. */
  readonly position: number;
  /** Why, as a clause for a form that shows the text itself: `a denominator is missing`. */
  readonly reason: string;
  /** The same as data. */
  readonly fault: ParseFault;
}

/** An {@link InputError} about text: it also says at which character the text stops making sense, and why. */
export class ParseError extends InputError {
  /** The name that stack traces print, and that {@link isInputError} goes by. */
  override readonly name: string;
  /** Index of the first character that does not fit, from 0; the text's length when it ends too early. */
  readonly position: number;
  /** Why, as a clause for a form that shows the text itself: `a denominator is missing`. */
  readonly reason: string;
  /** The same as data. */
  readonly fault: ParseFault;

  /**
   * Makes an error from its facts.
   *
   * @param facts - code, path, value, message, position, reason and fault
   */
  constructor(facts: ParseErrorFacts) {
    super(facts);
    this.name = "ParseError";
    this.position = facts.position;
    this.reason = facts.reason;
    this.fault = facts.fault;
  }
}
