import { checkNumber, checkObject, checkSides, checkWord } from "../core/check.js";
import type { Pose } from "../core/geometry-types.js";
import type { RegularPolygon } from "./regular-polygon.js";

/** All that other functions read of a polygon: one written by hand, or read back from JSON, is as good as one we made. */
export type PolygonLike = Pick<RegularPolygon, "sides" | "apothem">;

/**
 * A polygon's sides and apothem.
 *
 * The apothem's bounds are wider than a length's by what a measure at the end of its range can lead to, so that every
 * polygon that this module makes is also taken: 1e6 sides of 1e100 have the apothem 1.6e105.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the two fields
 */
export function checkPolygon(value: unknown, path = "polygon"): PolygonLike {
  const polygon = checkObject(value, path);
  return {
    sides: checkSides(polygon["sides"], `${path}.sides`),
    apothem: checkNumber(polygon["apothem"], `${path}.apothem`, 1e-101, 1e106, "an apothem from 1e-101 to 1e106"),
  };
}

/**
 * A pose; side-down when none is given.
 *
 * @param value - the value to check
 * @param path - its name in error texts
 * @returns the pose
 */
export function checkPose(value: unknown, path = "pose"): Pose {
  return value === undefined ? "side-down" : checkWord(value, path, ["side-down", "corner-down"]);
}
