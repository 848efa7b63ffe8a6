/**
 * Published values about wood. Rows that were recalled instead of read stand in tables of their own, each marked "values from memory".
 */

/** Shrinkage of a wood from green to ovendry, in percent, as printed. */
export interface ShrinkageRow {
  readonly wood: string;
  readonly radial: number;
  /** `null` where the print has none. */
  readonly tangential: number | null;
  readonly volumetric: number;
}

/** One row as it is written below: the wood's name in the library, and three figures. */
function shrinkage(text: string): readonly ShrinkageRow[] {
  return text
    .trim()
    .split("\n")
    .map((line) => {
      const [wood, radial, tangential, volumetric] = line.split("|").map((cell) => cell.trim());
      return {
        wood: wood!,
        radial: Number(radial),
        tangential: tangential === "-" ? null : Number(tangential),
        volumetric: Number(volumetric),
      };
    });
}

/** Wood Handbook, FPL-GTR-190 (2010), table 4-3, p. 4-6, shrinkage of domestic woods. Read. */
export const SHRINKAGE_READ: readonly ShrinkageRow[] = shrinkage(`
  red alder | 4.4 | 7.3 | 12.6
  black ash | 5.0 | 7.8 | 15.2
  blue ash | 3.9 | 6.5 | 11.7
  green ash | 4.6 | 7.1 | 12.5
  Oregon ash | 4.1 | 8.1 | 13.2
  pumpkin ash | 3.7 | 6.3 | 12.0
  white ash | 4.9 | 7.8 | 13.3
  bigtooth aspen | 3.3 | 7.9 | 11.8
  quaking aspen | 3.5 | 6.7 | 11.5
  American basswood | 6.6 | 9.3 | 15.8
  American beech | 5.5 | 11.9 | 17.2
  Alaska paper birch | 6.5 | 9.9 | 16.7
  gray birch | 5.2 | - | 14.7
  paper birch | 6.3 | 8.6 | 16.2
  river birch | 4.7 | 9.2 | 13.5
  sweet birch | 6.5 | 9.0 | 15.6
  yellow birch | 7.3 | 9.5 | 16.8
  yellow buckeye | 3.6 | 8.1 | 12.5
  butternut | 3.4 | 6.4 | 10.6
  black cherry | 3.7 | 7.1 | 11.5
  American chestnut | 3.4 | 6.7 | 11.6
  balsam poplar | 3.0 | 7.1 | 10.5
  black cottonwood | 3.6 | 8.6 | 12.4
  eastern cottonwood | 3.9 | 9.2 | 13.9
  American elm | 4.2 | 9.5 | 14.6
  cedar elm | 4.7 | 10.2 | 15.4
  rock elm | 4.8 | 8.1 | 14.9
  slippery elm | 4.9 | 8.9 | 13.8
  winged elm | 5.3 | 11.6 | 17.7
  hackberry | 4.8 | 8.9 | 13.8
  pecan | 4.9 | 8.9 | 13.6
  mockernut hickory | 7.7 | 11.0 | 17.8
  pignut hickory | 7.2 | 11.5 | 17.9
  chestnut oak | 5.3 | 10.8 | 16.4
  live oak | 6.6 | 9.5 | 14.7
  overcup oak | 5.3 | 12.7 | 16.0
  post oak | 5.4 | 9.8 | 16.2
  swamp chestnut oak | 5.2 | 10.8 | 16.4
  white oak | 5.6 | 10.5 | 16.3
  common persimmon | 7.9 | 11.2 | 19.1
  sassafras | 4.0 | 6.2 | 10.3
  sweetgum | 5.3 | 10.2 | 15.8
  American sycamore | 5.0 | 8.4 | 14.1
  tanoak | 4.9 | 11.7 | 17.3
  black tupelo | 5.1 | 8.7 | 14.4
  water tupelo | 4.2 | 7.6 | 12.5
  black walnut | 5.5 | 7.8 | 12.8
  black willow | 3.3 | 8.7 | 13.9
  yellow-poplar | 4.6 | 8.2 | 12.7
  yellow-cedar | 2.8 | 6.0 | 9.2
  Atlantic white-cedar | 2.9 | 5.4 | 8.8
  eastern redcedar | 3.1 | 4.7 | 7.8
  incense-cedar | 3.3 | 5.2 | 7.7
  northern white-cedar | 2.2 | 4.9 | 7.2
  Port-Orford-cedar | 4.6 | 6.9 | 10.1
  western redcedar | 2.4 | 5.0 | 6.8
  coast Douglas-fir | 4.8 | 7.6 | 12.4
  interior north Douglas-fir | 3.8 | 6.9 | 10.7
  interior west Douglas-fir | 4.8 | 7.5 | 11.8
  balsam fir | 2.9 | 6.9 | 11.2
  California red fir | 4.5 | 7.9 | 11.4
  grand fir | 3.4 | 7.5 | 11.0
  noble fir | 4.3 | 8.3 | 12.4
  Pacific silver fir | 4.4 | 9.2 | 13.0
  subalpine fir | 2.6 | 7.4 | 9.4
  white fir | 3.3 | 7.0 | 9.8
`);

