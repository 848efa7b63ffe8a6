import {
  checkArray,
  checkDistance,
  checkNumber,
  checkObject,
  checkText,
  isRecord,
  MAX_LENGTH,
  refuse,
  reject,
} from "../core/check.js";
import type { Point } from "../core/geometry-types.js";
import type { Profile } from "./profile.js";

/** A point that is as it should be; else nothing. Sections are read so often that naming every point would cost more than looking at it. */
function soundPoint(value: unknown): Point | undefined {
  if (!isRecord(value)) return undefined;
  const { x, y } = value;
  if (typeof x !== "number" || typeof y !== "number") return undefined;
  return Math.abs(x) <= MAX_LENGTH && Math.abs(y) <= MAX_LENGTH ? { x: x + 0, y: y + 0 } : undefined;
}

/**
 * A point with finite coordinates.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the point
 */
export function checkPoint(value: unknown, path: string): Point {
  const point = checkObject(value, path);
  return { x: checkDistance(point["x"], `${path}.x`), y: checkDistance(point["y"], `${path}.y`) };
}

/**
 * The outline of a profile: three or more points.
 *
 * @param profile - the profile
 * @param path - the profile's name in error texts
 * @returns the points
 */
export function checkOutline(profile: unknown, path = "profile"): Point[] {
  const given = checkObject(profile, path);
  const [at, what] = [`${path}.outline`, "an array of three or more points"];
  // The likeliest slip: the sizes of a molding where its section is asked for.
  if (given["outline"] === undefined && given["width"] !== undefined) {
    const hint = "`molding` makes a profile of a width and a thickness";
    return reject("missing", at, undefined, `Expected \`${at}\` to be ${what}, got undefined; ${hint}`);
  }
  const outline = checkArray(given["outline"], at, what);
  if (outline.length < 3) return refuse("range", at, outline, what);
  return outline.map((point, index) => soundPoint(point) ?? checkPoint(point, `${path}.outline[${index}]`));
}

/**
 * The marks of a profile, unchecked but for being an object.
 *
 * @param profile - the profile
 * @param path - the profile's name in error texts
 * @returns the marks by name
 */
export function marksOf(profile: unknown, path = "profile"): Readonly<Record<string, unknown>> {
  return checkObject(checkObject(profile, path)["marks"], `${path}.marks`);
}

/**
 * Checks that a value of any origin, such as parsed JSON, is a profile.
 *
 * Only the shape is checked: an outline of three or more points, marks that are points, and a slope if it has one. That the
 * outline is counter-clockwise and does not cross itself is what {@link profileFromPoints} sees to.
 *
 * @param value - anything
 * @param path - its name in error texts
 * @returns the same object, now with a type
 * @throws {InputError} when it has not the shape of a profile
 * @example
 * ```ts
 * import { checkProfile, levelWidth } from "miterwright/profile";
 *
 * const text = '{ "outline": [{ "x": 0, "y": 0 }, { "x": 40, "y": 0 }, { "x": 0, "y": 20 }], "marks": {} }';
 * levelWidth(checkProfile(JSON.parse(text)), { slope: 0 }); //=> 40
 * ```
 */
export function checkProfile(value: unknown, path = "profile"): Profile {
  checkText(path, "path");
  checkOutline(value, path);
  const marks = marksOf(value, path);
  for (const name of Object.keys(marks)) checkMark(marks, name, path);
  const { madeFor } = value as { madeFor?: unknown };
  if (madeFor !== undefined) checkNumber(madeFor, `${path}.madeFor`, -90, 90, "degrees from -90 to 90");
  return value as Profile;
}

/**
 * The point of a mark.
 *
 * @param marks - the marks of a profile
 * @param name - which one
 * @param path - the profile's name in error texts
 * @returns its point
 */
export function checkMark(marks: Readonly<Record<string, unknown>>, name: string, path = "profile"): Point {
  return soundPoint(marks[name]) ?? checkPoint(marks[name], `${path}.marks.${name}`);
}
