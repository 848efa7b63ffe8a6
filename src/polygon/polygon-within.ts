import { checkLength, checkObject, checkSides } from "../core/check.js";
import type { Pose } from "../core/geometry-types.js";
import type { PolygonAndCenter } from "./polygon-around.js";
import { extentMeasures } from "./polygon-extent.js";
import { checkPose } from "./polygon-like.js";
import { tangentOfQuarters } from "./quarter-turns.js";
import { polygonFrom } from "./regular-polygon.js";

/** What {@link polygonWithin} keeps within. */
export interface PolygonWithinOptions {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
  /** Width of the sheet, a length from 1e-100 to 1e100. */
  readonly width: number;
  /** Height of the sheet, a length from 1e-100 to 1e100. */
  readonly height: number;
  /** How the polygon stands. Default `"side-down"`. */
  readonly pose?: Pose;
}

/**
 * The largest regular polygon that can be cut from a rectangular sheet.
 *
 * Its overall width or height is the sheet's, whichever allows less, bit for bit. What the sheet has to spare is left over
 * equally at both edges. The bounding box of a polygon with an odd number of sides is not centered on the polygon:
 * the sheet's center lies half of R - a = a tan h tan(h/2) above it (side-down), with h = 180/n.
 *
 * @param options - `sides` (3 to 1e6), the sheet's `width` and `height` (1e-100 to 1e100), and if wanted the `pose`
 * @returns the polygon, and where the sheet's center lies from the polygon's center, in the sheet's unit
 * @throws {InputError} when an option is missing or out of range
 * @example
 * ```ts
 * import { polygonWithin } from "miterwright/polygon";
 *
 * polygonWithin({ sides: 8, width: 600, height: 500 }).polygon.acrossFlats; //=> 500
 * polygonWithin({ sides: 3, width: 600, height: 600 }).polygon.side; //=> 600
 * polygonWithin({ sides: 3, width: 600, height: 600 }).center; //=> { x: 0, y: 86.6025403784439 }
 * ```
 */
export function polygonWithin(options: PolygonWithinOptions): PolygonAndCenter {
  const given = checkObject(options);
  const sides = checkSides(given["sides"]);
  const width = checkLength(given["width"], "width");
  const height = checkLength(given["height"], "height");
  const pose = checkPose(given["pose"]);
  const measures = extentMeasures(sides, pose);
  const asWide = polygonFrom(sides, measures.width, width);
  const asHigh = polygonFrom(sides, measures.height, height);
  const polygon = asWide.apothem < asHigh.apothem ? asWide : asHigh;
  if (sides % 2 === 0) return { polygon, center: { x: 0, y: 0 } };
  const up = (polygon.apothem * tangentOfQuarters(2, sides) * tangentOfQuarters(1, sides)) / 2;
  return { polygon, center: { x: 0, y: pose === "side-down" ? up : -up } };
}