/** The same table, the rows below those read. Values from memory (sugar maple was also read on a page that quotes the table). */
export const SHRINKAGE_RECALLED: readonly ShrinkageRow[] = shrinkage(`
  baldcypress | 3.8 | 6.2 | 10.5
  eastern hemlock | 3.0 | 6.8 | 9.7
  western hemlock | 4.2 | 7.8 | 12.4
  western larch | 4.5 | 9.1 | 14.0
  eastern white pine | 2.1 | 6.1 | 8.2
  loblolly pine | 4.8 | 7.4 | 12.3
  lodgepole pine | 4.3 | 6.7 | 11.1
  longleaf pine | 5.1 | 7.5 | 12.2
  ponderosa pine | 3.9 | 6.2 | 9.7
  red pine | 3.8 | 7.2 | 11.3
  shortleaf pine | 4.6 | 7.7 | 12.3
  sugar pine | 2.9 | 5.6 | 7.9
  western white pine | 4.1 | 7.4 | 11.8
  old-growth redwood | 2.6 | 4.4 | 6.8
  young-growth redwood | 2.2 | 4.9 | 7.0
  Engelmann spruce | 3.8 | 7.1 | 11.0
  red spruce | 3.8 | 7.8 | 11.8
  Sitka spruce | 4.3 | 7.5 | 11.5
  tamarack | 3.7 | 7.4 | 13.6
  bigleaf maple | 3.7 | 7.1 | 11.6
  black maple | 4.8 | 9.3 | 14.0
  red maple | 4.0 | 8.2 | 12.6
  silver maple | 3.0 | 7.2 | 12.0
  sugar maple | 4.8 | 9.9 | 14.7
  northern red oak | 4.0 | 8.6 | 13.7
  shagbark hickory | 7.0 | 10.5 | 16.7
  honeylocust | 4.2 | 6.6 | 10.8
  black locust | 4.6 | 7.2 | 10.2
`);

/** Change of dimension per percent of moisture, from 6 to 14 %, as printed. */
export interface CoefficientRow {
  readonly wood: string;
  readonly radial: number;
  /** `null` where the print has none. */
  readonly tangential: number | null;
}

/** One row as it is written below: the wood's name in the library, and two figures. */
function coefficients(text: string): readonly CoefficientRow[] {
  return text
    .trim()
    .split("\n")
    .map((line) => {
      const [wood, radial, tangential] = line.split("|").map((cell) => cell.trim());
      return { wood: wood!, radial: Number(radial), tangential: tangential === "-" ? null : Number(tangential) };
    });
}

/**
 * Wood Handbook, FPL-GTR-190 (2010), table 13-5, p. 13-16. Read.
 */
