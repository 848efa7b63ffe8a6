import { InputError, type InputErrorFacts } from "./input-error.js";

/** What a {@link ParseError} is made from. */
export interface ParseErrorFacts extends InputErrorFacts {
  /** Index of the first character that does not fit, from 0; the text's length when it ends too early. */
  readonly position: number;
  /** Why, as a clause for a form that shows the text itself: `a denominator is missing`. */
  readonly reason: string;
}

/** An {@link InputError} about text: it also says at which character the text stops making sense, and why. */
export class ParseError extends InputError {
  /** The name that stack traces print, and that {@link isInputError} goes by. */
  override readonly name: string;
  /** Index of the first character that does not fit, from 0; the text's length when it ends too early. */
  readonly position: number;
  /** Why, as a clause for a form that shows the text itself: `a denominator is missing`. */
  readonly reason: string;

  /**
   * Makes an error from its facts.
   *
   * @param facts - code, path, value, message, position and reason
   */
  constructor(facts: ParseErrorFacts) {
    super(facts);
    this.name = "ParseError";
    this.position = facts.position;
    this.reason = facts.reason;
  }
}
