import { checkLength, checkNumber, checkObject, checkWord } from "../core/check.js";
import type { Hanging } from "./brief.js";

/**
 * Checks how a frame hangs.
 *
 * @param value - how it hangs
 * @returns the same, checked
 */
export function readHanging(value: unknown): Hanging {
  const hanging = checkObject(value, "hanging");
  const { wireAngle, screwDepth, extraMass } = hanging;
  return {
    by: checkWord(hanging["by"], "hanging.by", ["wire", "two-hooks"]),
    ...(wireAngle === undefined
      ? {}
      : { wireAngle: checkNumber(wireAngle, "hanging.wireAngle", 5, 85, "degrees from 5 to 85") }),
    ...(screwDepth === undefined ? {} : { screwDepth: checkLength(screwDepth, "hanging.screwDepth") }),
    ...(extraMass === undefined
      ? {}
      : { extraMass: checkNumber(extraMass, "hanging.extraMass", 0, 1000, "kilograms from 0 to 1000") }),
  };
}