export const COEFFICIENTS_READ: readonly CoefficientRow[] = coefficients(`
  red alder | 0.00151 | 0.00256
  apple | 0.00205 | 0.00376
  black ash | 0.00172 | 0.00274
  Oregon ash | 0.00141 | 0.00285
  pumpkin ash | 0.00126 | 0.00219
  white ash | 0.00169 | 0.00274
  green ash | 0.00169 | 0.00274
  quaking aspen | 0.00119 | 0.00234
  American basswood | 0.00230 | 0.00330
  American beech | 0.00190 | 0.00431
  paper birch | 0.00219 | 0.00304
  river birch | 0.00162 | 0.00327
  yellow birch | 0.00256 | 0.00338
  sweet birch | 0.00256 | 0.00338
  yellow buckeye | 0.00123 | 0.00285
  butternut | 0.00116 | 0.00223
  northern catalpa | 0.00085 | 0.00169
  black cherry | 0.00126 | 0.00248
  American chestnut | 0.00116 | 0.00234
  black cottonwood | 0.00123 | 0.00304
  eastern cottonwood | 0.00133 | 0.00327
  American elm | 0.00144 | 0.00338
  rock elm | 0.00165 | 0.00285
  slippery elm | 0.00169 | 0.00315
  winged elm | 0.00183 | 0.00419
  cedar elm | 0.00183 | 0.00419
  hackberry | 0.00165 | 0.00315
  pecan | 0.00169 | 0.00315
  honeylocust | 0.00144 | 0.00230
  black locust | 0.00158 | 0.00252
  Pacific madrone | 0.00194 | 0.00451
  cucumbertree magnolia | 0.00180 | 0.00312
  southern magnolia | 0.00187 | 0.00230
  sweetbay magnolia | 0.00162 | 0.00293
  bigleaf maple | 0.00126 | 0.00248
  red maple | 0.00137 | 0.00289
  silver maple | 0.00102 | 0.00252
  black maple | 0.00165 | 0.00353
  sugar maple | 0.00165 | 0.00353
  black oak | 0.00123 | 0.00230
  commercial red oak | 0.00158 | 0.00369
  California red oak | 0.00123 | 0.00230
  water, laurel and willow oak | 0.00151 | 0.00350
  commercial white oak | 0.00180 | 0.00365
  live oak | 0.00230 | 0.00338
  Oregon white oak | 0.00144 | 0.00327
  overcup oak | 0.00183 | 0.00462
  common persimmon | 0.00278 | 0.00403
  sassafras | 0.00137 | 0.00216
  sweetgum | 0.00183 | 0.00365
  American sycamore | 0.00172 | 0.00296
  tanoak | 0.00169 | 0.00423
  black tupelo | 0.00176 | 0.00308
  water tupelo | 0.00144 | 0.00267
  black walnut | 0.00190 | 0.00274
  black willow | 0.00112 | -
`);

/** The same table, the softwoods and the rows below. Values from memory. */
export const COEFFICIENTS_RECALLED: readonly CoefficientRow[] = coefficients(`
  baldcypress | 0.00130 | 0.00216
  yellow-cedar | 0.00095 | 0.00208
  Atlantic white-cedar | 0.00099 | 0.00187
  eastern redcedar | 0.00106 | 0.00162
  incense-cedar | 0.00112 | 0.00180
  Port-Orford-cedar | 0.00158 | 0.00241
  coast Douglas-fir | 0.00165 | 0.00267
  interior north Douglas-fir | 0.00130 | 0.00241
  interior west Douglas-fir | 0.00165 | 0.00263
  balsam fir | 0.00099 | 0.00241
  California red fir | 0.00155 | 0.00278
  noble fir | 0.00148 | 0.00293
  Pacific silver fir | 0.00151 | 0.00327
  subalpine fir | 0.00088 | 0.00259
  eastern hemlock | 0.00102 | 0.00237
  western hemlock | 0.00144 | 0.00274
  western larch | 0.00155 | 0.00323
  eastern white pine | 0.00071 | 0.00212
  loblolly pine | 0.00165 | 0.00259
  lodgepole pine | 0.00148 | 0.00234
  longleaf pine | 0.00176 | 0.00263
  ponderosa pine | 0.00133 | 0.00216
  red pine | 0.00130 | 0.00252
  shortleaf pine | 0.00158 | 0.00271
  sugar pine | 0.00099 | 0.00194
  western white pine | 0.00141 | 0.00259
  Engelmann spruce | 0.00130 | 0.00248
  red spruce | 0.00130 | 0.00274
  Sitka spruce | 0.00148 | 0.00263
  tamarack | 0.00126 | 0.00259
  yellow-poplar | 0.00158 | 0.00289
  western redcedar | 0.00111 | 0.00234
  northern white-cedar | 0.00101 | 0.00229
  old-growth redwood | 0.00120 | 0.00205
  young-growth redwood | 0.00101 | 0.00229
`);

/** Specific gravity at 12 % moisture content, by wood. */
export type GravityRow = readonly [wood: string, printed: number];

