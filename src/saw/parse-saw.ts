import { checkLength, checkNumber, checkObject, checkText, checkWord } from "../core/check.js";
import type { BevelScale, MiterScale, Saw } from "./saw.js";

function checkStep(value: unknown, path: string): number {
  return checkNumber(value, path, 1e-6, 45, "degrees from 0.000001 to 45");
}

function checkMiterScale(value: unknown, path: string): MiterScale {
  const scale = checkObject(value, path);
  return {
    left: checkNumber(scale["left"], `${path}.left`, 0, 90, "degrees from 0 to 90"),
    right: checkNumber(scale["right"], `${path}.right`, 0, 90, "degrees from 0 to 90"),
    reads: checkWord(scale["reads"], `${path}.reads`, ["from-square", "from-fence"]),
    step: checkStep(scale["step"], `${path}.step`),
  };
}

function checkBevelScale(value: unknown, path: string): BevelScale {
  const scale = checkObject(value, path);
  return {
    left: checkNumber(scale["left"], `${path}.left`, 0, 90, "degrees from 0 to 90"),
    right: checkNumber(scale["right"], `${path}.right`, 0, 90, "degrees from 0 to 90"),
    reads: checkWord(scale["reads"], `${path}.reads`, ["from-vertical", "from-table"]),
    step: checkStep(scale["step"], `${path}.step`),
  };
}

/**
 * Checks a saw that was written by hand or read back from JSON.
 *
 * @param value - the saw
 * @param path - its name in error texts; default `saw`
 * @returns the saw, with only the fields that are known
 * @throws {InputError} when a field is missing, of another type or out of range
 * @example
 * ```ts
 * import { parseSaw, miterSaw } from "miterwright/saw";
 *
 * const saw = parseSaw(JSON.parse(JSON.stringify(miterSaw({ depth: 90 }))));
 * saw.depth; //=> 90
 * ```
 */
export function parseSaw(value: unknown, path = "saw"): Saw {
  checkText(path, "path");
  const saw = checkObject(value, path);
  const sizes: { depth?: number; depthAt45?: number; crosscut?: number; gaugeReach?: number } = {};
  for (const key of ["depth", "depthAt45", "crosscut", "gaugeReach"] as const) {
    if (saw[key] !== undefined) sizes[key] = checkLength(saw[key], `${path}.${key}`);
  }
  return {
    fence: checkWord(saw["fence"], `${path}.fence`, ["near", "far"]),
    miter: checkMiterScale(saw["miter"], `${path}.miter`),
    bevel: checkBevelScale(saw["bevel"], `${path}.bevel`),
    ...sizes,
  };
}
