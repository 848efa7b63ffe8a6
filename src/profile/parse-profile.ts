import {
  checkArray,
  checkDistance,
  checkObject,
  checkSlope,
  checkText,
  inOrder,
  isRecord,
  MAX_LENGTH,
  MIN_LENGTH,
  refuse,
  reject,
  type RunChecks,
} from "../core/check.js";
import type { FieldCheck } from "../core/field.js";
import type { Point } from "../core/geometry-types.js";
import { outcomeOf, type InputOutcome } from "../core/input-issue.js";
import { together } from "../core/together.js";
import { findCrossing } from "./find-crossing.js";
import { orientationOf } from "./orientation.js";
import type { Profile } from "./profile.js";

/** A point that is as it should be; else nothing. Sections are read so often that naming every point would cost more than looking at it. */
function soundPoint(value: unknown): Point | undefined {
  if (!isRecord(value)) return undefined;
  const { x, y } = value;
  if (typeof x !== "number" || typeof y !== "number") return undefined;
  return Math.abs(x) <= MAX_LENGTH && Math.abs(y) <= MAX_LENGTH ? { x: x + 0, y: y + 0 } : undefined;
}

/** A point with finite coordinates. */
export function checkPoint(value: unknown, path: string, run: RunChecks = inOrder): Point {
  const point = checkObject(value, path);
  const [x, y] = run(["x", "y"].map((key) => () => checkDistance(point[key], `${path}.${key}`)));
  return { x: x!, y: y! };
}

/** Refuses an outline that crosses or touches itself. */
export function refuseCrossing(
  corners: readonly (Point & { readonly index?: number })[],
  path: string,
  outline: unknown,
): void {
  const crossing = findCrossing(corners);
  if (crossing === undefined) return;
  const [first, second] = crossing.map((edge) => corners[edge]!.index ?? edge);
  const fault = `the edges from its points ${first} and ${second} meet`;
  reject("impossible", path, outline, `Expected \`${path}\` not to cross or touch itself, but ${fault}`);
}

/** Greater of an outline's width and height. Refuses one that is too thin for a length. */
export function outlineSize(corners: readonly Point[], path: string, outline: unknown): number {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of corners) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  const [width, height] = [right - left, high - low];
  if (!(width >= MIN_LENGTH && height >= MIN_LENGTH)) refuse("range", path, outline, "at least 1e-100 wide and high");
  return Math.max(width, height);
}

/** Refuses what each function of a profile would answer wrongly: a point twice in a row, no area, and a clockwise outline. */
function refuseRun(points: readonly Point[], path: string, outline: unknown): void {
  let last = points.at(-1)!;
  points.forEach((point, index) => {
    if (point.x === last.x && point.y === last.y) {
      const [at, before] = [`${path}[${index}]`, `${path}[${(index + points.length - 1) % points.length}]`];
      const message = `Expected \`${at}\` to differ from \`${before}\`, got the same point; \`profileFromPoints\` drops repeated points`;
      reject("impossible", at, point, message);
    }
    last = point;
  });
  const orientation = orientationOf(points);
  if (orientation === 0) refuse("impossible", path, outline, "an outline that encloses an area");
  if (orientation < 0) {
    const message = `Expected \`${path}\` to run counter-clockwise, got a clockwise outline; \`profileFromPoints\` turns it round`;
    reject("impossible", path, outline, message);
  }
}

/**
 * The outline of a profile: three or more points, counter-clockwise, no two in a row equal. Whether it crosses itself is not looked at.
 */
export function checkOutline(profile: unknown, path = "profile", run: RunChecks = inOrder): Point[] {
  const given = checkObject(profile, path);
  const [at, what] = [`${path}.outline`, "an array of three or more points"];
  // The likeliest slip: the sizes of a molding where its section is asked for.
  if (given["outline"] === undefined && given["width"] !== undefined) {
    const hint = "`molding` makes a profile of a width and a thickness";
    return reject("missing", at, undefined, `Expected \`${at}\` to be ${what}, got undefined; ${hint}`);
  }
  const outline = checkArray(given["outline"], at, what);
  if (outline.length < 3) return refuse("range", at, outline, what);
  const points: Point[] = [];
  for (const point of outline) {
    const sound = soundPoint(point);
    if (sound !== undefined) points.push(sound);
  }
  if (points.length < outline.length)
    run(outline.map((point, index) => () => checkPoint(point, `${at}[${index}]`, run)));
  refuseRun(points, at, outline);
  return points;
}

