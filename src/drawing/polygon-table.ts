import { checkArray, checkNumber, checkObject, checkSides, checkWord } from "../core/check.js";
import type { RegularPolygon } from "../polygon/index.js";
import type { CellKind } from "./table-data.js";
import type { Table } from "./table.js";
import { tabulate } from "./tabulate.js";

/** What a polygon's table can show of it besides its number of sides. */
export type PolygonQuantity = Exclude<keyof RegularPolygon, "sides">;

/** How a table of polygons is written. */
export interface PolygonTableOptions {
  /** Writes a length in the reader's unit; needed where a length is shown. */
  readonly length?: ((value: number) => string) | undefined;
  /** Writes an area in the square of the reader's unit; needed where the area is shown. */
  readonly area?: ((value: number) => string) | undefined;
  /** Writes an angle that is given in degrees; needed where an angle is shown. */
  readonly angle?: ((degrees: number) => string) | undefined;
  /** What to show, in this order; default side, apothem, circumradius, across flats, across corners, interior angle and plan miter. */
  readonly show?: readonly PolygonQuantity[] | undefined;
  /** What the table shows, in a few words; default `"Regular polygons"`. */
  readonly caption?: string | undefined;
}

const COLUMNS: Readonly<Record<PolygonQuantity, { readonly label: string; readonly kind: CellKind }>> = {
  side: { label: "side", kind: "length" },
  apothem: { label: "apothem", kind: "length" },
  circumradius: { label: "circumradius", kind: "length" },
  acrossFlats: { label: "across flats", kind: "length" },
  acrossCorners: { label: "across corners", kind: "length" },
  perimeter: { label: "perimeter", kind: "length" },
  area: { label: "area", kind: "area" },
  interiorAngle: { label: "interior angle", kind: "angle" },
  turn: { label: "turn", kind: "angle" },
  planMiter: { label: "plan miter", kind: "angle" },
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
 * import { tabulatePolygons } from "miterwright/drawing";
 * import { regularPolygon } from "miterwright/polygon";
 *
 * const polygons = [5, 6].map((sides) => regularPolygon({ sides, side: 100 }));
 * const words = { length: (value: number) => value.toFixed(1), angle: (degrees: number) => `${degrees}°` };
 * tabulatePolygons(polygons, { ...words, show: ["apothem", "planMiter"] }).cells;
 * //=> [["5", "68.8", "36°"], ["6", "86.6", "30°"]]
 * ```
 */
export function tabulatePolygons(
  polygons: readonly (Pick<RegularPolygon, "sides"> & Partial<RegularPolygon>)[],
  options: PolygonTableOptions,
): Table {
  const given = checkObject(options);
  const names = Object.keys(COLUMNS) as PolygonQuantity[];
  const show = checkArray(given["show"] ?? USUAL, "show", "an array of names of quantities").map((name, index) =>
    checkWord(name, `show[${index}]`, names),
  );
  const rows = checkArray(polygons, "polygons", "an array of polygons").map((item, index) => {
    const path = `polygons[${index}]`;
    const polygon = checkObject(item, path);
    const values = show.map((name) =>
      checkNumber(polygon[name], `${path}.${name}`, 0, Number.MAX_VALUE, "a finite number of 0 or more"),
    );
    return [checkSides(polygon["sides"], `${path}.sides`), ...values];
  });
  return tabulate(
    {
      caption: options.caption ?? "Regular polygons",
      columns: [{ label: "sides", kind: "number" }, ...show.map((name) => COLUMNS[name])],
      rows,
    },
    options,
  );
}
