import { checkArray, checkDegrees, checkObject, checkSides, checkSlope, checkWord } from "../../core/check.js";
import type { CompoundMiterRow } from "../../miter/index.js";
import type { TableWords, TellOptions } from "../../words/index.js";
import { checkTellOptions, englishTables } from "../../words/internal.js";
import type { Table } from "./table.js";
import { tabulate, type TableToWrite } from "./tabulate.js";

/** How a table of compound miters is written. */
export interface MiterTableOptions extends TellOptions {
  /** The one angle to show, slopes downward and numbers of sides across; default all three, a row for each slope of each number of sides. */
  readonly show?: "miter" | "bevel" | "dihedral" | undefined;
  /** What the table shows, in a few words; default words for what it always shows. */
  readonly caption?: string | undefined;
}

type MiterAngle = NonNullable<MiterTableOptions["show"]>;

const ANGLES: readonly MiterAngle[] = ["miter", "bevel", "dihedral"];

function readRow(value: unknown, path: string): Pick<CompoundMiterRow, MiterAngle | "sides" | "slope"> {
  const row = checkObject(value, path);
  const angleAt = (name: MiterAngle): number => checkDegrees(row[name], `${path}.${name}`, -180, 180);
  return {
    sides: checkSides(row["sides"], `${path}.sides`),
    slope: checkSlope(row["slope"], `${path}.slope`),
    miter: angleAt("miter"),
    bevel: angleAt("bevel"),
    dihedral: angleAt("dihedral"),
  };
}

/** One angle, slopes downward and sides across. */
function crossed(
  rows: readonly ReturnType<typeof readRow>[],
  show: MiterAngle,
  words: TableWords["miters"],
): TableToWrite {
  const sides = [...new Set(rows.map((row) => row.sides))];
  const slopes = [...new Set(rows.map((row) => row.slope))];
  const values = new Map(rows.map((row) => [`${row.slope}/${row.sides}`, row[show]]));
  return {
    caption: words.crossed[show],
    columns: [
      { label: words.heads.slope, kind: "angle" },
      ...sides.map((n) => ({ label: words.sides({ sides: n }), kind: "angle" as const })),
    ],
    rows: slopes.map((slope) => [slope, ...sides.map((n) => values.get(`${slope}/${n}`) ?? "")]),
  };
}

/**
 * A table of compound miters: the angles of the cuts of sticks that lie flat, by number of sides and slope.
 *
 * @param rows - the rows, as `compoundMiterTable` computes them
 * @param options - formatters and words, and whether one angle is shown crosswise
 * @returns the table, in the order of the rows
 * @throws {InputError} when a row is none, or a formatter is missing
 * @example
 * ```ts
 * import { tabulateMiters } from "miterwright/report";
 * import { compoundMiterTable } from "miterwright/miter";
 * import { formatters } from "miterwright/units";
 *
 * const rows = compoundMiterTable({ sides: [4, 6], slopes: [30, 45] });
 * tabulateMiters(rows, { formats: formatters({ unit: "mm" }), show: "bevel" }).cells;
 * //=> [["30°", "20.7°", "14.48°"], ["45°", "30°", "20.7°"]]
 * ```
 */
export function tabulateMiters(
  rows: readonly Pick<CompoundMiterRow, "sides" | "slope" | "miter" | "bevel" | "dihedral">[],
  options: MiterTableOptions,
): Table {
  const given = checkObject(options);
  const { words, formats } = checkTellOptions(options);
  const { miters: own } = words?.tables ?? englishTables;
  const show = given["show"] === undefined ? undefined : checkWord(given["show"], "show", ANGLES);
  const read = checkArray(rows, "rows", "an array of rows").map((row, index) => readRow(row, `rows[${index}]`));
  const table: TableToWrite =
    show !== undefined
      ? crossed(read, show, own)
      : {
          caption: own.caption,
          columns: [
            { label: own.heads.sides, kind: "number" },
            { label: own.heads.slope, kind: "angle" },
            ...ANGLES.map((name) => ({ label: own.heads[name], kind: "angle" as const })),
          ],
          rows: read.map(({ sides, slope, miter, bevel, dihedral }) => [sides, slope, miter, bevel, dihedral]),
        };
  return tabulate({ ...table, caption: options.caption ?? table.caption }, { formats: { angle: formats.angle } });
}