/** Wood Handbook, FPL-GTR-190 (2010), table 5-3a, the pines and redwood. Read. */
export const GRAVITY_READ: readonly GravityRow[] = [
  ["pond pine", 0.56],
  ["ponderosa pine", 0.4],
  ["red pine", 0.46],
  ["sand pine", 0.48],
  ["shortleaf pine", 0.51],
  ["slash pine", 0.59],
  ["spruce pine", 0.44],
  ["sugar pine", 0.36],
  ["Virginia pine", 0.48],
  ["western white pine", 0.35],
  ["old-growth redwood", 0.4],
  ["young-growth redwood", 0.35],
];

/** A copy of the same table without its source, read. */
export const GRAVITY_COPIED: readonly GravityRow[] = [
  ["red alder", 0.41],
  ["black ash", 0.49],
  ["blue ash", 0.58],
  ["green ash", 0.56],
  ["Oregon ash", 0.55],
  ["white ash", 0.6],
  ["bigtooth aspen", 0.39],
  ["quaking aspen", 0.38],
  ["American basswood", 0.37],
  ["American beech", 0.64],
  ["paper birch", 0.55],
  ["sweet birch", 0.65],
  ["yellow birch", 0.62],
  ["butternut", 0.38],
  ["black cherry", 0.5],
  ["American chestnut", 0.43],
  ["balsam poplar", 0.34],
  ["black cottonwood", 0.35],
  ["eastern cottonwood", 0.4],
  ["American elm", 0.5],
  ["rock elm", 0.63],
  ["slippery elm", 0.53],
  ["hackberry", 0.53],
  ["bitternut hickory", 0.66],
  ["nutmeg hickory", 0.6],
  ["pecan", 0.66],
  ["water hickory", 0.62],
  ["mockernut hickory", 0.72],
  ["pignut hickory", 0.75],
  ["shagbark hickory", 0.72],
  ["shellbark hickory", 0.69],
  ["black locust", 0.69],
  ["cucumbertree magnolia", 0.48],
  ["southern magnolia", 0.5],
  ["bigleaf maple", 0.48],
  ["black maple", 0.57],
  ["red maple", 0.54],
];

/** The same table, values from memory. */
export const GRAVITY_RECALLED: readonly GravityRow[] = [
  ["silver maple", 0.47],
  ["sugar maple", 0.63],
  ["northern red oak", 0.63],
  ["white oak", 0.68],
  ["black oak", 0.61],
  ["sweetgum", 0.52],
  ["American sycamore", 0.49],
  ["black tupelo", 0.5],
  ["black walnut", 0.55],
  ["black willow", 0.39],
  ["yellow-poplar", 0.42],
  ["baldcypress", 0.46],
  ["western redcedar", 0.32],
  ["eastern redcedar", 0.47],
  ["yellow-cedar", 0.44],
  ["northern white-cedar", 0.31],
  ["coast Douglas-fir", 0.48],
  ["interior west Douglas-fir", 0.5],
  ["balsam fir", 0.35],
  ["white fir", 0.39],
  ["eastern hemlock", 0.4],
  ["western hemlock", 0.45],
  ["western larch", 0.52],
  ["eastern white pine", 0.35],
  ["loblolly pine", 0.51],
  ["lodgepole pine", 0.41],
  ["longleaf pine", 0.59],
  ["Engelmann spruce", 0.35],
  ["red spruce", 0.4],
  ["Sitka spruce", 0.4],
  ["tamarack", 0.53],
];

/**
 * U.S. Army TM 5-852-4 / Air Force AFM 88-19 chapter 4, table 2-2, credited to the Forest Products Laboratory: an older edition, whose western hemlock,
 * eastern hemlock, Engelmann spruce and white fir are not those of the editions since 1999. Read.
 */
export const GRAVITY_ARMY: readonly GravityRow[] = [
  ["ponderosa pine", 0.4],
  ["western hemlock", 0.48],
  ["loblolly pine", 0.51],
  ["eastern hemlock", 0.41],
  ["Sitka spruce", 0.4],
  ["lodgepole pine", 0.41],
  ["coast Douglas-fir", 0.48],
  ["Engelmann spruce", 0.34],
  ["white fir", 0.37],
  ["yellow-cedar", 0.44],
];

/** Equilibrium moisture content in percent, as printed to one decimal. */
export interface EquilibriumRow {
  /** Temperature in degrees Fahrenheit. */
  readonly fahrenheit: number;
  /** Relative humidity in percent. */
  readonly humidity: number;
  readonly printed: number;
}

