import {
  checkArray,
  checkFields,
  checkInteger,
  checkObject,
  checkOneOf,
  checkText,
  checkWord,
  checkRange,
  type NumberRange,
  refuse,
  type RunChecks,
} from "./check.js";

/** A field that code of its own reads: until the first refusal or to the last, as `run` says. */
export type FieldCheck<T> = (value: unknown, path: string, run: RunChecks) => T;

/** A number between two bounds, which are included. */
export interface NumberField extends NumberRange {
  readonly kind: "number" | "integer";
}

/** One of some words. */
export interface WordField<W extends string = string> {
  readonly kind: "word";
  readonly words: readonly W[];
}

/** A text that is not empty. */
export interface TextField {
  readonly kind: "text";
}

/** An array, each item of which is read alike. */
export interface ListField<F = AnyField> {
  readonly kind: "list";
  readonly of: F;
  /** What error texts call it. */
  readonly what: string;
  /** The fewest items; default none. */
  readonly least?: number;
  /** The most items; default any number. */
  readonly most?: number;
}

/** An object with these fields and no others. */
export interface RecordField<F = AnyFields> {
  readonly kind: "record";
  readonly fields: F;
  /** All that it may have, where some of it is not read here; default the fields. */
  readonly known?: readonly string[];
  /** Whether exactly one of the fields is to be given; default false. */
  readonly single?: true;
}

/** What has several forms. */
export interface EitherField<F = AnyField> {
  readonly kind: "either";
  readonly of: readonly F[];
  /** The place of the form that a value is meant to have; it may refuse what is none. */
  readonly which: (value: unknown, path: string) => number;
}

/** What may be missing, or `null`. */
export interface MaybeField<K extends "optional" | "nullable", F = AnyField> {
  readonly kind: K;
  readonly of: F;
}

/** A field of any type. */
export type AnyField =
  | FieldCheck<unknown>
  | NumberField
  | WordField
  | TextField
  | ListField
  | RecordField
  | EitherField
  | MaybeField<"optional" | "nullable">;
/** The fields of any object. */
export interface AnyFields {
  readonly [key: string]: AnyField;
}

/** The fields of what may be an array or an object. */
type Within<T> = T extends readonly (infer I)[]
  ? ListField<Field<I>>
  : T extends object
    ? RecordField<Fields<T>>
    : never;

/** The fields of an object that has exactly one of them. */
type Alternatives<T> = {
  readonly [K in T extends unknown ? keyof T : never]: Field<Exclude<T[K & keyof T], undefined>>;
};

/** What a field may be that is always given. */
type Given<T> =
  | (number extends T ? NumberField : never)
  | (string extends T ? TextField : WordField<Extract<T, string>>)
  | (null extends T ? MaybeField<"nullable", Field<Exclude<T, null>>> : never)
  | Within<T>
  | ([T] extends [object] ? RecordField<Alternatives<T>> : never)
  | EitherField<Field<T>>;

/**
 * How a field of type `T` is read, as data: what checks it is also what its JSON Schema says. The compiler holds the two together.
 */
export type Field<T> =
  FieldCheck<T> | (undefined extends T ? MaybeField<"optional", Field<Exclude<T, undefined>>> : Given<T>);

/** How every field of `T` is read: the compiler asks for one when a field is added. */
export type Fields<T> = { readonly [K in keyof T]-?: Field<T[K]> };

/** The path of a field. */
export function fieldPath(path: string, key: string): string {
  return path === "" ? key : `${path}.${key}`;
}

/** Reads an object with these fields and no others. */
function readRecord(
  { fields, known = Object.keys(fields), single }: RecordField,
  value: unknown,
  path: string,
  run: RunChecks,
): unknown {
  const given = checkObject(value, path === "" ? undefined : path);
  const keys = Object.keys(fields).filter((key) => !single || given[key] !== undefined);
  const [, , ...values] = run<unknown>([
    // What is missing is what was misspelled.
    () =>
      single &&
      (keys.length > 0 || Object.keys(given).every((key) => known.includes(key))) &&
      checkOneOf(given, path, known),
    // A misspelled key comes before the one that is missing for it.
    () => checkFields(given, path, known, run),
    ...keys.map((key) => () => readAny(fields[key]!, given[key], fieldPath(path, key), run)),
  ]);
  return Object.fromEntries(keys.map((key, index) => [key, values[index]]).filter(([, read]) => read !== undefined));
}

/** Reads a field whose type is not known. */
export function readAny(field: AnyField, value: unknown, path: string, run: RunChecks): unknown {
  if (typeof field === "function") return field(value, path, run);
  switch (field.kind) {
    case "number":
      return checkRange(value, path, field);
    case "integer":
      return checkInteger(value, path, field.min, field.max);
    case "word":
      return checkWord(value, path, field.words);
    case "text":
      return checkText(value, path);
    case "record":
      return readRecord(field, value, path, run);
    case "either":
      return readAny(field.of[field.which(value, path)]!, value, path, run);
    case "list": {
      const { of, what, least = 0, most = Infinity } = field;
      const items = checkArray(value, path, what);
      if (items.length < least || items.length > most) refuse("range", path, items, what);
      return run(items.map((item, index) => () => readAny(of, item, `${path}[${index}]`, run)));
    }
    default:
      return value === (field.kind === "optional" ? undefined : null) ? value : readAny(field.of, value, path, run);
  }
}

/** Reads a field. */
export function readField<T>(field: Field<T>, value: unknown, path: string, run: RunChecks): T {
  return readAny(field, value, path, run) as T;
}
