import { checkLength, checkNumber, checkWord } from "../../core/check.js";
import type { Hanging } from "./brief.js";
import { fieldsTogether, ifGiven } from "../../core/together.js";

/**
 * Checks how a frame hangs.
 *
 * @param value - how it hangs
 * @returns the same, checked
 */
export function readHanging(value: unknown): Hanging {
  return fieldsTogether<Hanging>(value, "hanging", {
    by: (by, at) => checkWord<Hanging["by"]>(by, at, ["wire", "two-hooks"]),
    wireAngle: ifGiven((angle, at) => checkNumber(angle, at, 5, 85, "degrees from 5 to 85")),
    screwDepth: ifGiven(checkLength),
    extraMass: ifGiven((mass, at) => checkNumber(mass, at, 0, 1000, "kilograms from 0 to 1000")),
  });
}
