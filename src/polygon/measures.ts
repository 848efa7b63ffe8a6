import { checkArea, checkLength, checkWord } from "../core/check.js";
import type { OneOf } from "../core/geometry-types.js";

/** Every size that fixes a regular polygon once its number of sides is known. */
export interface PolygonMeasureValues {
  /** Length of a side. From 1e-100 to 1e100. */
  readonly side: number;
  /** Distance from the center to a side: the radius of the circle within. From 1e-100 to 1e100. */
  readonly apothem: number;
  /** Distance from the center to a corner: the radius of the circle around. From 1e-100 to 1e100. */
  readonly circumradius: number;
  /**
   * The narrowest the polygon can be: even number of sides, side to opposite side; odd, corner to opposite side. From
   * 1e-100 to 1e100.
   */
  readonly acrossFlats: number;
  /** The widest distance between any two corners. From 1e-100 to 1e100. */
  readonly acrossCorners: number;
  /** Sum of all sides. From 1e-100 to 1e100. */
  readonly perimeter: number;
  /** Area, in the square of the length unit. From 1e-200 to 1e200. */
  readonly area: number;
}

/** Name of a measure that fixes a regular polygon. */
export type PolygonMeasure = keyof PolygonMeasureValues;

/** Exactly one measure: `{ side: 10 }`, or `{ acrossFlats: 300 }`, and so on. Two of them do not compile. */
export type OnePolygonMeasure = OneOf<PolygonMeasureValues>;

/** The names of all measures, for menus. */
export const POLYGON_MEASURES: readonly PolygonMeasure[] = [
  "side",
  "apothem",
  "circumradius",
  "acrossFlats",
  "acrossCorners",
  "perimeter",
  "area",
];

/** A measure's value: a length, or an area from the square of the smallest length to that of the largest. */
export function checkMeasure(measure: PolygonMeasure, value: unknown): number {
  return measure === "area" ? checkArea(value, measure) : checkLength(value, measure);
}

/**
 * The one measure that was chosen by name, in the shape that {@link regularPolygon} takes.
 *
 * For "which measure?" menus: a computed key such as `{ [name]: value }` would not compile, since the options allow
 * exactly one measure.
 *
 * @param name - one of {@link POLYGON_MEASURES}
 * @param value - a length from 1e-100 to 1e100; an area from 1e-200 to 1e200
 * @returns an object with that measure as its only field, to be spread into the options
 * @throws {InputError} when the name is unknown or the value out of range
 * @example
 * ```ts
 * import { onePolygonMeasure, regularPolygon } from "miterwright/polygon";
 *
 * onePolygonMeasure("acrossFlats", 300); //=> { acrossFlats: 300 }
 * regularPolygon({ sides: 8, ...onePolygonMeasure("acrossFlats", 300) }).apothem; //=> 150
 * ```
 */
export function onePolygonMeasure(name: PolygonMeasure, value: number): OnePolygonMeasure {
  const measure = checkWord(name, "name", POLYGON_MEASURES);
  return { [measure]: checkMeasure(measure, value) } as unknown as OnePolygonMeasure;
}
