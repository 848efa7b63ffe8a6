import { checkArray, checkNumber, checkObject, checkSides, checkSlope, checkWord } from "../core/check.js";
import type { CompoundMiterRow } from "../miter/index.js";
import type { Table } from "./table.js";
import { tabulate, type TableToWrite } from "./tabulate.js";

/** How a table of compound miters is written. */
export interface MiterTableOptions {
  /** Writes an angle that is given in degrees. */
  readonly angle: (degrees: number) => string;
  /** The one angle to show, slopes downward and numbers of sides across; default all three, a row for each slope of each number of sides. */
  readonly show?: "miter" | "bevel" | "dihedral" | undefined;
  /** What the table shows, in a few words; default words for what it always shows. */
  readonly caption?: string | undefined;
}

type MiterAngle = NonNullable<MiterTableOptions["show"]>;

const ANGLES: readonly MiterAngle[] = ["miter", "bevel", "dihedral"];

function readRow(value: unknown, path: string): Pick<CompoundMiterRow, MiterAngle | "sides" | "slope"> {
  const row = checkObject(value, path);
  const angleAt = (name: MiterAngle): number =>
    checkNumber(row[name], `${path}.${name}`, -180, 180, "degrees from -180 to 180");
  return {
    sides: checkSides(row["sides"], `${path}.sides`),
    slope: checkSlope(row["slope"], `${path}.slope`),
    miter: angleAt("miter"),
    bevel: angleAt("bevel"),
    dihedral: angleAt("dihedral"),
  };
}

/** One angle, slopes downward and sides across. */
function crossed(rows: readonly ReturnType<typeof readRow>[], show: MiterAngle): TableToWrite {
  const sides = [...new Set(rows.map((row) => row.sides))];
  const slopes = [...new Set(rows.map((row) => row.slope))];
  const values = new Map(rows.map((row) => [`${row.slope}/${row.sides}`, row[show]]));
  return {
    caption: `Compound miters, sticks lying flat: the ${show} by slope and number of sides`,
    columns: [
      { label: "slope", kind: "angle" },
      ...sides.map((n) => ({ label: `${n} sides`, kind: "angle" as const })),
    ],
    rows: slopes.map((slope) => [slope, ...sides.map((n) => values.get(`${slope}/${n}`) ?? "")]),
  };
}

/**
 * A table of compound miters: the angles of the cuts of sticks that lie flat, by number of sides and slope.
 *
 * @param rows - the rows, as `compoundMiterTable` computes them
 * @param options - the formatter, and whether one angle is shown crosswise
 * @returns the table, in the order of the rows
 * @throws {InputError} when a row is none, or the formatter is missing
 * @example
 * ```ts
 * import { tabulateMiters } from "miterwright/drawing";
 * import { compoundMiterTable } from "miterwright/miter";
 *
 * const rows = compoundMiterTable({ sides: [4, 6], slopes: [30, 45] });
 * tabulateMiters(rows, { angle: (degrees) => degrees.toFixed(1), show: "bevel" }).cells;
 * //=> [["30.0", "20.7", "14.5"], ["45.0", "30.0", "20.7"]]
 * ```
 */
export function tabulateMiters(
  rows: readonly Pick<CompoundMiterRow, "sides" | "slope" | "miter" | "bevel" | "dihedral">[],
  options: MiterTableOptions,
): Table {
  const given = checkObject(options);
  const show = given["show"] === undefined ? undefined : checkWord(given["show"], "show", ANGLES);
  const read = checkArray(rows, "rows", "an array of rows").map((row, index) => readRow(row, `rows[${index}]`));
  const table: TableToWrite =
    show !== undefined
      ? crossed(read, show)
      : {
          caption: "Compound miters, sticks lying flat",
          columns: [
            { label: "sides", kind: "number" },
            { label: "slope", kind: "angle" },
            ...ANGLES.map((label) => ({ label, kind: "angle" as const })),
          ],
          rows: read.map(({ sides, slope, miter, bevel, dihedral }) => [sides, slope, miter, bevel, dihedral]),
        };
  return tabulate({ ...table, caption: options.caption ?? table.caption }, { angle: options.angle });
}
