import { checkLength, checkLengthOrZero, checkNumber, checkObject, checkOneOf } from "../../core/check.js";
import type { Box } from "../../core/geometry-types.js";
import { POLYGON_MEASURES } from "../../polygon/index.js";
import type { Contained, MeasuredMolding, Opening, OpeningValues } from "./brief.js";
import { fieldsTogether, ifGiven, knownKeys, together } from "../../core/together.js";

function readBox(value: unknown, path: string): Box {
  return fieldsTogether<Box>(value, path, { width: checkLength, height: checkLength });
}

function readContained(value: unknown, path: string): Contained {
  return fieldsTogether<Contained>(value, path, {
    width: checkLength,
    height: checkLength,
    allowance: ifGiven(checkLengthOrZero),
  });
}

function readSize(value: unknown, key: keyof OpeningValues): Box | number {
  const path = `opening.${key}`;
  if (key === "contains") return readContained(value, path);
  if (key === "cutFrom") return readBox(value, path);
  if (key === "area") return checkNumber(value, path, 1e-200, 1e200, "a positive area (1e-200 to 1e200)");
  return checkLength(value, path);
}

/**
 * Checks what decides a frame's size.
 *
 * @param value - the opening
 * @returns the checked opening
 */
export function readOpening(value: unknown): Opening {
  const opening = checkObject(value, "opening");
  const keys: readonly (keyof OpeningValues)[] = ["contains", "cutFrom", ...POLYGON_MEASURES];
  const given = keys.filter((key) => opening[key] !== undefined);
  const isMisspelled =
    given.length === 0 && Object.keys(opening).some((key) => !keys.includes(key as keyof OpeningValues));
  const [, , sizes] = together<unknown>([
    // What is missing is what was misspelled.
    () => (isMisspelled ? undefined : checkOneOf(opening, "opening", keys)),
    knownKeys(opening, "opening", keys),
    () => together(given.map((key) => () => [key, readSize(opening[key], key)] as const)),
  ]);
  return Object.fromEntries(sizes as [string, unknown][]) as unknown as Opening;
}

/**
 * Checks the level measures of a molding.
 *
 * @param value - the measures
 * @returns the checked measures
 */
export function readMeasured(value: unknown): MeasuredMolding {
  return fieldsTogether<MeasuredMolding>(value, "measured", {
    levelWidth: checkLength,
    lap: ifGiven(checkLengthOrZero),
    depth: ifGiven(checkLength),
  });
}

/**
 * The arris names that a brief's molding has, plus "opening".
 *
 * @param profile - the molding's section, where it is known
 * @param measured - its level measures, where only they are
 * @returns the names that `at` may take
 */
export function arrisNames(profile: unknown, measured: MeasuredMolding | undefined): string[] {
  if (measured !== undefined) return ["opening", "wall", "outer", ...(measured.lap === undefined ? [] : ["sight"])];
  return ["opening", ...Object.keys((profile as { arrises: object }).arrises)];
}
