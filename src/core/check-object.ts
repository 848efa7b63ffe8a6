import { nearestName } from "./nearest-name.js";
import { describeValue, isRecord, kindOfObject, refuse, reject } from "./refuse.js";

/** An object whose fields can be read (not null, not an array). Its fields are still unchecked. */
export function checkObject(value: unknown, path = "options"): Readonly<Record<string, unknown>> {
  return isRecord(value) ? value : refuse("type", path, value, { clause: "an object", kind: "object" });
}

/** Runs independent checks: until the first refusal, or all of them, so that each reports its own. */
export type RunChecks = <T>(checks: readonly (() => T)[]) => T[];

/** Stops at the first refusal. */
export const inOrder: RunChecks = (checks) => checks.map((check) => check());

/** Names as they stand in error texts. */
function quoted(names: readonly string[]): string[] {
  return names.map((name) => `\`${name}\``);
}

/**
 * An object that has no other keys than those known: a misspelled one would silently change the answer. The path is empty for a function's own options. Only
 * the keys are checked, until the first refusal or as `run` has it.
 */
export function checkFields(
  value: unknown,
  path: string,
  keys: readonly string[],
  run: RunChecks = inOrder,
): Readonly<Record<string, unknown>> {
  const object = checkObject(value, path === "" ? undefined : path);
  const others = Object.keys(object).filter((key) => !keys.includes(key));
  run(
    others.map((key) => () => {
      const nearest = nearestName(key, keys);
      const meant = nearest === undefined ? "" : `; did you mean \`${nearest}\`?`;
      const known = `no key but ${quoted(keys).join(", ")}`;
      const message = `Expected ${path && `\`${path}\` to have `}${known}, got \`${key}\`${meant}`;
      const expected = { clause: known, kind: "no-other-key", keys: [...keys], nearest: nearest ?? null } as const;
      reject("unknown", (path && `${path}.`) + key, object[key], { message, expected });
    }),
  );
  return object;
}

/**
 * Which one of several alternative fields an object has. That is the one whose value is not `undefined`, still unchecked. The path is empty for a function's
 * own options.
 */
export function checkOneOf<K extends string>(
  object: Readonly<Record<string, unknown>>,
  path: string,
  keys: readonly K[],
): K {
  const given = keys.filter((key) => object[key] !== undefined);
  const [first, second] = given;
  if (first !== undefined && second === undefined) return first;
  const got = first === undefined ? "none" : quoted(given).join(" and ");
  const clause = `exactly one of ${quoted(keys).join(", ")}`;
  const message = `Expected ${clause}${path && ` in \`${path}\``}, got ${got}`;
  const told = { message, expected: { clause, kind: "exactly-one", keys: [...keys] } } as const;
  if (second === undefined) return reject("missing", path, object, told);
  return reject("conflict", (path && `${path}.`) + second, object[second], told);
}

/**
 * An array without holes. Loops like `map` and `every` pass over a hole in silence, so that it would never be checked. Its items are still unchecked.
 */
export function checkArray(value: unknown, path: string, what = "an array"): readonly unknown[] {
  if (typeof value !== "object" || value === null || kindOfObject(value) !== "array") {
    return refuse("type", path, value, { clause: what, kind: "array" });
  }
  const array = value as readonly unknown[];
  for (let index = 0; index < array.length; index++) {
    if (!(index in array)) {
      const hole = `${path}[${index}]`;
      reject("missing", hole, undefined, `Expected \`${hole}\` to be given, got a hole in ${describeValue(array)}`);
    }
  }
  return array;
}
