import { checkArray, checkRange, checkObject, checkSides, checkWord } from "../../core/check.js";
import type { RegularPolygon } from "../../polygon/index.js";
import type { CellKind } from "./table-data.js";
import type { TellOptions } from "../../words/index.js";
import { checkTellOptions, englishTables } from "../../words/internal.js";
import type { Table } from "./table.js";
import { tabulate } from "./tabulate.js";

/** What a polygon's table can show of it besides its number of sides. */
export type PolygonQuantity = Exclude<keyof RegularPolygon, "sides">;

/** How a table of polygons is written. */
export interface PolygonTableOptions extends TellOptions {
  /** What to show, in this order; default side, apothem, circumradius, across flats, across corners, interior angle and plan miter. */
  readonly show?: readonly PolygonQuantity[] | undefined;
  /** What the table shows, in a few words; default words for what it always shows. */
  readonly caption?: string | undefined;
}

const KINDS: Readonly<Record<PolygonQuantity, CellKind>> = {
  side: "length",
  apothem: "length",
  circumradius: "length",
  acrossFlats: "length",
  acrossCorners: "length",
  perimeter: "length",
  area: "area",
  interiorAngle: "angle",
  turn: "angle",
  planMiter: "angle",
};

const USUAL: readonly PolygonQuantity[] = [
  "side",
  "apothem",
  "circumradius",
  "acrossFlats",
  "acrossCorners",
  "interiorAngle",
  "planMiter",
];

/**
 * A table of regular polygons, a row each.
 *
 * @param polygons - the polygons, as `regularPolygon` makes them; of each only the number of sides and what is shown is read
 * @param options - formatters, and which quantities to show
 * @returns the table: the number of sides, then what is to be shown
 * @throws {InputError} when a polygon lacks what is shown, a quantity is unknown, or a formatter is missing
 * @example
 * ```ts
 * import { tabulatePolygons } from "miterwright/report";
 * import { regularPolygon } from "miterwright/polygon";
 * import { formatters } from "miterwright/units";
 *
 * const polygons = [5, 6].map((sides) => regularPolygon({ sides, side: 100 }));
 * const formats = formatters({ unit: "mm" });
 * tabulatePolygons(polygons, { formats, show: ["apothem", "planMiter"] }).cells;
 * //=> [["5", "68.8 mm", "36°"], ["6", "86.6 mm", "30°"]]
 * ```
 */
export function tabulatePolygons(
  polygons: readonly (Pick<RegularPolygon, "sides"> & Partial<RegularPolygon>)[],
  options: PolygonTableOptions,
): Table {
  const given = checkObject(options);
  const { words, formats } = checkTellOptions(options);
  const { polygons: own } = words?.tables ?? englishTables;
  const names = Object.keys(KINDS) as PolygonQuantity[];
  const show = checkArray(given["show"] ?? USUAL, "show", "an array of names of quantities").map((name, index) =>
    checkWord(name, `show[${index}]`, names),
  );
  const rows = checkArray(polygons, "polygons", "an array of polygons").map((item, index) => {
    const path = `polygons[${index}]`;
    const polygon = checkObject(item, path);
    const range = { min: 0, max: Number.MAX_VALUE, what: "a finite number of 0 or more" };
    const values = show.map((name) => checkRange(polygon[name], `${path}.${name}`, range));
    return [checkSides(polygon["sides"], `${path}.sides`), ...values];
  });
  return tabulate(
    {
      caption: options.caption ?? own.caption,
      columns: [
        { label: own.sides, kind: "number" },
        ...show.map((name) => ({ label: own.quantities[name], kind: KINDS[name] })),
      ],
      rows,
    },
    // A number of sides is whole, and written in full.
    { formats: { length: formats.length, area: formats.area, angle: formats.angle } },
  );
}
