import type { PolygonMeasure } from "miterwright/polygon";

/**
 * Polygons that are easy to get wrong by more than rounding, or to get wrong in the last bits, each with the reason.
 */
export const HARD_POLYGONS: readonly (readonly [sides: number, given: PolygonMeasure, value: number, why: string])[] = [
  [3, "acrossFlats", 10, "the height of a triangle is no multiple of its apothem's double"],
  [3, "acrossCorners", 10, "a triangle's widest distance is its side"],
  [3, "circumradius", 2, "cos 60 degrees must be a half, so that the apothem is 1 to the bit"],
  [4, "area", 2, "the side is the root of 2, and tan 45 degrees must be 1"],
  [4, "circumradius", 1, "sine and cosine of 45 degrees must be one number, or the side is not twice the apothem"],
  [5, "acrossFlats", 300, "odd across flats is apothem plus circumradius"],
  [5, "acrossCorners", 300, "odd across corners is not twice the circumradius"],
  [6, "side", 0.1, "0.1 is no binary fraction: it must come back as it was given, and so must the circumradius"],
  [7, "perimeter", 1, "1/7 times 7 is 1 only by luck"],
  [11, "area", 1e-200, "smallest area: the square of the smallest length"],
  [13, "area", 1e200, "largest area: the square of the largest length"],
  [
    1_000_000,
    "side",
    1e100,
    "area 8e210: apothem and area leave the range of the given measure, but not that of a double",
  ],
  [1_000_000, "side", 1e-100, "a million of the smallest sides"],
  [1_000_000, "perimeter", 1e-100, "sides of 1e-106: below the smallest length given"],
  [999_999, "acrossFlats", 1, "the sagitta is 5e-12 of the apothem; 2 F tan(h/2), not a difference of radii"],
  [999_999, "acrossCorners", 1, "sin(h/2) of a half turn's millionth"],
  [999_983, "circumradius", 1, "a prime number of sides: no corner but one lies on an axis"],
  [720_720, "apothem", 3, "a number of sides with 240 divisors: many exact angles"],
  [65_537, "side", 7e99, "a Fermat prime near the upper end"],
  [99_999, "area", 3e-199, "an area near the lower end, whose root is not"],
];

/** Rectangles that are easy to place wrongly in or around a polygon, each with the reason. */
export const HARD_RECTANGLES: readonly (readonly [sides: number, width: number, height: number, why: string])[] = [
  [3, 200, 100, "the triangle stands on the rectangle's base and touches two corners"],
  [3, 1e-9, 1, "a stick: it reaches from the base to the tip"],
  [3, 1, 1e-9, "a stick lying on the base, since there the triangle is widest"],
  [4, 300, 200, "the square is as large as the longer side"],
  [5, 100, 100, "a square in a pentagon is not in the middle, and sits best rotated by 9 degrees"],
  [5, 1, 100, "upper corners near the tip, lower ones on the base"],
  [7, 860, 510, "in no symmetric rotation best: aspect near cot 30.7 degrees"],
  [9, 91, 40, "best rotated by 4.7 degrees"],
  [9, 50, 50, "best symmetric about the square's diagonals"],
  [11, 95, 33, "best rotated by about 4 degrees"],
  [12, 100, 100, "both sides at 45 degrees of the polygon are as near: a tie"],
  [6, 173.20508075688772, 100, "on a corner, it has its corners on the hexagon's: two sides demand the same"],
  [21, 30, 22, "best with a side standing plumb"],
  [999_999, 3, 2.2, "logarithmic search, or it takes a second"],
  [1_000_000, 1e-100, 1e100, "a needle: the whole range of lengths in one rectangle"],
  [999_997, 1e100, 1e-100, "the needle lying, in an odd polygon"],
];
