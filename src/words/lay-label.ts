import { checkWord, refuse } from "../core/check.js";
import type { Lay, LayName } from "../miter/index.js";
import { checkRotation, LAY_NAMES } from "../miter/internal.js";

const LABELS: Readonly<Record<LayName, string>> = {
  propped: "propped at its slope",
  flat: "flat on its back",
  "face-down": "face down",
  "sight-edge-down": "standing on its sight edge",
  "outer-edge-down": "standing on its outer edge",
};

/**
 * What to call a lay on paper: words that go on after "the stick lies".
 *
 * @param lay - a name, or degrees from -360 to 360 by which the stick is rolled about its length
 * @param angle - writes an angle in degrees
 * @returns words for people
 * @throws {InputError} when `lay` is no such name or angle, or `angle` is no function
 * @example
 * ```ts
 * import { layLabel } from "miterwright/words";
 * import { formatAngle } from "miterwright/units";
 *
 * layLabel("outer-edge-down", (degrees) => formatAngle(degrees)); //=> "standing on its outer edge"
 * layLabel(12.5, (degrees) => formatAngle(degrees)); //=> "rolled by 12.5°"
 * ```
 */
export function layLabel(lay: Lay, angle: (degrees: number) => string): string {
  if (typeof angle !== "function") return refuse("type", "angle", angle, "a function that writes an angle");
  if (typeof lay === "number") return `rolled by ${angle(checkRotation(lay))}`;
  return LABELS[checkWord(lay, "lay", LAY_NAMES)];
}
