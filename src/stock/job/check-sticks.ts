import {
  checkArray,
  checkFields,
  checkInteger,
  checkLength,
  checkNumber,
  checkObject,
  checkText,
  inOrder,
  MAX_LENGTH,
  refuse,
  type RunChecks,
} from "../../core/check.js";
import type { Stretch } from "./stock-job.js";

/** Most pieces or sticks of one kind, and most pieces in all. */
export const MOST: number = 1e9;

/** A {@link StockStick} with its defaults filled in. */
export interface CheckedStick {
  /** Name. */
  readonly id: string;
  /** Length. */
  readonly length: number;
  /** How many there are, Infinity for as many as needed. */
  readonly count: number;
  /** What using one costs. */
  readonly cost: number;
  /** Where no piece may lie. */
  readonly defects: readonly Stretch[];
}

/** An array with something in it, its items still unchecked; error texts call one `what`. */
export function checkList(value: unknown, path: string, what: string): readonly unknown[] {
  const expected = `an array of one ${what} or more`;
  const list = checkArray(value, path, expected);
  return list.length === 0 ? refuse("range", path, value, expected) : list;
}

/** A name that no item before it in the list at `path` has. `seen` holds those with their places; this one is added. */
export function checkName(value: unknown, path: string, place: number, seen: Map<string, number>): string {
  const at = `${path}[${place}].id`;
  const name = checkText(value, at);
  const first = seen.get(name);
  if (first !== undefined) refuse("conflict", at, name, `another name than \`${path}[${first}].id\``);
  seen.set(name, place);
  return name;
}

function checkStretch(value: unknown, path: string, length: number): Stretch {
  const stretch = checkFields(value, path, ["start", "end"]);
  const start = checkNumber(stretch["start"], `${path}.start`, 0, length);
  return { start, end: checkNumber(stretch["end"], `${path}.end`, start, length) };
}

function checkStick(value: unknown, path: string, run: RunChecks, nameOf: (id: unknown) => string): CheckedStick {
  const stick = checkObject(value, path);
  const { length, count, cost, defects = [] } = stick;
  // A length that is refused itself says nothing about where a defect may end.
  const reach = typeof length === "number" && length > 0 ? length : MAX_LENGTH;
  const [id, checked, most, each, zones] = run<unknown>([
    () => nameOf(stick["id"]),
    () => checkLength(length, `${path}.length`),
    () => (count === undefined ? count : checkInteger(count, `${path}.count`, 0, MOST)),
    () => (cost === undefined ? length : checkNumber(cost, `${path}.cost`, 0, MAX_LENGTH)),
    () =>
      run(
        checkArray(defects, `${path}.defects`).map(
          (zone, k) => () => checkStretch(zone, `${path}.defects[${k}]`, reach),
        ),
      ),
    () => checkFields(stick, path, ["id", "length", "count", "cost", "defects"], run),
  ]) as [string, number, number | undefined, number, readonly Stretch[]];
  return { id, length: checked, count: most ?? (zones.length > 0 ? 1 : Infinity), cost: each, defects: zones };
}

/**
 * Checks the sticks on offer and fills in their defaults. The checks run until the first refusal unless `run` goes on.
 */
export function checkSticks(value: unknown, path: string, run: RunChecks = inOrder): readonly CheckedStick[] {
  const seen = new Map<string, number>();
  return run(
    checkList(value, path, "stick").map(
      (item, k) => () => checkStick(item, `${path}[${k}]`, run, (id) => checkName(id, path, k, seen)),
    ),
  );
}
