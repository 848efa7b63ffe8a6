/** What is wrong with an input, in one word. */
export type InputErrorCode =
  /** The value is of another type than the function takes. */
  | "type"
  /** The value lies outside the range the function takes. */
  | "range"
  /** A whole number was expected. */
  | "integer"
  /** A value that is needed was not given. */
  | "missing"
  /** Two values were given of which only one may be. */
  | "conflict"
  /** A word, name or key that is not one of those allowed. */
  | "unknown"
  /** Each value is sound, but together they describe a thing that cannot be. */
  | "impossible"
  /** Text that does not follow the rules of its notation. */
  | "syntax";

/**
 * What would have been taken, as data, so that an app can word the error itself.
 *
 * A `number` or an `integer` lies from `min` to `max`, both included; `between` is a number strictly between them. Lengths go to 1e100. `one-of` is a word of a
 * list. `no-other-key` is about a key that is not known: the keys that are, and the nearest of them. `exactly-one` is about keys of which one has to be given.
 * Whatever is none of these is `other`.
 */
export type Expected = {
  /** What is allowed, in English, as the message says it after "Expected" or "to be". `null` where the message is of another form. */
  readonly clause: string | null;
} & ExpectedKind;

/** What {@link Expected} tells of each kind. */
export type ExpectedKind =
  | {
      /** A number or an integer, bounds included; or a number strictly between them. */
      readonly kind: "number" | "integer" | "between";
      /** The lower bound. */
      readonly min: number;
      /** The upper bound. */
      readonly max: number;
    }
  | {
      /** A word of a list. */
      readonly kind: "one-of";
      /** The list. */
      readonly words: readonly string[];
    }
  | {
      /** No key but those that are known. */
      readonly kind: "no-other-key";
      /** The keys that are known. */
      readonly keys: readonly string[];
      /** The one of them that is nearest to what was given; `null` where none is near. */
      readonly nearest: string | null;
    }
  | {
      /** One of several keys, and no second. */
      readonly kind: "exactly-one";
      /** The keys. */
      readonly keys: readonly string[];
    }
  | {
      /** An object, an array, a text that is not empty, or something that only the clause tells. */
      readonly kind: "object" | "array" | "text" | "other";
    };

/** What an {@link InputError} is made from. */
export interface InputErrorFacts {
  /** What is wrong, in one word. */
  readonly code: InputErrorCode;
  /** Where it is wrong, e.g. `pieces[2].length`. */
  readonly path: string;
  /** The offending value, as it was given. */
  readonly value: unknown;
  /** The sentence that says what is allowed. */
  readonly message: string;
  /** What would have been taken, as data; default `other`, without a clause. */
  readonly expected?: Expected | undefined;
}

/**
 * The one error that public functions throw for input they cannot take.
 *
 * It extends `RangeError`. Test for it with {@link isInputError}, which also holds when two copies of the library are loaded.
 *
 * @example
 * ```ts
 * import { isInputError, regularPolygon } from "miterwright";
 *
 * try {
 *   regularPolygon({ sides: 2.5, side: 10 });
 * } catch (error) {
 *   if (!isInputError(error)) throw error;
 *   error.path; //=> "sides"
 *   error.message; //=> "Expected `sides` to be an integer from 3 to 1000000, got 2.5 (number)"
 *   error.expected.kind === "integer" && error.expected.min; //=> 3
 * }
 * ```
 */
export class InputError extends RangeError {
  /** The name that stack traces print, and that {@link isInputError} goes by. */
  override readonly name: string;
  /** What is wrong, in one word. */
  readonly code: InputErrorCode;
  /** Where it is wrong, e.g. `pieces[2].length`. */
  readonly path: string;
  /** The offending value, as it was given. */
  readonly value: unknown;
  /** What would have been taken. */
  readonly expected: Expected;

  /**
   * Makes an error from its facts.
   *
   * @param facts - code, path, value, message and what was expected
   */
  constructor(facts: InputErrorFacts) {
    super(facts.message);
    // Not where the field is declared: the CommonJS build would then name the class `_class`.
    this.name = "InputError";
    this.code = facts.code;
    this.path = facts.path;
    this.value = facts.value;
    this.expected = facts.expected ?? { clause: null, kind: "other" };
  }
}
