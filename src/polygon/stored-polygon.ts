import { checkSides } from "../core/check.js";
import { finite, record, type Fields, type Reader } from "../core/stored.js";
import type { PolygonLike } from "./polygon-like.js";
import type { RegularPolygon } from "./regular-polygon.js";

const sides: Reader<number> = (value, path) => checkSides(value, path ?? "");

const POLYGON_LIKE: Fields<PolygonLike> = { sides, apothem: finite };
/** The sides and the apothem of a polygon. */
export const polygonLike: Reader<PolygonLike> = (value, path) => record(value, path, POLYGON_LIKE);

const REGULAR_POLYGON: Fields<RegularPolygon> = {
  sides,
  interiorAngle: finite,
  turn: finite,
  planMiter: finite,
  side: finite,
  apothem: finite,
  circumradius: finite,
  acrossFlats: finite,
  acrossCorners: finite,
  perimeter: finite,
  area: finite,
};
/** A regular polygon with all its measures. */
export const regularPolygon: Reader<RegularPolygon> = (value, path) => record(value, path, REGULAR_POLYGON);
