import type { RegularPolygon } from "../../polygon/index.js";

/** Tables of polygons and of compound miters. */
export interface TableWords {
  /** A table of regular polygons. */
  readonly polygons: {
    /** What it shows. */
    readonly caption: string;
    /** Head of the numbers of sides. */
    readonly sides: string;
    /** Heads of the other columns. */
    readonly quantities: Readonly<Record<Exclude<keyof RegularPolygon, "sides">, string>>;
  };
  /** A table of compound miters, for sticks that lie flat. */
  readonly miters: {
    /** What it shows. */
    readonly caption: string;
    /** What it shows where one angle stands by slope and number of sides. */
    readonly crossed: Readonly<Record<"miter" | "bevel" | "dihedral", string>>;
    /** Heads of its columns. */
    readonly heads: Readonly<Record<"sides" | "slope" | "miter" | "bevel" | "dihedral", string>>;
    /** Head of a column for a number of sides. */
    readonly sides: (values: { readonly sides: number }) => string;
  };
}

/** In English. */
export const englishTables: TableWords = {
  polygons: {
    caption: "Regular polygons",
    sides: "sides",
    quantities: {
      side: "side",
      apothem: "apothem",
      circumradius: "circumradius",
      acrossFlats: "across flats",
      acrossCorners: "across corners",
      perimeter: "perimeter",
      area: "area",
      interiorAngle: "interior angle",
      turn: "turn",
      planMiter: "plan miter",
    },
  },
  miters: {
    caption: "Compound miters, sticks lying flat",
    crossed: {
      miter: "Compound miters, sticks lying flat: the miter by slope and number of sides",
      bevel: "Compound miters, sticks lying flat: the bevel by slope and number of sides",
      dihedral: "Compound miters, sticks lying flat: the dihedral by slope and number of sides",
    },
    heads: { sides: "sides", slope: "slope", miter: "miter", bevel: "bevel", dihedral: "dihedral" },
    sides: ({ sides }) => `${sides} sides`,
  },
};
