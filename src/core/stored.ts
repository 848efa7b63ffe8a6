import { checkArray, checkFinite, checkInteger, checkObject, checkText, checkWord, isRecord, refuse } from "./check.js";
import { fieldPath } from "./field.js";
import type { Box, Point } from "./geometry-types.js";

/** Where a value stands, in error texts; `undefined` while it is only to be found out whether all is well. */
export type Path = string | undefined;

/**
 * Reads a value that should be a `T`, as it was made or as it came back from JSON, and gives the same value back.
 *
 * It throws where the value is no `T`. Reading without a path is quicker, and the error then names no place: {@link readStored} reads twice for that.
 */
export type Reader<T> = (value: unknown, path: Path) => T;

/** A reader for each field of `T`: the compiler asks for one when a field is added. */
export type Fields<T> = { readonly [K in keyof T]-?: Reader<T[K]> };

/**
 * Reads a value with a reader, and names the place of what is wrong with it. The path is empty where only its fields have names.
 */
export function readStored<T>(value: unknown, path: string, reader: Reader<T>): T {
  try {
    return reader(value, undefined);
  } catch {
    return reader(value, path);
  }
}

/** An object with fields. It may hold others. */
export function record<T extends object>(value: unknown, path: Path, fields: Fields<T>): T {
  const given = isRecord(value) ? value : checkObject(value, path);
  for (const key in fields) fields[key](given[key], path === undefined ? path : fieldPath(path, key));
  return value as T;
}

/** An array, each item of which is read alike. `least` is the fewest items that there may be. */
export function list<T>(value: unknown, path: Path, item: Reader<T>, least = 0): readonly T[] {
  const items = checkArray(value, path ?? "");
  if (items.length < least) refuse("range", path ?? "", value, `an array of at least ${least}`);
  for (let index = 0; index < items.length; index++) {
    item(items[index], path === undefined ? path : `${path}[${index}]`);
  }
  return items as readonly T[];
}

/** An array of exactly one item. */
export function only<T>(value: unknown, path: Path, item: Reader<T>): readonly [T] {
  const [one, second] = list(value, path, item, 1);
  if (second !== undefined) refuse("range", path ?? "", value, "an array of one");
  return [one!];
}

/** An object whose fields have any names and are read alike. */
export function named<T>(value: unknown, path: Path, item: Reader<T>): Readonly<Record<string, T>> {
  const given = isRecord(value) ? value : checkObject(value, path);
  for (const key of Object.keys(given)) item(given[key], path === undefined ? path : fieldPath(path, key));
  return given as Readonly<Record<string, T>>;
}

/** What may be `null`. */
export function orNull<T>(value: unknown, path: Path, reader: Reader<T>): T | null {
  return value === null ? null : reader(value, path);
}

/** What may be missing. */
export function maybe<T>(value: unknown, path: Path, reader: Reader<T>): T | undefined {
  return value === undefined ? undefined : reader(value, path);
}

/** One of some words. */
export function word<W extends string>(value: unknown, path: Path, words: Readonly<Record<W, true>>): W {
  if (typeof value === "string" && Object.hasOwn(words, value)) return value as W;
  return checkWord(value, path ?? "", Object.keys(words) as W[]);
}

/** A finite number. */
export const finite: Reader<number> = (value, path) => {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  return checkFinite(value, path ?? "");
};

/** A finite number, or `null`. */
export const finiteOrNull: Reader<number | null> = (value, path) => (value === null ? null : finite(value, path));

/** A number of things, or the place of one: an integer from 0 to 1e9. */
export const count: Reader<number> = (value, path) => checkInteger(value, path ?? "", 0, 1e9);

/** A text; an empty one as well, since a name of no letters is still one. */
export const text: Reader<string> = (value, path) => (typeof value === "string" ? value : checkText(value, path ?? ""));

/** A text, or `null`. */
export const textOrNull: Reader<string | null> = (value, path) => (value === null ? null : text(value, path));

/** True or false. */
export const flag: Reader<boolean> = (value, path) =>
  typeof value === "boolean" ? value : refuse("type", path ?? "", value, "true or false");

const POINT: Fields<Point> = { x: finite, y: finite };
/** A point of the plane. */
export const point: Reader<Point> = (value, path) => record(value, path, POINT);

const BOX: Fields<Box> = { width: finite, height: finite };
/** A rectangle's size. */
export const box: Reader<Box> = (value, path) => record(value, path, BOX);
