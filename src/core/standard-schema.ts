import type { InputOutcome } from "./input-issue.js";

/** One issue, as the Standard Schema interface has it. */
export interface StandardIssue {
  /** The sentence that says what is allowed. */
  readonly message: string;
  /** The keys that lead to the value; empty for the whole input. */
  readonly path: readonly (string | number)[];
}

/** What a schema made of an input, as the Standard Schema interface has it. */
export type StandardResult<T> =
  | {
      /** What was read. */
      readonly value: T;
      /** None. */
      readonly issues?: undefined;
    }
  | {
      /** Every issue, at least one. */
      readonly issues: readonly StandardIssue[];
    };

/**
 * A schema that follows the open Standard Schema interface, version 1, so that forms, servers and validators that know the interface take it as it is.
 *
 * @see Standard Schema, https://standardschema.dev, version 1
 */
export interface StandardSchema<T> {
  /** The interface's one property. */
  readonly "~standard": {
    /** Version of the interface. */
    readonly version: 1;
    /** Who made the schema. */
    readonly vendor: "miterwright";
    /** Reads an input. */
    readonly validate: (value: unknown) => StandardResult<T>;
    /** For type inference alone; never there. */
    readonly types?:
      | {
          /** What goes in: anything. */
          readonly input: unknown;
          /** What comes out. */
          readonly output: T;
        }
      | undefined;
  };
}

/** `contents[2].material.density` as the keys `contents`, 2, `material` and `density`. */
function keysOf(path: string): (string | number)[] {
  return [...path.matchAll(/\[(\d+)\]|[^.[\]]+/g)].map(([key, index]) => (index === undefined ? key : Number(index)));
}

/**
 * Reads an input as a schema does. `root` is what the function calls the input itself in its paths, empty where it calls it nothing.
 */
export function validateWith<T>(
  tryParse: (value: unknown) => InputOutcome<T>,
  root: string,
  value: unknown,
): StandardResult<T> {
  const outcome = tryParse(value);
  if (outcome.ok) return { value: outcome.value };
  const issues = outcome.issues.map(({ message, path }) => {
    const keys = keysOf(path);
    return { message, path: root !== "" && keys[0] === root ? keys.slice(1) : keys };
  });
  return { issues };
}
