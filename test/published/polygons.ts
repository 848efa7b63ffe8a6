import type { PolygonMeasure } from "miterwright/polygon";

/**
 * Machinery's Handbook, 31st edition, Industrial Press 2020, page 82: "Area, Length of Side, and Inscribed and
 * Circumscribed Radii of Regular Polygons". There is no row for 11 sides. Every column is a measure of the polygon in
 * which another one, or its square, is 1.
 */
export const HANDBOOK_COLUMNS: readonly (readonly [printed: PolygonMeasure, where: PolygonMeasure])[] = [
  ["area", "side"],
  ["area", "circumradius"],
  ["area", "apothem"],
  ["circumradius", "side"],
  ["circumradius", "apothem"],
  ["side", "circumradius"],
  ["side", "apothem"],
  ["apothem", "circumradius"],
  ["apothem", "side"],
];

/** The rows of that table, one value a column, as printed. */
export const HANDBOOK_ROWS: readonly (readonly [sides: number, printed: readonly string[]])[] = [
  [3, ["0.4330", "1.2990", "5.1962", "0.5774", "2.0000", "1.7321", "3.4641", "0.5000", "0.2887"]],
  [4, ["1.0000", "2.0000", "4.0000", "0.7071", "1.4142", "1.4142", "2.0000", "0.7071", "0.5000"]],
  [5, ["1.7205", "2.3776", "3.6327", "0.8507", "1.2361", "1.1756", "1.4531", "0.8090", "0.6882"]],
  [6, ["2.5981", "2.5981", "3.4641", "1.0000", "1.1547", "1.0000", "1.1547", "0.8660", "0.8660"]],
  [7, ["3.6339", "2.7364", "3.3710", "1.1524", "1.1099", "0.8678", "0.9631", "0.9010", "1.0383"]],
  [8, ["4.8284", "2.8284", "3.3137", "1.3066", "1.0824", "0.7654", "0.8284", "0.9239", "1.2071"]],
  [9, ["6.1818", "2.8925", "3.2757", "1.4619", "1.0642", "0.6840", "0.7279", "0.9397", "1.3737"]],
  [10, ["7.6942", "2.9389", "3.2492", "1.6180", "1.0515", "0.6180", "0.6498", "0.9511", "1.5388"]],
  [12, ["11.196", "3.0000", "3.2154", "1.9319", "1.0353", "0.5176", "0.5359", "0.9659", "1.8660"]],
  [16, ["20.109", "3.0615", "3.1826", "2.5629", "1.0196", "0.3902", "0.3978", "0.9808", "2.5137"]],
  [20, ["31.569", "3.0902", "3.1677", "3.1962", "1.0125", "0.3129", "0.3168", "0.9877", "3.1569"]],
  [24, ["45.575", "3.1058", "3.1597", "3.8306", "1.0086", "0.2611", "0.2633", "0.9914", "3.7979"]],
  [32, ["81.225", "3.1214", "3.1517", "5.1011", "1.0048", "0.1960", "0.1970", "0.9952", "5.0766"]],
  [48, ["183.08", "3.1326", "3.1461", "7.6449", "1.0021", "0.1308", "0.1311", "0.9979", "7.6285"]],
  [64, ["325.69", "3.1365", "3.1441", "10.190", "1.0012", "0.0981", "0.0983", "0.9988", "10.178"]],
];

/** Areas of polygons whose side is 1, as printed. */
export interface AreaTable {
  /** Where they are printed. */
  readonly source: string;
  /** Number of sides and printed area. */
  readonly rows: readonly (readonly [sides: number, printed: string])[];
  /** Rows whose printed value is a slip, and what it is a slip for. */
  readonly misprints?: Readonly<Record<number, string>>;
}

/** Tables of multipliers for the square of the side. Old ones cut the last digit off rather than round it. */
export const AREA_TABLES: readonly AreaTable[] = [
  {
    source:
      'T. W. Silloway, Text-Book of Modern Carpentry, Boston 1858, "Geometry", multipliers for the area of a regular polygon',
    rows: [
      [3, "0.43301"],
      [4, "0.100000"],
      [5, "1.72047"],
      [6, "2.59807"],
      [7, "3.63391"],
      [8, "4.82842"],
      [9, "6.18182"],
      [10, "7.69420"],
      [11, "9.36564"],
      [12, "11.19615"],
    ],
    // The tetragon's is printed 0.100000.
    misprints: { 4: "1.00000" },
  },
  {
    source: "A nineteenth-century textbook of mensuration, as quoted by a book search; its title page was not seen",
    rows: [
      [8, "4.828427"],
      [9, "6.181824"],
      [10, "7.694208"],
      [11, "9.365639"],
      [12, "11.196152"],
    ],
  },
  {
    source: 'Wikipedia, "Regular polygon", table of areas for s = 1 (values from memory)',
    rows: [
      [3, "0.433012702"],
      [4, "1.000000000"],
      [5, "1.720477401"],
      [6, "2.598076211"],
      [7, "3.633912444"],
      [8, "4.828427125"],
      [9, "6.181824194"],
      [10, "7.694208843"],
      [11, "9.365639907"],
      [12, "11.19615242"],
      [16, "20.10935797"],
      [20, "31.56875757"],
    ],
  },
];

/**
 * Angles in degrees. Elementary geometry; Machinery's Handbook, 31st edition, page 81 states the relations: interior
 * angle 180 - 360/n, exterior 360/n. The miter of a flat frame is half the exterior angle, measured from a square cut.
 */
export const ANGLES: readonly (readonly [sides: number, interior: string, exterior: string, miter: string])[] = [
  [3, "60", "120", "60"],
  [4, "90", "90", "45"],
  [5, "108", "72", "36"],
  [6, "120", "60", "30"],
  [7, "128.5714285714", "51.4285714286", "25.7142857143"],
  [8, "135", "45", "22.5"],
  [9, "140", "40", "20"],
  [10, "144", "36", "18"],
  [11, "147.2727272727", "32.7272727273", "16.3636363636"],
  [12, "150", "30", "15"],
  [16, "157.5", "22.5", "11.25"],
  [20, "162", "18", "9"],
  [24, "165", "15", "7.5"],
];
