import { checkObject, checkRange, checkSides, type NumberRange } from "../core/check.js";
import type { RegularPolygon } from "./regular-polygon.js";

/**
 * All that other functions read of a polygon: one written by hand, or read back from JSON, is as good as one we made.
 */
export type PolygonLike = Pick<RegularPolygon, "sides" | "apothem">;

/**
 * Smallest apothem that functions take. It is smaller than a length by what a measure at the end of its range can lead
 * to, so that every polygon that this module makes is also taken: a perimeter of 1e-100 has an apothem of 1.6e-101.
 */
export const MIN_APOTHEM: number = 1e-101;
/** Largest apothem that functions take: 1e6 sides of 1e100 have an apothem of 1.6e105. */
export const MAX_APOTHEM: number = 1e106;

const APOTHEM: NumberRange = { min: MIN_APOTHEM, max: MAX_APOTHEM, what: "an apothem from 1e-101 to 1e106" };

/** A polygon's sides and apothem. */
export function checkPolygon(value: unknown, path = "polygon"): PolygonLike {
  const polygon = checkObject(value, path);
  return {
    sides: checkSides(polygon["sides"], `${path}.sides`),
    apothem: checkRange(polygon["apothem"], `${path}.apothem`, APOTHEM),
  };
}