/** The arrises of a profile, unchecked but for being an object. */
export function arrisesOf(profile: unknown, path = "profile"): Readonly<Record<string, unknown>> {
  return checkObject(checkObject(profile, path)["arrises"], `${path}.arrises`);
}

/** The arrises of a profile; every one reports its own refusal. */
function readArrises(value: unknown, path: string, run: RunChecks): Record<string, Point> {
  const given = arrisesOf(value, path);
  const names = Object.keys(given);
  const points = run(
    names.map((name) => () => soundPoint(given[name]) ?? checkPoint(given[name], `${path}.arrises.${name}`, run)),
  );
  const arrises: Record<string, Point> = {};
  names.forEach((name, index) => {
    // A plain assignment would take this name for the prototype.
    Object.defineProperty(arrises, name, {
      value: points[index],
      enumerable: true,
      configurable: true,
      writable: true,
    });
  });
  return arrises;
}

/** Reads a profile; its points, its arrises and `madeFor` report their own refusals. */
export const readProfile: FieldCheck<Profile> = (value, path, run) => {
  const { outline: given, madeFor } = checkObject(value, path);
  // Without an outline it is no profile at all, and nothing else that is wrong with it is worth telling.
  if (given === undefined) checkOutline(value, path);
  const [outline, arrises, slope] = run<unknown>([
    () => {
      const points = checkOutline(value, path, run);
      const at = `${path}.outline`;
      refuseCrossing(points, at, points);
      outlineSize(points, at, points);
      return points;
    },
    () => readArrises(value, path, run),
    () => (madeFor === undefined ? undefined : checkSlope(madeFor, `${path}.madeFor`)),
  ]) as [Point[], Record<string, Point>, number | undefined];
  return slope === undefined ? { outline, arrises } : { outline, arrises, madeFor: slope };
};

/**
 * Reads a profile from a value of any origin, such as parsed JSON.
 *
 * Its outline must have three or more points, run counter-clockwise, have no point twice in a row (the last joins the first
 * without repeating it) and neither cross nor touch itself. A clockwise outline is refused, not turned round: it is often one
 * whose y points down, and then its face is where the back should be. {@link profileFromPoints} turns an outline round and
 * drops repeated points. Arrises must be points, and `madeFor` a slope if there is one.
 *
 * @param value - anything
 * @param path - its name in error texts
 * @returns a copy with the fields of a profile and no others
 * @throws {InputError} for the first thing that is wrong; {@link tryParseProfile} tells of all
 * @example
 * ```ts
 * import { parseProfile, levelWidth } from "miterwright/profile";
 *
 * const text = '{ "outline": [{ "x": 0, "y": 0 }, { "x": 40, "y": 0 }, { "x": 0, "y": 20 }], "arrises": {} }';
 * levelWidth(parseProfile(JSON.parse(text)), { slope: 0 }); //=> 40
 * ```
 */
export function parseProfile(value: unknown, path = "profile"): Profile {
  checkText(path, "path");
  return readProfile(value, path, inOrder);
}

/**
 * Reads a profile from anywhere, or tells of everything that is wrong with it: every point, every arris, `madeFor`.
 *
 * @param value - anything
 * @param path - its name in error texts
 * @returns a copy with the fields of a profile and no others, or the issues
 * @example
 * ```ts
 * import { tryParseProfile } from "miterwright/profile";
 *
 * const outcome = tryParseProfile({ outline: [{ x: 0, y: 0 }, { x: 40 }, { x: 0, y: 20 }], arrises: { bead: 3 } });
 * outcome.ok ? [] : outcome.issues.map((issue) => issue.path); //=> ["profile.outline[1].y", "profile.arrises.bead"]
 * ```
 */
export function tryParseProfile(value: unknown, path = "profile"): InputOutcome<Profile> {
  checkText(path, "path");
  return outcomeOf(() => readProfile(value, path, together));
}

/** The point of an arris. */
export function checkArris(arrises: Readonly<Record<string, unknown>>, name: string, path = "profile"): Point {
  return soundPoint(arrises[name]) ?? checkPoint(arrises[name], `${path}.arrises.${name}`);
}
