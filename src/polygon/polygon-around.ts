import { checkLength, checkObject, checkSides } from "../core/check.js";
import { checkAllowance } from "./allowance.js";
import type { PlacedPolygon } from "./placed.js";
import { snuggestPolygon } from "./snuggest-polygon.js";
import { polygonFrom } from "./regular-polygon.js";
import { checkStanding, type Standing } from "./standing.js";

/** What {@link polygonAround} goes round, and how it may stand. */
export type PolygonAroundOptions = {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Width of the rectangle, a length from 1e-100 to 1e100. */
  readonly width: number;
  /** Height of the rectangle, a length from 1e-100 to 1e100. */
  readonly height: number;
  /** Added once in all to the width and once to the height, 0 to 1e100. Default 0. */
  readonly allowance?: number | undefined;
} & Standing;

/**
 * The smallest regular polygon that contains an upright rectangle, in a pose or over all rotations.
 *
 * For an even number of sides the rectangle sits in the middle, and one of the two poses is the best of all rotations.
 * For an odd one it is moved to where the polygon can be smallest, and rotations other than the symmetric ones can win.
 * All are solved exactly, in a time that hardly grows with the number of sides.
 *
 * @param options - `sides` (3 to 1e6), the rectangle's `width` and `height` (1e-100 to 1e100), and if wanted an
 * `allowance` (0 to 1e100), added once in all to each dimension of the rectangle, and a `pose` or `rotation: "free"`
 * @returns the polygon, its rotation in degrees, and the rectangle's center from the polygon's, in the rectangle's unit
 * @throws {InputError} when an option is missing or out of range, or a pose is given and the rotation free
 * @example
 * ```ts
 * import { polygonAround } from "miterwright/polygon";
 *
 * polygonAround({ sides: 8, width: 200, height: 200 }).polygon.apothem; //=> 141.42135623731
 * const triangle = polygonAround({ sides: 3, width: 200, height: 100 });
 * triangle.polygon.side; //=> 315.470053837925
 * triangle.center.y; //=> -41.0683602522959
 * polygonAround({ sides: 8, width: 200, height: 200, rotation: "free" }).polygon.apothem; //=> 130.656296487638
 * polygonAround({ sides: 8, width: 200, height: 200, rotation: "free" }).rotation; //=> 22.5
 * ```
 */
export function polygonAround(options: PolygonAroundOptions): PlacedPolygon {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const width = checkLength(given["width"], "width");
  const height = checkLength(given["height"], "height");
  const allowance = checkAllowance(given);
  const standing = checkStanding(given);
  const snug = snuggestPolygon(sides, standing, (width + allowance) / 2, (height + allowance) / 2);
  return { polygon: polygonFrom(sides, "apothem", snug.apothem), center: snug.center, rotation: snug.rotation };
}
