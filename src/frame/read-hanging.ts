import { checkLength, checkNumber, checkObject, checkWord } from "../core/check.js";
import type { Hanging } from "./brief.js";
import { fieldsTogether, ifGiven } from "./together.js";

/**
 * Checks how a frame hangs.
 *
 * @param value - how it hangs
 * @returns the same, checked
 */
export function readHanging(value: unknown): Hanging {
  const hanging = checkObject(value, "hanging");
  const { wireAngle, screwDepth, extraMass } = hanging;
  return fieldsTogether<Hanging>({
    by: () => checkWord<Hanging["by"]>(hanging["by"], "hanging.by", ["wire", "two-hooks"]),
    wireAngle: ifGiven(wireAngle, (angle) => checkNumber(angle, "hanging.wireAngle", 5, 85, "degrees from 5 to 85")),
    screwDepth: ifGiven(screwDepth, (depth) => checkLength(depth, "hanging.screwDepth")),
    extraMass: ifGiven(extraMass, (mass) =>
      checkNumber(mass, "hanging.extraMass", 0, 1000, "kilograms from 0 to 1000"),
    ),
  });
}
