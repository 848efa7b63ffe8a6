import * as compound from "./compound.js";
import * as dihedral from "./dihedral.js";
import * as square from "./framing-square.js";
import * as polygons from "./polygons.js";
import * as stock from "./stock.js";
import * as units from "./units.js";
import * as wood from "./wood.js";
import * as materials from "./materials.js";

/** A source of published values, and how many of them the tests check. */
export interface Source {
  /** What the values are about. */
  readonly about: string;
  /** Author, title, year, place. */
  readonly source: string;
  /** Whether the text was seen, or the values were recalled. */
  readonly seen: "read" | "from memory" | "common practice";
  /** How many values of it are checked. */
  readonly values: number;
}

const areas = polygons.AREA_TABLES.map(({ source, rows }) => ({
  source: source.replace(" (values from memory)", ""),
  values: rows.length,
}));
const bySource = (part: string, rows: readonly { readonly source: string }[]): number =>
  rows.filter((row) => row.source.includes(part)).length;
const HODGSON = "Hodgson";
const CYCLOPEDIA = "Cyclopedia of Architecture";

/** How many printed coefficients stand beside a shrinkage that they can be checked against. */
const coefficientsOf = (rows: readonly wood.CoefficientRow[], shrinkage: readonly wood.ShrinkageRow[]): number =>
  rows
    .filter((row) => shrinkage.some((other) => other.wood === row.wood))
    .reduce((sum, { tangential }) => sum + (tangential === null ? 1 : 2), 0);

