/** What other modules of the library use of this one, and no entry shows. */
export { cornerDirections, cornersFrom } from "./corner-directions.js";
export { checkPolygon } from "./polygon-like.js";
export { polygonLike, regularPolygon } from "./stored-polygon.js";
