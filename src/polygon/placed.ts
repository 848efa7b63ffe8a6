import type { Box, Point } from "../core/geometry-types.js";
import type { RegularPolygon } from "./regular-polygon.js";

/** How a polygon and an upright rectangle are placed together. */
export interface Placement {
  /** The rectangle's center, as seen from the polygon's: x to the right, y up. */
  readonly center: Point;
  /** How far the polygon is rotated counter-clockwise from standing on side 0, degrees from 0 to 180/n. */
  readonly rotation: number;
}

/** A polygon, and how it is placed with an upright rectangle. */
export interface PlacedPolygon extends Placement {
  /** The polygon. */
  readonly polygon: RegularPolygon;
}

/** An upright rectangle, and how it is placed in a polygon. */
export interface PlacedRectangle extends Box, Placement {}