/** Every source, in the order of the table in the documentation. */
export const SOURCES: readonly Source[] = [
  {
    about: "polygons: area, side, radii",
    source: "Machinery's Handbook, 31st ed., Industrial Press 2020, p. 82",
    seen: "read",
    values: polygons.HANDBOOK_ROWS.reduce((sum, [, printed]) => sum + printed.length, 0),
  },
  {
    about: "polygons: interior and exterior angles, frame miters",
    source: "Machinery's Handbook, 31st ed., p. 81 (the relations)",
    seen: "read",
    values: polygons.ANGLES.length * 3,
  },
  { about: "polygons: areas", source: areas[0]!.source, seen: "read", values: areas[0]!.values },
  { about: "polygons: areas", source: areas[1]!.source, seen: "read", values: areas[1]!.values },
  { about: "polygons: areas", source: areas[2]!.source, seen: "from memory", values: areas[2]!.values },
  {
    about: "steel-square figures, side cuts, hip backing, braces",
    source: "Fred T. Hodgson, ABC of the Steel Square and its Uses (Project Gutenberg 49273)",
    seen: "read",
    values:
      bySource(HODGSON, square.RULES_OF_THUMB) +
      square.HODGSON_EXACT.length +
      bySource(HODGSON, square.BRACES) +
      compound.SIDE_CUTS.length +
      compound.HIP_BACKINGS.length,
  },
  {
    about: "steel-square figures, braces",
    source: "Cyclopedia of Architecture, Carpentry and Building, American Technical Society, The Steel Square",
    seen: "read",
    values: bySource(CYCLOPEDIA, square.RULES_OF_THUMB) + bySource(CYCLOPEDIA, square.BRACES),
  },
  {
    about: "steel-square figures",
    source: "Radford's Cyclopedia of Construction, vol. 8, Steel Square, fig. 177",
    seen: "read",
    values: bySource("Radford", square.RULES_OF_THUMB),
  },
  {
    about: "angles by the steel square, braces",
    source: "International Correspondence Schools, The Building Trades Pocketbook",
    seen: "read",
    values: square.POCKETBOOK_ANGLES.length + bySource("International Correspondence", square.BRACES),
  },
  {
    about: "braces",
    source: "W. Noyes, Handwork in Wood, 1910",
    seen: "read",
    values: bySource("Noyes", square.BRACES),
  },
  {
    about: "steel-square figures for 12 in",
    source: "steel-square books of the early twentieth century",
    seen: "from memory",
    values: square.TWELVE_INCH.length,
  },
  {
    about: "crown moldings cut flat: miter and bevel",
    source: "generally known settings",
    seen: "from memory",
    values: compound.CROWN_SETTINGS.length * 2,
  },
  {
    about: "dihedrals of the Platonic solids",
    source: 'encyclopedia article "Dihedral angle"',
    seen: "read",
    values: dihedral.PLATONIC_DIHEDRALS.length,
  },
  {
    about: "dihedrals of pyramids of equilateral triangles, base and side",
    source: 'Wikipedia, "Square pyramid" and "Elongated pentagonal pyramid"',
    seen: "read",
    values: dihedral.EQUILATERAL_PYRAMIDS.length * 2,
  },
  {
    about: "angles of right prisms",
    source: 'Wikipedia, "Elongated pentagonal pyramid", and the definition of a right prism',
    seen: "read",
    values: dihedral.PRISM_DIHEDRALS.length,
  },
  {
    about: "dihedrals of Archimedean and rhombic solids",
    source: 'Wikipedia, "Table of polyhedron dihedral angles"',
    seen: "from memory",
    values: dihedral.ARCHIMEDEAN_DIHEDRALS.length + dihedral.RHOMBIC_DIHEDRALS.length,
  },
  {
    about: "yard, foot and inch of 1959",
    source: "National Bureau of Standards, addendum to Circular 572 (1959)",
    seen: "read",
    values: Object.keys(units.YARD_1959).length,
  },
  {
    about: "factors of length and angle",
    source: "NIST Special Publication 811 (2008), appendix B.8",
    seen: "read",
    values: units.LENGTH_FACTORS.length + units.ANGLE_FACTORS.length,
  },
  {
    about: "rounding converted lengths",
    source: "NIST LC 1137, Metric Style Guide (2000)",
    seen: "read",
    values: units.RULE_OF_REASON.length * 2,
  },
  {
    about: "64ths as decimals",
    source: "N. Hawkins, Self-Help Mechanical Drawing, Table of Decimal Equivalents",
    seen: "read",
    values: units.DECIMAL_EQUIVALENTS.length,
  },
  {
    about: "angles in degrees, minutes and seconds",
    source: "encyclopedia articles on the dodecahedron and the truncated cuboctahedron",
    seen: "read",
    values: units.PRINTED_DIHEDRALS.length,
  },
  {
    about: "angles in degrees and minutes",
    source: "Machinery's Handbook, pp. 121-122",
    seen: "read",
    values: units.PRINTED_ANGLES.length,
  },
  {
    about: "a cutting-stock problem and its optimum",
    source: 'Wikipedia, "Cutting stock problem"',
    seen: "from memory",
    values: stock.PUBLISHED_JOBS.length,
  },
  {
    about: "wood: change coefficients, radial and tangential, against the shrinkage of table 4-3",
    source: "Wood Handbook, FPL-GTR-190 (2010), table 13-5, p. 13-16",
    seen: "read",
    values: coefficientsOf(wood.COEFFICIENTS_READ, wood.SHRINKAGE_READ),
  },
  {
    about: "wood: further rows of the same tables",
    source: "Wood Handbook, FPL-GTR-190 (2010), tables 4-3 and 13-5",
    seen: "from memory",
    values:
      coefficientsOf(
        [...wood.COEFFICIENTS_READ, ...wood.COEFFICIENTS_RECALLED],
        [...wood.SHRINKAGE_READ, ...wood.SHRINKAGE_RECALLED],
      ) - coefficientsOf(wood.COEFFICIENTS_READ, wood.SHRINKAGE_READ),
  },
  {
    about: "wood: movement of a board, worked example",
    source: "Wood Handbook, FPL-GTR-190 (2010), eq. (13-2)",
    seen: "read",
    values: wood.WORKED_EXAMPLE.boards.length * 2,
  },
  {
    about: "wood: equilibrium moisture content",
    source: "Wood Handbook, FPL-GTR-282 (2021), table 4-2, p. 4-4",
    seen: "read",
    values: wood.EQUILIBRIUM_READ.length,
  },
  {
    about: "wood: equilibrium moisture content, further rows",
    source: "Wood Handbook, table 4-2",
    seen: "from memory",
    values: Object.values(wood.EQUILIBRIUM_RECALLED).flat().length,
  },
  {
    about: "float glass: density, mass of a pane, expansion",
    source: "EN 572-1, as trade handbooks quote it",
    seen: "read",
    values: Object.values(materials.FLOAT_GLASS).filter((value) => typeof value === "number").length,
  },
  {
    about: "float glass: tolerance of its thickness",
    source: "EN 572-2",
    seen: "from memory",
    values: materials.GLASS_TOLERANCES.length,
  },
  {
    about: "lengths, openings and panels of many-sided frames",
    source: "no printed source",
    seen: "common practice",
    values: 6,
  },
];
