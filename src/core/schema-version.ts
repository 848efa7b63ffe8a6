import { refuse } from "./check.js";

/** The form of data that this library makes and reads. */
export function checkVersion(value: unknown, path: string, what: string): 1 {
  return value === 1 ? value : refuse("unknown", path, value, `1, the form of ${what} that is known here`);
}
