import { InputError, type Expected, type InputErrorCode, type InputErrorFacts } from "./input-error.js";

/** What an object is: an array, another object, or a proxy that was revoked, which throws at whatever is asked of it. */
export function kindOfObject(value: object): "array" | "object" | "revoked" {
  try {
    return Array.isArray(value) ? "array" : "object";
  } catch {
    return "revoked";
  }
}

/** Whether a value is an object with fields: not null, no array and no revoked proxy. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && kindOfObject(value) === "object";
}

/**
 * Describes a value for an error text: `2.5 (number)`, `"wide" (string)`, `an array of 2`, `undefined`. It never throws.
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

/** Throws the error "Expected `path` to be ..., got ..."; what is allowed completes "to be", as a text or as data. */
export function refuse(
  code: InputErrorCode,
  path: string,
  value: unknown,
  allowed: string | (Expected & { readonly clause: string }),
): never {
  const expected = typeof allowed === "string" ? ({ clause: allowed, kind: "other" } as const) : allowed;
  const message = `Expected \`${path}\` to be ${expected.clause}, got ${describeValue(value)}`;
  reject(value === undefined ? "missing" : code, path, value, { message, expected });
}

/** Throws an error whose sentence is written by the caller, with what was expected as data where there is such. */
export function reject(
  code: InputErrorCode,
  path: string,
  value: unknown,
  told: string | Pick<InputErrorFacts, "message" | "expected">,
): never {
  throw new InputError(Object.assign({ code, path, value }, typeof told === "string" ? { message: told } : told));
}
