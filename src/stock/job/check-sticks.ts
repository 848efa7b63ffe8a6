import {
  checkArray,
  checkFields,
  checkInteger,
  checkNumber,
  checkObject,
  checkRange,
  checkText,
  inOrder,
  LENGTH,
  MAX_LENGTH,
  refuse,
  type RunChecks,
} from "../../core/check.js";
import type { Field, FieldCheck, Fields, NumberField } from "../../core/field.js";
import type { StockStick, Stretch } from "./stock-job.js";

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

const WORTH: NumberField = { kind: "number", min: 0, max: MAX_LENGTH };
const STRETCH: Fields<Stretch> = { start: WORTH, end: WORTH };
const KEYS: readonly (keyof StockStick)[] = ["id", "length", "count", "cost", "defects"];
const STICK: Fields<StockStick> = {
  id: { kind: "text" },
  length: LENGTH,
  count: { kind: "optional", of: { kind: "integer", min: 0, max: MOST } },
  cost: { kind: "optional", of: WORTH },
  defects: { kind: "optional", of: { kind: "list", of: { kind: "record", fields: STRETCH }, what: "an array" } },
};
/** What sticks may be, each field of each for itself. A fit pays for no reader of tables, so {@link readSticks} is written out. */
export const STICKS: Field<readonly StockStick[]> = {
  kind: "list",
  of: { kind: "record", fields: STICK },
  what: "an array of one stick or more",
  least: 1,
};

function readStretch(value: unknown, path: string, length: number): Stretch {
  const stretch = checkFields(value, path, ["start", "end"]);
  const start = checkNumber(stretch["start"], `${path}.start`, 0, length);
  return { start, end: checkNumber(stretch["end"], `${path}.end`, start, length) };
}

function readStick(value: unknown, path: string, run: RunChecks, nameOf: (id: unknown) => string): StockStick {
  const stick = checkObject(value, path);
  const { length, count, cost, defects } = stick;
  // A length that is refused itself says nothing about where a defect may end.
  const reach = typeof length === "number" && length > 0 ? length : MAX_LENGTH;
  const read: { -readonly [K in keyof StockStick]: StockStick[K] } = { id: "", length: 0 };
  run([
    // A misspelled key comes before the one that is missing for it.
    () => checkFields(stick, path, KEYS, run),
    () => (read.id = nameOf(stick["id"])),
    () => (read.length = checkRange(length, `${path}.length`, LENGTH)),
    () => count === undefined || (read.count = checkInteger(count, `${path}.count`, 0, MOST)),
    () => cost === undefined || (read.cost = checkRange(cost, `${path}.cost`, WORTH)),
    () => {
      if (defects === undefined) return;
      const at = `${path}.defects`;
      read.defects = run(checkArray(defects, at).map((zone, k) => () => readStretch(zone, `${at}[${k}]`, reach)));
    },
  ]);
  return read;
}

/** Reads the sticks on offer as they were given: names that differ, and defects that lie within their stick. */
export const readSticks: FieldCheck<readonly StockStick[]> = (value, path, run) => {
  const seen = new Map<string, number>();
  return run(
    checkList(value, path, "stick").map(
      (item, k) => () => readStick(item, `${path}[${k}]`, run, (id) => checkName(id, path, k, seen)),
    ),
  );
};

/** Checks the sticks on offer and fills in their defaults. */
export function checkSticks(value: unknown, path: string): readonly CheckedStick[] {
  return readSticks(value, path, inOrder).map(({ id, length, count, cost = length, defects = [] }) => ({
    id,
    length,
    count: count ?? (defects.length > 0 ? 1 : Infinity),
    cost,
    defects,
  }));
}
