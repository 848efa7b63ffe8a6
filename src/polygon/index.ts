/**
 * Regular polygons: every measure from any one of them, corners and overall size in both poses, and how polygons and
 * rectangles fit into each other.
 *
 * @module
 */
export { givenMeasure } from "./given-measure.js";
export { POLYGON_MEASURES, type PolygonMeasure, type PolygonMeasures, type PolygonMeasureValues } from "./measures.js";
export { offsetPolygon } from "./offset-polygon.js";
export { type PolygonAndCenter, polygonAround, type PolygonAroundOptions } from "./polygon-around.js";
export { polygonCorners } from "./polygon-corners.js";
export { polygonExtent } from "./polygon-extent.js";
export type { PolygonLike } from "./polygon-like.js";
export { polygonWithin, type PolygonWithinOptions } from "./polygon-within.js";
export { type PlacedRectangle, rectangleWithin, type RectangleWithinOptions } from "./rectangle-within.js";
export { type RegularPolygon, regularPolygon, type RegularPolygonOptions } from "./regular-polygon.js";
