import { checkLength, checkObject, checkSides, reject } from "../core/check.js";
import { atan2Deg, cosDeg, sinDeg } from "../core/degrees.js";
import type { Pose } from "../core/geometry-types.js";
import type { PlacedPolygon } from "./placed.js";
import { extentMeasures } from "./polygon-extent.js";
import { sineOfQuarters } from "./quarter-turns.js";
import { polygonFrom, type RegularPolygon } from "./regular-polygon.js";
import { checkStanding, rotationOf, type Standing } from "./standing.js";

/** What {@link polygonWithin} keeps within, and how it may stand. */
export type PolygonWithinOptions = {
  /** Number of sides, an integer from 3 to 1e6. */
  readonly sides: number;
} & (
  | {
      /** Width of the sheet, a length from 1e-100 to 1e100. No limit when left out. */
      readonly width: number;
      /** Height of the sheet, a length from 1e-100 to 1e100. No limit when left out. */
      readonly height?: number | undefined;
    }
  | {
      /** Width of the sheet, a length from 1e-100 to 1e100. No limit when left out. */
      readonly width?: number | undefined;
      /** Height of the sheet, a length from 1e-100 to 1e100. No limit when left out. */
      readonly height: number;
    }
) &
  Standing;

/** The largest polygon of a pose within limits; a limit may be infinite, but not both. */
function largestInPose(n: number, pose: Pose, width: number, height: number): RegularPolygon {
  const measures = extentMeasures(n, pose);
  const asWide = polygonFrom(n, measures.width, width);
  const asHigh = polygonFrom(n, measures.height, height);
  return asWide.apothem < asHigh.apothem ? asWide : asHigh;
}

/** The largest polygon over all rotations, and its rotation in degrees; a limit may be infinite, but not both. */
function largestOfAll(n: number, width: number, height: number): [polygon: RegularPolygon, rotation: number] {
  // With sides facing all four ways it is narrowest both ways at once.
  if (n % 4 === 0) return [polygonFrom(n, "acrossFlats", Math.min(width, height)), 0];
  // Rotated from side-down by r, up to `end` parts, it is D cos r wide and D cos(end - r) high, D being across corners:
  // one longest diagonal leaves the level while another comes up to the plumb.
  const end = n % 2 === 1 ? 1 : 2;
  // height - width cos(end) and width - height cos(end), without the cancellation. Not a number if one limit is
  // infinite.
  const lack = 2 * sineOfQuarters(end, 2 * n) ** 2;
  const high = height - width + width * lack;
  const wide = width - height + height * lack;
  if (!(high > 0)) return [polygonFrom(n, "acrossFlats", height), 0];
  const last = (end * 90) / n;
  if (!(wide > 0)) return [polygonFrom(n, "acrossFlats", width), last];
  const rotation = Math.min(atan2Deg(high, width * sineOfQuarters(end, n)), last);
  return [polygonFrom(n, "acrossCorners", width / cosDeg(rotation)), rotation];
}

/**
 * The largest regular polygon that can be cut from a rectangular sheet, or that keeps within an overall width or
 * height.
 *
 * In a pose its overall width or height is the limit that allows less, bit for bit; with only one limit that is the
 * polygon's overall width or height. Over all rotations, a polygon whose sides do not face all four ways may be largest
 * tilted, where it reaches both limits: tan r = (height - width cos e) / (width sin e), with e = 180/n for an even and
 * 90/n for an odd number of sides. What the sheet has to spare is left over equally at both edges. The bounding box of
 * a polygon with an odd number of sides is not centered on the polygon: side-down, the sheet's center lies half of R -
 * a above it.
 *
 * @param options - `sides` (3 to 1e6), the sheet's `width` or `height` or both (1e-100 to 1e100), and if wanted a
 * `pose` or `rotation: "free"`
 * @returns the polygon, its rotation in degrees, and the sheet's center from the polygon's, in the sheet's unit
 * @throws {InputError} when an option is missing or out of range, or a pose is given and the rotation free
 * @example
 * ```ts
 * import { polygonWithin } from "miterwright/polygon";
 *
 * polygonWithin({ sides: 8, width: 600, height: 500 }).polygon.acrossFlats; //=> 500
 * polygonWithin({ sides: 6, height: 500, pose: "corner-down" }).polygon.acrossCorners; //=> 500
 * const upright = polygonWithin({ sides: 3, width: 600, height: 600 });
 * upright.polygon.side; //=> 600
 * upright.center; //=> { x: 0, y: 86.6025403784439 }
 * const tilted = polygonWithin({ sides: 3, width: 600, height: 600, rotation: "free" });
 * tilted.polygon.side; //=> 621.165708246051
 * tilted.rotation; //=> 15
 * ```
 */
export function polygonWithin(options: PolygonWithinOptions): PlacedPolygon {
  const given = checkObject(options);
  const n = checkSides(given["sides"]);
  if (given["width"] === undefined && given["height"] === undefined) {
    return reject("missing", "", options, "Expected at least one of `width`, `height`, got none");
  }
  const width = given["width"] === undefined ? Infinity : checkLength(given["width"], "width");
  const height = given["height"] === undefined ? Infinity : checkLength(given["height"], "height");
  const standing = checkStanding(given);
  const [polygon, rotation] =
    standing === "free"
      ? largestOfAll(n, width, height)
      : [largestInPose(n, standing, width, height), rotationOf(n, standing)];
  if (n % 2 === 0) return { polygon, center: { x: 0, y: 0 }, rotation };
  // Half the difference of what lies right and left of the polygon's center, and above and below it.
  const swing = polygon.circumradius * sineOfQuarters(1, n);
  if (standing === "corner-down") return { polygon, center: { x: 0, y: -swing * sineOfQuarters(1, n) }, rotation };
  const right = swing * sinDeg(rotation);
  const center = { x: (n % 4 === 1 ? -right : right) + 0, y: swing * sinDeg(90 / n - rotation) };
  return { polygon, center, rotation };
}
