import { checkWord } from "../core/check.js";
import { checkMeasure, POLYGON_MEASURES, type PolygonMeasure, type OnePolygonMeasure } from "./measures.js";

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