/** Wood Handbook, FPL-GTR-282 (2021), table 4-2, p. 4-4. Read. At 85 % the equation gives 17.95, which is not what 17.9 was rounded from. */
export const EQUILIBRIUM_READ: readonly EquilibriumRow[] = [
  { fahrenheit: 70, humidity: 5, printed: 1.3 },
  { fahrenheit: 70, humidity: 30, printed: 6.2 },
  { fahrenheit: 70, humidity: 50, printed: 9.2 },
  { fahrenheit: 70, humidity: 75, printed: 14.4 },
  { fahrenheit: 70, humidity: 85, printed: 17.9 },
  { fahrenheit: 70, humidity: 95, printed: 23.9 },
];

/** The same table at 5, 10 ... 95 % humidity, by degrees Fahrenheit. Values from memory. */
export const EQUILIBRIUM_RECALLED: Readonly<Record<number, readonly number[]>> = {
  30: [1.4, 2.6, 3.7, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.4, 11.3, 12.4, 13.5, 14.9, 16.5, 18.5, 21, 24.3],
  70: [1.3, 2.5, 3.5, 4.5, 5.4, 6.2, 6.9, 7.7, 8.5, 9.2, 10.1, 11, 12, 13.1, 14.4, 16, 17.9, 20.5, 23.9],
  100: [1.2, 2.3, 3.3, 4.2, 5, 5.8, 6.5, 7.2, 7.9, 8.7, 9.5, 10.3, 11.2, 12.3, 13.6, 15.1, 17, 19.5, 22.9],
};

/**
 * Wood Handbook, FPL-GTR-190 (2010), eq. (13-2) and its worked example, pp. 13-15 and 13-17 (page numbers inferred from the scan): a flat-grained board of white fir,
 * in millimeters and in inches. Read.
 */
export const WORKED_EXAMPLE = {
  wood: "white fir",
  from: 8,
  to: 11,
  radialCoefficient: 0.00112,
  tangentialCoefficient: 0.00245,
  boards: [
    { unit: "mm", width: 232, change: 1.7, final: 233.7, within: 0.05 },
    { unit: "in", width: 9.15, change: 0.067, final: 9.217, within: 0.0005 },
  ],
} as const;

/**
 * W. Noyes, Handwork in Wood, on the plain miter joint, fig. 289: "if the wood shrinks at all, it opens at the inside corners, because wood shrinks
 * sidewise but not lengthwise". Read.
 */
export const SHRUNK_MITER_OPENS = "inside";

/**
 * D. W. Green, Moisture Content and the Shrinkage of Lumber, FPL-RP-489: shrinkage of softwood lumber from green to moisture M in percent, from 8 to 19 %, as
 * a - b M; and the percentages at 15 % that American Softwood Lumber Standard PS 20-70 has. Read.
 */
export const LUMBER_SHRINKAGE = [
  { direction: "width", a: 6.031, b: 0.215, at15: 2.8 },
  { direction: "thickness", a: 5.062, b: 0.181, at15: 2.35 },
] as const;

/** Encyclopaedia Britannica, wood, shrinkage and swelling: averages from green to ovendry, in percent. Read. */
export const AVERAGE_SHRINKAGE = { radial: 4, tangential: 8 } as const;

/** Coefficients of table 13-5 that are a group's and not those of the wood's own shrinkage: they are printed so, and left alone. */
export const GROUP_COEFFICIENTS: readonly string[] = ["green ash", "sweet birch", "cedar elm", "black maple"];

/** Woods that start to shrink at 22 % and not at 30 %: a footnote of table 13-5, value from memory. */
export const SATURATED_AT_22: readonly string[] = [
  "western redcedar",
  "northern white-cedar",
  "old-growth redwood",
  "young-growth redwood",
];

/** Rows above that the library's table does without, and why. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  "gray birch": "no tangential shrinkage in print",
  "black maple": "shrinkage recalled, and the coefficient read is a group's that does not agree with it",
  "northern red oak": "shrinkage recalled, and no coefficient to hold it against",
  "shagbark hickory": "shrinkage recalled, and no coefficient to hold it against",
  "black oak":
    "printed with the coefficients of the California oak, two thirds of those of the red oaks with which it is sold",
};
