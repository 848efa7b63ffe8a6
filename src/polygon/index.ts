/**
 * Regular polygons: every measure from any one of them, corners and overall size however they stand, and how polygons,
 * rectangles and circles fit into each other.
 *
 * @module
 */
export {
  onePolygonMeasure,
  POLYGON_MEASURES,
  type PolygonMeasure,
  type OnePolygonMeasure,
  type PolygonMeasureValues,
} from "./measures.js";
export { offsetPolygon } from "./offset-polygon.js";
export {
  type Circle,
  circleAround,
  circleWithin,
  polygonAroundCircle,
  type PolygonAroundCircleOptions,
  polygonWithinCircle,
  type PolygonWithinCircleOptions,
} from "./polygon-and-circle.js";
export type { PlacedPolygon, PlacedRectangle, Placement } from "./placed.js";
export { polygonAround, type PolygonAroundOptions } from "./polygon-around.js";
export { polygonCorners } from "./polygon-corners.js";
export { polygonExtent } from "./polygon-extent.js";
export type { PolygonLike } from "./polygon-like.js";
export { polygonWithin, type PolygonWithinOptions } from "./polygon-within.js";
export { rectangleWithin, type RectangleWithinOptions } from "./rectangle-within.js";
export { type RegularPolygon, regularPolygon, type RegularPolygonOptions } from "./regular-polygon.js";
export type { Standing } from "./standing.js";
