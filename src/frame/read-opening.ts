import { checkLength, checkLengthOrZero, checkNumber, checkObject, checkOneOf } from "../core/check.js";
import { POLYGON_MEASURES } from "../polygon/index.js";
import type { Contained, MeasuredMolding, Opening } from "./brief.js";
import { fieldsTogether, ifGiven } from "./together.js";

/**
 * Checks what decides a frame's size.
 *
 * @param value - the opening
 * @returns the checked opening
 */
export function readOpening(value: unknown): Opening {
  const opening = checkObject(value, "opening");
  const key = checkOneOf(opening, "opening", ["contains", "cutFrom", ...POLYGON_MEASURES] as const);
  if (key !== "contains" && key !== "cutFrom") {
    const what = key === "area" ? "a positive area (1e-200 to 1e200)" : undefined;
    const size =
      what === undefined
        ? checkLength(opening[key], `opening.${key}`)
        : checkNumber(opening[key], "opening.area", 1e-200, 1e200, what);
    return { [key]: size } as unknown as Opening;
  }
  const box = checkObject(opening[key], `opening.${key}`);
  const read = fieldsTogether<Contained>({
    width: () => checkLength(box["width"], `opening.${key}.width`),
    height: () => checkLength(box["height"], `opening.${key}.height`),
    allowance: ifGiven(key === "contains" ? box["allowance"] : undefined, (allowance) =>
      checkLengthOrZero(allowance, "opening.contains.allowance"),
    ),
  });
  return key === "contains" ? { contains: read } : { cutFrom: read };
}

/**
 * Checks the level measures of a molding.
 *
 * @param value - the measures
 * @returns the checked measures
 */
export function readMeasured(value: unknown): MeasuredMolding {
  const measured = checkObject(value, "measured");
  return fieldsTogether<MeasuredMolding>({
    levelWidth: () => checkLength(measured["levelWidth"], "measured.levelWidth"),
    lap: ifGiven(measured["lap"], (lap) => checkLengthOrZero(lap, "measured.lap")),
    depth: ifGiven(measured["depth"], (depth) => checkLength(depth, "measured.depth")),
  });
}

/**
 * The arris names that a brief's molding has, plus "contents".
 *
 * @param profile - the molding's section, where it is known
 * @param measured - its level measures, where only they are
 * @returns the names that `at` may take
 */
export function markNames(profile: unknown, measured: MeasuredMolding | undefined): string[] {
  if (measured !== undefined) return ["contents", "wall", "outer", ...(measured.lap === undefined ? [] : ["sight"])];
  return ["contents", ...Object.keys((profile as { marks: object }).marks)];
}
